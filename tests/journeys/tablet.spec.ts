import { become, expect, test } from './lantern-street.ts';
import type { Page } from '@playwright/test';
import { Phone } from './phone.ts';
import { rowsOf } from './rows.ts';
import { answer, baseline, begin, leadsTo, ready } from './walk.ts';

// Our own rules, no source.

const heading = (page: Page) => page.getByRole('heading', { level: 1 });
const cookieNames = async (page: Page) =>
	(await page.context().cookies()).map(({ name }) => name).sort();

const codeOn = async (page: Page) =>
	/[2-9A-Z]{4}-[2-9A-Z]{4}/.exec((await page.locator('main').textContent()) ?? '')?.[0] ?? '';

test('a tablet goes round: one after the other answers, joins, and leaves nothing behind', async ({
	page,
	phone,
	lantern,
	house
}) => {
	await page.goto(`${lantern.path}/invite`);
	await page.getByRole('button', { name: 'Share this tablet' }).click();
	await expect(heading(page)).toHaveText('Lantern Street beginners: your turn');
	// The coach is signed out of it: nobody walks from here to the roster.
	await page.goto(lantern.path);
	await expect(page).toHaveURL(/\/coach\/sign-in/);
	await page.goto(`/tablet/${lantern.groupId}`);

	await page.getByRole('link', { name: 'Begin' }).click();
	await ready(page);
	await phone.screen(leadsTo.askFirst);
	await page.goto('/screening/result');
	await expect(heading(page)).toHaveText('Ask first');
	await page.getByRole('link', { name: 'Go on and join' }).click();
	await page.getByLabel('Your name').fill('راشد');
	await page.getByLabel('I agree that the coaches').check();
	await page.getByRole('button', { name: 'Join, and clear this tablet' }).click();
	// The code is all that is left to see, and it is shown once.
	await expect(heading(page)).toHaveText('Write this down');
	expect(await cookieNames(page)).toEqual(['shared_tablet']);
	const code = await codeOn(page);
	expect(await page.content()).not.toContain('راشد');
	await page.reload();
	await expect(heading(page)).toHaveText('Done: hand the tablet back');
	await page.goto(`/tablet/${lantern.groupId}`);
	await page.goBack();
	await expect(heading(page)).toHaveText('Done: hand the tablet back');
	expect(await page.content()).not.toContain('راشد');
	expect(await page.content()).not.toContain(code);
	for (const path of ['/screening/result', '/account', '/bands']) {
		await page.goto(path);
		expect(await page.content()).not.toMatch(/Ask first|راشد|ankle/);
	}

	// Somebody begins and goes away; the next one does not go on where they stopped.
	await page.goto(`/tablet/${lantern.groupId}`);
	await page.getByRole('link', { name: 'Begin' }).click();
	await begin(page);
	await answer(page, baseline);
	const before = rowsOf(house, 'user').length;
	await page.getByRole('button', { name: 'Clear it for the next person' }).click();
	await expect(heading(page)).toHaveText('Done: hand the tablet back');
	expect(rowsOf(house, 'user')).toHaveLength(before - 1);
	await page.getByRole('link', { name: 'Next person' }).click();

	await page.getByRole('link', { name: 'Begin' }).click();
	await expect(page).toHaveURL(/\/screening$/);
	await phone.screen();
	await page.goto('/screening/result');
	await page.getByRole('link', { name: 'Go on and join' }).click();
	await page.getByLabel('Your name').fill("D'Arcy");
	await page.getByLabel('I agree that the coaches').check();
	await page.getByRole('button', { name: 'Join, and clear this tablet' }).click();
	await page.getByRole('link', { name: 'I have it: next person' }).click();
	await page.getByRole('button', { name: 'Stop sharing this tablet' }).click();
	await expect(heading(page)).toHaveText('This tablet is not shared right now');
	expect(await cookieNames(page)).toEqual([]);

	await page.getByRole('link', { name: 'Coach: sign in' }).click();
	await ready(page);
	await page.getByLabel('E-mail').fill('odile@lantern.example');
	await page.getByLabel('Password').fill('seven blue kettles');
	await page.getByRole('button', { name: 'Sign in', exact: true }).click();
	await page.goto(lantern.path);
	await expect(page.getByRole('row').filter({ hasText: 'راشد' })).toContainText('not today');
	await expect(page.getByRole('row').filter({ hasText: "D'Arcy" })).toContainText('may run');
});

test('what clears a tablet tells the browser so, and nobody turns one on without being its coach', async ({
	lantern,
	phone,
	stranger
}) => {
	const other = new Phone(await stranger(), phone.url);
	const tablet = `/tablet/${lantern.groupId}`;
	expect((await other.send(`${lantern.path}/invite?/tablet`)).status()).toBe(403);
	expect((await other.send(`${tablet}?/clear`)).status()).toBe(404);
	expect(await (await other.get(tablet)).text()).toContain('not shared right now');
	expect(await (await other.get(tablet)).text()).not.toContain('Lantern Street');

	expect(await phone.lead(`${lantern.path}/invite?/tablet`)).toBe(tablet);
	const answer = await phone.send(`${tablet}?/clear`);
	expect(answer.headers()['clear-site-data']).toBe('"cache", "storage"');
	expect(answer.headers().location).toBe(`${tablet}/done`);
	// A browser that is shared for one group joins no other by its address.
	expect((await phone.send('/tablet/another?/clear')).status()).toBe(404);
});

