import { expect, test } from './test.ts';
import { leadsTo, ready } from './walk.ts';

test('whoever was told to ask first may learn the feel sitting down', async ({ page, phone }) => {
	await phone.screen(leadsTo.askFirst);
	await page.goto('/screening/result');
	await page.getByRole('link', { name: 'Learn the feel' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Learn the feel');
	for (const lesson of ['The talk test', 'The effort scale', 'Counting on one breath']) {
		await page.goto('/learn');
		await page.getByRole('link', { name: lesson }).first().click();
		await expect(page.getByRole('heading', { level: 1 })).toContainText(lesson);
		await page.getByRole('link', { name: 'All lessons' }).click();
		await expect(page).toHaveURL(/\/learn$/);
	}
});

// Open lessons are done sitting down; whatever asks for a walk or a run stands behind the gate.
test('no open lesson of a runner asks for effort', async ({ page }) => {
	for (const path of ['/learn/talk', '/learn/scale', '/learn/one-breath']) {
		await page.goto(path);
		const asked = (await page.locator('main').innerText())
			.split(/(?<=[.:?])\s+|\n+/)
			.filter((sentence) =>
				/^(then |now |count again )*\W*(walk|run|move|jog|climb)\b/i.test(sentence)
			);
		// What to do in an outing that became too hard is not a thing to do here.
		expect(
			asked.filter((sentence) => sentence !== 'Walk until you can talk.'),
			path
		).toEqual([]);
	}
});

test('the clock takes the time of a text and judges nothing', async ({ page }) => {
	await page.clock.install();
	await page.goto('/learn/talk');
	await ready(page);
	await page.getByRole('button', { name: 'Start reading' }).click();
	await page.clock.runFor(29_000);
	await expect(page.getByText('29 s so far')).toBeVisible();
	await page.getByRole('button', { name: 'I have read it' }).click();
	await expect(page.getByRole('status')).toContainText('29 seconds');
	await page.getByRole('button', { name: 'Start reading' }).click();
	await page.clock.runFor(3000);
	await page.getByRole('button', { name: 'I have read it' }).click();
	await expect(page.getByRole('status')).toHaveText(/too short/);
});

test('there is always another text, and after the last comes the first', async ({ page }) => {
	await page.goto('/learn/talk');
	await ready(page);
	const first = await page.locator('figcaption').innerText();
	const seen = new Set<string>();
	for (let turn = 0; turn < 10; turn++) {
		const title = await page.locator('figcaption').innerText();
		if (seen.has(title)) break;
		seen.add(title);
		await page.getByRole('link', { name: 'Another text' }).click();
		await expect(page.locator('figcaption')).not.toHaveText(title);
	}
	expect(seen.size).toBeGreaterThanOrEqual(4);
	await expect(page.locator('figcaption')).toHaveText(first);
	for (const strange of ['0', '99', 'x', '1.5', '-1']) {
		await page.goto(`/learn/talk?text=${strange}`);
		await expect(page.locator('figcaption'), strange).toHaveText(first);
	}
});

// Counts of under 25 at rest: 40 to 50 % of it, others 30 to 40 % (Loose 2012, abstract).
test('the shares of one breath are those of the study', async ({ page }) => {
	await page.goto('/learn/one-breath');
	await expect(page.getByRole('row', { name: /under 25/ })).toContainText('40–50 %');
	await expect(page.getByRole('row', { name: /25 or more/ })).toContainText('30–40 %');
	await expect(page.getByText('counts to 20 at rest')).toContainText('8 or 10');
});

test('the lesson fills ten minutes without a gap', async ({ page }) => {
	await page.goto('/learn/teach');
	const times = await page.locator('.plan tbody th').allInnerTexts();
	const ends = times.map((time) => time.split('–'));
	expect(ends[0]?.[0]).toBe('0:00');
	expect(ends.at(-1)?.[1]).toBe('10:00');
	for (const [at, [, end]] of ends.slice(0, -1).entries()) expect(ends[at + 1]?.[0]).toBe(end);
});

test.describe('without script', () => {
	test.use({ javaScriptEnabled: false });
	test('the text changes by a link, and any clock will do', async ({ page }) => {
		await page.goto('/learn/talk');
		await expect(page.getByRole('button', { name: 'Start reading' })).toBeHidden();
		await expect(page.locator('noscript p')).toBeVisible();
		const first = await page.locator('figcaption').innerText();
		await page.getByRole('link', { name: 'Another text' }).click();
		await expect(page.locator('figcaption')).not.toHaveText(first);
	});
});
