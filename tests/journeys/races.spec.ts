import { rowsOf } from './rows.ts';
import { expect, test } from './test.ts';
import { begin, leadsTo, measureResting } from './walk.ts';

test('two tabs finish the same form: one result, and both arrive at it', async ({
	page,
	context,
	phone,
	house
}) => {
	await phone.answerAll();
	const other = await context.newPage();
	for (const tab of [page, other]) {
		await tab.goto('/screening/check');
		await tab.getByLabel('My answers are true').check();
	}
	const before = rowsOf(house, 'screening_result').length;
	await Promise.all(
		[page, other].map((tab) => tab.getByRole('button', { name: 'See my result' }).click())
	);
	for (const tab of [page, other]) {
		await expect(tab).toHaveURL(/\/screening\/result$/);
		await expect(tab.getByRole('heading', { level: 1 })).toHaveText(
			'From what you told us, you may run'
		);
	}
	expect(rowsOf(house, 'screening_result')).toHaveLength(before + 1);
});

test('the check page sent twice, and again later, leads to the one result', async ({
	page,
	phone,
	house
}) => {
	await phone.answerAll(leadsTo.askFirst);
	const before = rowsOf(house, 'screening_result').length;
	await page.goto('/screening/check');
	await page.getByLabel('My answers are true').check();
	await page.getByRole('button', { name: 'See my result' }).dblclick();
	await expect(page).toHaveURL(/\/screening\/result$/);
	const sent = await Promise.all(
		[1, 2, 3, 4].map(() => phone.lead('/screening/check', { truth: 'yes' }))
	);
	expect(new Set(sent)).toEqual(new Set(['/screening/result']));
	expect(rowsOf(house, 'screening_result')).toHaveLength(before + 1);
	expect(await phone.result()).toBe('Ask first');
});

test('eight check pages sent at once make one result', async ({ phone, house }) => {
	await phone.answerAll();
	const before = rowsOf(house, 'screening_result').length;
	const sent = await Promise.all(
		Array.from({ length: 8 }, () => phone.send('/screening/check', { truth: 'yes' }))
	);
	expect(new Set(sent.map((one) => one.headers().location))).toEqual(
		new Set(['/screening/result'])
	);
	expect(rowsOf(house, 'screening_result')).toHaveLength(before + 1);
});

test('the newest answers win: a stricter result closes an open tab at its next step', async ({
	page,
	context,
	phone
}) => {
	await phone.screen();
	await measureResting(page, 68);
	await page.goto('/bands');
	await expect(page.getByText('126–140').first()).toBeVisible();
	const other = await context.newPage();
	await begin(other);
	// Open answers close nothing yet: what was said last is what counts.
	expect((await phone.get('/bands')).status()).toBe(200);
	await other.close();
	await phone.screen(leadsTo.askFirst);
	await page.reload();
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByText('126–140')).toHaveCount(0);
	expect((await phone.get('/bands')).headers().location).toBe('/screening/result');
});

test('a status or reasons that are sent along with the form count for nothing', async ({
	phone
}) => {
	await phone.answerAll(leadsTo.askFirst);
	const forged = {
		truth: 'yes',
		status: 'CLEARED_ALL',
		reasons: '',
		pulse: 'on',
		decision: 'result'
	};
	expect(await phone.lead('/screening/check', forged)).toBe('/screening/result');
	expect(await phone.result()).toBe('Ask first');
});