test('who comes back with the code answers again, sees nothing from before, and stays one row', async ({
	page,
	phone,
	lantern,
	house
}) => {
	const tablet = await phone.lead(`${lantern.path}/invite?/tablet`);
	await phone.screen();
	await page.goto(tablet);
	await page.getByLabel('Your name').fill('Dagny Vinter');
	await page.getByLabel('I agree that the coaches').check();
	await page.getByRole('button', { name: 'Join, and clear this tablet' }).click();
	const code = await codeOn(page);
	await page.getByRole('link', { name: 'I have it: next person' }).click();

	await page.getByLabel('Your code').fill('AAAA-2222');
	await page.getByRole('button', { name: 'Answer again' }).click();
	await expect(page.locator('#code-issue')).toContainText('does not work on this tablet');
	await page.getByLabel('Your code').fill(code.toLowerCase());
	await page.getByRole('button', { name: 'Answer again' }).click();
	await expect(page).toHaveURL(/\/screening$/);

	// Whoever holds the paper reads nothing by it.
	for (const path of [
		'/account',
		'/account/export',
		'/bands',
		'/screening/result',
		'/screening/doctor',
		'/past'
	]) {
		const answer = await phone.get(path);
		expect(`${answer.status()} ${answer.headers().location}`, path).toBe(`303 ${tablet}`);
	}
	expect((await phone.send('/account?/delete', { sure: 'yes' })).status()).toBe(403);
	expect((await phone.send('/screening/result?/painGone', { gone: 'yes' })).status()).toBe(404);

	// The first answer ends what the coach read before.
	const resultOf = () => rowsOf(house, 'screening_result').at(-1)?.['answered_again_at'];
	const before = rowsOf(house, 'screening_result').length;
	expect(resultOf()).toBeNull();
	const first = await phone.begin();
	const question = /name="question" value="([^"]+)"/.exec(await (await phone.get(first)).text());
	await phone.lead(first, {
		question: question?.[1] ?? '',
		answer: baseline['age.years'] as number
	});
	expect(resultOf()).not.toBeNull();
	await phone.screen(leadsTo.askFirst);
	expect(rowsOf(house, 'screening_result')).toHaveLength(before + 1);
	await page.goto('/screening/result');
	await expect(heading(page)).toHaveText('Ask first');
	await expect(page.locator('main')).toContainText('ankles');
	await page.getByRole('link', { name: 'Go on, and clear this tablet' }).click();
	await page.getByRole('button', { name: 'Clear this tablet', exact: true }).click();
	await expect(heading(page)).toHaveText('Done: hand the tablet back');
	expect(await cookieNames(page)).toEqual(['shared_tablet']);

	// Somebody begins as new under the same name: the coach is told, the tablet says nothing.
	await phone.screen();
	await page.goto(tablet);
	await page.getByLabel('Your name').fill('Dagny Vinter');
	await page.getByLabel('I agree that the coaches').check();
	await page.getByRole('button', { name: 'Join, and clear this tablet' }).click();
	await expect(heading(page)).toHaveText('Write this down');
	expect(await page.locator('main').textContent()).not.toContain('Dagny');

	await become(page, lantern.coach);
	await phone.lead('/coach/sign-in', {
		email: 'odile@lantern.example',
		password: 'seven blue kettles'
	});
	await page.goto(lantern.path);
	const rows = page.getByRole('row').filter({ hasText: 'Dagny Vinter' });
	await expect(rows).toHaveCount(2);
	await expect(rows.filter({ hasText: 'not today' })).toHaveCount(1);
	const told = page.getByRole('region', { name: 'More than one row is called Dagny Vinter' });
	await told.getByRole('link', { name: /^Row 1/ }).click();
	await page.getByLabel('Take Dagny Vinter off the list').check();
	await page.getByRole('button', { name: 'Take off the list now' }).click();
	await expect(rows).toHaveCount(1);
	await expect(rows).toContainText('may run');
	await expect(told).toHaveCount(0);
});

test('who comes back with the code can leave, and then nothing is kept of them', async ({
	page,
	phone,
	lantern,
	house
}) => {
	const tablet = await phone.lead(`${lantern.path}/invite?/tablet`);
	await phone.screen();
	await page.goto(tablet);
	await page.getByLabel('Your name').fill('Tobias Lindqvist');
	await page.getByLabel('I agree that the coaches').check();
	await page.getByRole('button', { name: 'Join, and clear this tablet' }).click();
	const code = await codeOn(page);
	const member = rowsOf(house, 'member').find(({ name }) => name === 'Tobias Lindqvist');
	const rowOf = () => rowsOf(house, 'member').find(({ id }) => id === member?.['id']);
	await page.getByRole('link', { name: 'I have it: next person' }).click();
	await page.getByLabel('Your code').fill(code);
	await page.getByRole('button', { name: 'Answer again' }).click();
	await expect(page).toHaveURL(/\/screening$/);

	await page.getByRole('link', { name: 'Leave the group' }).click();
	const leave = page.getByRole('button', { name: 'Leave, and clear this tablet' });
	await leave.click();
	await expect(page.locator('#code-issue')).toHaveText('Type your code.');
	await page.getByLabel('Your code').fill('AAAA-2222');
	await leave.click();
	await expect(page.locator('#code-issue')).toContainText('does not work on this tablet');
	expect(rowOf()?.['left_at']).toBeNull();
	await page.getByLabel('Your code').fill(code);
	await leave.click();
	await expect(heading(page)).toHaveText('Done: hand the tablet back');
	await expect(page.getByText('You have left the group.')).toBeVisible();
	expect(await cookieNames(page)).toEqual(['shared_tablet']);

	expect(rowOf()?.['runner_id'] ?? null).toBeNull();
	expect(rowsOf(house, 'user').map(({ id }) => id)).not.toContain(member?.['runner_id']);
	await page.goto(tablet);
	await page.getByLabel('Your code').fill(code);
	await page.getByRole('button', { name: 'Answer again' }).click();
	await expect(page.locator('#code-issue')).toContainText('does not work on this tablet');
});
