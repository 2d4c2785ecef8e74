import AxeBuilder from '@axe-core/playwright';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { todayHere } from './days.ts';
import type { House } from './house.ts';
import { didAnOuting } from './past-outing.ts';
import { rowsOf } from './rows.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// What guards the gate has one try.
test.describe.configure({ retries: 0 });

// Our own rules, no source.

/** Damages rows of one runner, as a bad disk would. */
function spoil({ dataFolder }: House, statement: string, runnerId: string): void {
	const database = new DatabaseSync(join(dataFolder, 'breathmark.sqlite'), { timeout: 5000 });
	expect(database.prepare(statement).run(runnerId).changes).toBe(1);
	database.close();
}

test('with one row spoilt the account names it, shows and gives the rest, and can be deleted', async ({
	page,
	phone,
	house
}) => {
	await phone.screen(leadsTo.askFirst);
	const said = { role: 'doctor', covers: 'R-SIGN-ANKLES', scope: 'all', limitBpm: '' };
	await phone.lead('/screening/advice?/record', { ...said, givenOn: todayHere() });
	const { runnerId } = (await (await phone.get('/account/export')).json()) as { runnerId: string };
	spoil(house, `update advice set sealed = 'spoilt' where runner_id = ?`, runnerId);

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

test('with a line of an outing and the pain spoilt the outing is still there, and runs stay closed', async ({
	page,
	phone,
	house
}) => {
	await phone.screen();
	await didAnOuting(phone, { more: [{ kind: 'pain', level: 'new', where: 'shin' }] });
	const before = (await (await phone.get('/account/export')).json()) as {
		runnerId: string;
		outingEntries: { id: string; kind: string }[];
	};
	const of = ({ runnerId }: typeof before) => runnerId;
	const line = before.outingEntries.find(({ kind }) => kind === 'phase-done')?.id ?? '';
	spoil(
		house,
		`update past_entry set sealed = 'spoilt' where runner_id = ? and id = '${line}'`,
		of(before)
	);
	spoil(house, `update runner_pain set sealed = 'spoilt' where runner_id = ?`, of(before));
	await page.goto('/account');
	await expect(page.getByRole('alert')).toContainText('A line of an outing that you did');
	await expect(page.getByRole('alert')).toContainText('What you told about pain');
	await expect(page.getByText(/^One outing, with what you said/)).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	const after = (await (await phone.get('/account/export')).json()) as typeof before;
	expect(after.outingEntries).toEqual(before.outingEntries.filter(({ id }) => id !== line));
	expect(after).toMatchObject({
		pain: null,
		unreadable: [{ table: 'past_entry' }, { table: 'runner_pain' }]
	});
	// That there is pain needs no reading of where it hurts.
	await page.goto('/bands');
	await expect(page.getByText('No running until it is gone')).toBeVisible();
});
