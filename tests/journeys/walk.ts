import { expect, type Page } from '@playwright/test';

export type Answers = Readonly<Record<string, string | number | readonly string[]>>;

/** Complete answers of an active adult with nothing flagged. Our own, invented. */
export const baseline: Answers = {
	'age.years': 34,
	'plan.effort': 'walkrun',
	'act.days': 4,
	'act.minutes': 40,
	'act.months': 'ge3',
	'act.hard': 'yes',
	'ill.today': 'no',
	'ill.heart': 'no',
	'signs.other': ['none'],
	'chest.pain': ['none'],
	'dizzy.balance': 'no',
	'faint.year': 'no',
	'joint.sore': 'no',
	'recent.event': ['none'],
	'limits.set': ['none'],
	'cond.list': ['none'],
	'heart.told': 'no',
	'bp.told': 'no',
	'meds.rate': 'no',
	'meds.long': 'no',
	'preg.status': 'no'
};

/** Changes to the baseline that lead to each result. */
export const leadsTo = {
	mayRun: {},
	settlingIn: { 'act.days': 1, 'act.minutes': 20, 'act.months': 'lt3', 'act.hard': 'no' },
	mayWalk: { 'age.years': 52, 'act.hard': 'no' },
	byTalk: { 'meds.rate': 'yes', 'meds.why': 'minor' },
	askFirst: { 'signs.other': ['ankles'] },
	askToday: { 'chest.pain': ['exercise'] },
	askAboutInjury: { 'joint.sore': 'yes', 'joint.now': ['limits'] },
	notToday: { 'ill.today': 'yes' }
} satisfies Record<string, Answers>;

/** Pages with script are usable once they say so. */
export async function ready(page: Page) {
	await page.locator('html[data-ready]').waitFor();
}

/** From the urgent signs to the second question, with the consent between where there is none. */
export async function begin(page: Page) {
	await page.goto('/screening');
	await ready(page);
	await page.getByLabel('None of these').check();
	await page.getByRole('button', { name: 'Next question' }).click();
	await page.waitForURL(/\/screening\/(consent|questions\/2)$/);
	if (page.url().endsWith('/consent')) {
		await page.getByLabel('I agree that this app').check();
		await page.getByRole('button', { name: 'Start the questions' }).click();
	}
	await expect(page).toHaveURL(/\/screening\/questions\/2$/);
}

/** Answers the question that is shown. */
export async function answer(page: Page, answers: Answers) {
	const id = await page.locator('input[name=question]').inputValue();
	const value = answers[id];
	if (value === undefined) throw new Error(`no answer is prepared for ${id}`);
	if (typeof value === 'number') await page.locator('#answer').fill(String(value));
	else {
		for (const choice of [value].flat()) {
			await page.locator(`input[name=answer][value="${choice}"]`).check();
		}
	}
	await Promise.all([
		page.waitForEvent('load'),
		page
			.locator('form button')
			.filter({ hasText: /Next question|Keep this answer/ })
			.click()
	]);
}

/** All questions, to the check page. */
export async function answerAll(page: Page, changes: Answers = {}) {
	while (!page.url().includes('/screening/check')) {
		await answer(page, { ...baseline, ...changes });
	}
}

export async function finish(page: Page) {
	await page.getByLabel('My answers are true').check();
	await page.getByRole('button', { name: 'See my result' }).click();
	await expect(page).toHaveURL(/\/screening\/(result|changed)$/);
}

/** The whole of the first questions, to the result. */
export async function screen(page: Page, changes: Answers = {}) {
	await begin(page);
	await answerAll(page, changes);
	await finish(page);
}

/** One morning's resting pulse, counted for a minute. */
export async function measureResting(page: Page, beats: number) {
	await page.goto('/bands/resting-pulse');
	await ready(page);
	await page.getByLabel('Beats that you counted').fill(String(beats));
	await page.getByRole('button', { name: 'Add this morning' }).click();
	await expect(page.getByText(/Resting pulse \d+/)).toBeVisible();
}
