import AxeBuilder from '@axe-core/playwright';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { todayHere } from './days.ts';
import { rowsOf } from './rows.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

test('with one row spoilt the account names it, shows and gives the rest, and can be deleted', async ({
	page,
	phone,
	house
}) => {
	await phone.screen(leadsTo.askFirst);
	const said = { role: 'doctor', covers: 'R-SIGN-ANKLES', scope: 'all', limitBpm: '' };
	await phone.lead('/screening/advice?/record', { ...said, givenOn: todayHere() });
	const { runnerId } = (await (await phone.get('/account/export')).json()) as { runnerId: string };
	const database = new DatabaseSync(join(house.dataFolder, 'breathmark.sqlite'), { timeout: 5000 });
	database.prepare(`update advice set sealed = 'spoilt' where runner_id = ?`).run(runnerId);
	database.close();

	// Nothing is open that was worked out without it.
	expect((await phone.get('/bands')).status()).toBe(303);
	expect((await phone.get('/screening/result')).status()).toBe(503);
	await page.goto('/account');
	await expect(page.getByRole('alert')).toContainText('cannot be opened any more');
	await expect(page.getByRole('alert')).toContainText(/Advice, written down on/);
	await expect(page.getByRole('heading', { name: 'Results' })).toBeVisible();
	await expect(
		page
			.getByRole('listitem')
			.filter({ hasText: /^\d+ \w+ \d{4}: / })
			.first()
	).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	const file = (await (await phone.get('/account/export')).json()) as Record<string, unknown>;
	expect(file).toMatchObject({
		results: [{ status: 'SEEK_ADVICE' }],
		advice: [],
		unreadable: [{ table: 'advice' }]
	});

	await page.getByLabel('I want to delete everything').check();
	await page.getByRole('button', { name: 'Delete everything now' }).click();
	await expect(page).toHaveURL(/\/account\/gone(#|$)/);
	expect(rowsOf(house, 'user').filter(({ id }) => id === runnerId)).toEqual([]);
});
