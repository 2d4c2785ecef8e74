import type { Page } from '@playwright/test';
import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, ready } from './walk.ts';

const send = async (page: Page, name: string) => {
	await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name }).click()]);
	await ready(page);
};

async function guess(page: Page, effort: string, pulse: string | null) {
	await page
		.getByRole('radio', { name: 'Recovery walk' })
		.or(page.getByRole('radio', { name: 'Brisk walk' }))
		.first()
		.check();
	await page.getByLabel('How hard does it feel?').selectOption(effort);
	if (pulse !== null) await page.getByLabel('What is your pulse?').fill(pulse);
	await send(page, 'Keep my guess');
}

test('a guess is kept before anything is seen, then set against a counted pulse', async ({
	page,
	phone
}) => {
	await phone.screen();
	await page.goto('/learn/guess');
	await ready(page);
	await guess(page, '5', '128');
	await expect(page.getByText('you guessed effort 5 and 128')).toBeVisible();
	await page.getByRole('radio', { name: 'Comfortable' }).check();
	await page.getByRole('radio', { name: 'Counted for 15 seconds' }).check();
	await page.getByLabel('Beats that you counted').fill('34');
	await send(page, 'See how close I was');
	// 34 beats in 15 s are 136 a minute.
	await expect(page.getByRole('status').first()).toContainText('You guessed 128, and it was 136.');
	await expect(page.getByRole('status').first()).toContainText('8 beats too low.');
	await expect(page.getByRole('row', { name: /Recovery walk/ })).toContainText('−8');
});

test('six guesses say whether they get closer, with a picture and its table; all can go', async ({
	page,
	phone
}) => {
	await phone.screen();
	for (const pulse of [106, 116, 126, 130, 138, 136]) {
		await phone.lead('/learn/guess?/guess', { phase: 'recovery-walk', effort: 4, pulse });
		const looked = { talk: 'comfortable', method: '15', beats: 34 };
		await phone.lead('/learn/guess?/look', looked);
	}
	await page.goto('/learn/guess');
	await ready(page);
	// Off by -30, -20, -10, then -6, 2, 0: means 20 and 2.67.
	await expect(page.getByText('20 beats off on average, your last three 3.')).toBeVisible();
	// Of beats and of steps.
	await expect(page.locator('canvas')).toHaveCount(2);
	await expect(page.locator('canvas').first()).toBeVisible();
	await expect(page.getByRole('img', { name: /^Effort: how many steps/ })).toBeVisible();
	await expect(page.locator('tbody tr')).toHaveCount(6);
	const held = await (await phone.get('/account/export')).json();
	expect(held.guesses).toHaveLength(6);
	await page
		.getByRole('button', { name: /^Remove the guess/ })
		.first()
		.click();
	await expect(page.locator('tbody tr')).toHaveCount(5);
	await send(page, 'Remove all guesses made here');
	await expect(page.locator('tbody tr')).toHaveCount(0);
	expect((await (await phone.get('/account/export')).json()).guesses).toEqual([]);
});

test('by talk there is no pulse to guess, and those that were kept are gone', async ({
	page,
	phone
}) => {
	await phone.screen();
	await phone.lead('/learn/guess?/guess', { phase: 'recovery-walk', effort: 4, pulse: 131 });
	await phone.lead('/learn/guess?/look', { talk: 'comfortable', method: 'device', beats: 137 });
	await phone.screen(leadsTo.byTalk);
	expect(await (await phone.get('/account/export')).text()).not.toMatch(/\b13[17]\b/);
	await page.goto('/learn/guess');
	await ready(page);
	await expect(page.getByText('pulse')).toHaveCount(0);
	await expect(page.getByText(/beats/)).toHaveCount(0);
	await guess(page, '8', null);
	await page.getByRole('radio', { name: 'Comfortable' }).check();
	await send(page, 'See how close I was');
	await expect(page.getByRole('status').first()).toContainText('2 steps higher than talk says');
});

test('what is wrong is said at its field, and what was typed stays', async ({ page, phone }) => {
	await phone.screen(leadsTo.settlingIn);
	await phone.measureResting(68, todayIn('UTC'));
	await page.goto('/learn/guess');
	await ready(page);
	await page.getByLabel('What is your pulse?').fill('fast');
	await send(page, 'Keep my guess');
	await expect(page.getByRole('alert')).toContainText('Pick the part.');
	await expect(page.getByRole('alert')).toContainText('Type a number, such as 120.');
	await expect(page.getByLabel('What is your pulse?')).toHaveValue('fast');
	await guess(page, '5', '120');
	await page.getByRole('radio', { name: 'With breaths' }).check();
	await page.getByLabel('Beats that you counted').fill('99');
	await send(page, 'See how close I was');
	await expect(page.getByRole('alert')).toContainText('too high to be true');
	await send(page, 'Throw this guess away');
	await expect(page.getByRole('button', { name: 'Keep my guess' })).toBeVisible();
	const run = { phase: 'steady-run', effort: 4, pulse: 120 };
	expect((await phone.send('/learn/guess?/guess', run)).status(), 'no run yet').toBe(404);
});
