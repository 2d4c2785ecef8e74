import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { todayHere } from './days.ts';
import { rowsWith, tablesOf } from './rows.ts';
import { expect, test } from './test.ts';
import { leadsTo, measureResting, ready } from './walk.ts';

test('delete everything: no table has a row of theirs, no file holds their id, the phone is nobody', async ({
	page,
	phone,
	house,
	context
}) => {
	// One of everything that can be held.
	await phone.screen({ ...leadsTo.mayWalk, ...leadsTo.notToday });
	await phone.screen(leadsTo.mayWalk);
	await phone.lead('/screening/changed', { why: 'mistake' });
	await measureResting(page, 64);
	const said = { role: 'nurse', scope: 'all', covers: 'R-AGE-45', limitBpm: '' };
	await phone.lead('/screening/advice?/record', { ...said, givenOn: todayHere() });
	await phone.lead('/screening?/answer', { urgent: 'heart' });
	await phone.begin();
	await phone.lead('/emergency-number', { number: '000' });
	expect((await phone.send('/account?/code')).status()).toBe(200);
	const { runnerId } = (await (await phone.get('/account/export')).json()) as { runnerId: string };
	const before = new Set(rowsWith(house, runnerId).map((row) => row.split(':')[0]));
	for (const table of [
		'user',
		'session',
		'consent',
		'screening_draft',
		'screening_result',
		'health_event',
		'advice',
		'profile',
		'runner_settings',
		'audit',
		'device_code'
	]) {
		expect(before, `there is something in ${table}`).toContain(table);
	}

	await page.goto('/account');
	await page.getByRole('button', { name: 'Delete everything now' }).click();
	await expect(page.locator('#sure-issue')).toHaveText('Tick the box first.');
	expect(rowsWith(house, runnerId)).not.toEqual([]);
	await page.getByLabel('I want to delete everything').check();
	await page.getByRole('button', { name: 'Delete everything now' }).click();
	await expect(page).toHaveURL(/\/account\/gone(#delete)?$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Everything is deleted.');

	expect(tablesOf(house).length).toBeGreaterThan(12);
	expect(rowsWith(house, runnerId)).toEqual([]);
	for (const name of readdirSync(house.dataFolder)) {
		const bytes = readFileSync(join(house.dataFolder, name)).toString('latin1');
		expect(bytes.includes(runnerId), `${name} holds the id of somebody who is gone`).toBe(false);
	}
	const kept = (await context.cookies()).map(({ name }) => name);
	expect(kept.filter((name) => name !== 'time_zone')).toEqual([]);
	await page.goto('/account');
	await expect(page.getByText('There is nothing stored for this phone.')).toBeVisible();
	await page.goto('/');
	await expect(page.getByRole('link', { name: 'I am starting to run' })).toBeVisible();
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
});

test('another phone of theirs is nobody too', async ({ phone, browser, house }) => {
	await phone.screen();
	const made = await (await phone.send('/account?/code')).text();
	const code = /[0-9A-Z]{4}-[0-9A-Z]{4}/.exec(made)?.[0] ?? '';
	const other = await browser.newPage({ baseURL: house.url });
	await other.goto('/link');
	await ready(other);
	await other.getByLabel('Code').fill(code);
	await other.getByRole('button', { name: 'Use this code' }).click();
	await expect(other.getByRole('link', { name: 'Your bands' })).toBeVisible();

	await phone.lead('/account?/delete', { sure: 'yes' });
	await other.goto('/bands');
	await expect(other).toHaveURL(/\/screening\/result$/);
	await expect(other.getByRole('heading', { level: 1 })).toHaveText('No result yet');
	await other.close();
});
