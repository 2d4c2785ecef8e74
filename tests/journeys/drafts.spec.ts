import type { Page } from '@playwright/test';
import { rowsOf } from './rows.ts';
import { expect, test } from './test.ts';
import { answer, answerAll, baseline, begin, finish, ready } from './walk.ts';

/** Three answers, and then the phone is put away. */
async function beginAndLeave(page: Page) {
	await begin(page);
	await answer(page, { 'age.years': 43 });
	await answer(page, baseline);
	await answer(page, baseline);
	await expect(page).toHaveURL(/\/screening\/questions\/5$/);
	await page.close();
}

async function sayNoneUrgent(page: Page) {
	await ready(page);
	await page.getByLabel('None of these').check();
	await page.getByRole('button', { name: 'Next question' }).click();
}

test('open answers outlive a closed tab and six days, and the urgent question is asked again', async ({
	page,
	context,
	house
}) => {
	await beginAndLeave(page);
	await house.reopen({ daysAhead: 6 });
	const later = await context.newPage();
	await later.goto('/');
	await later.getByRole('link', { name: 'Go on with the first questions' }).click();
	await sayNoneUrgent(later);
	await expect(later).toHaveURL(/\/screening\/questions\/5$/);
	await later.goto('/screening/questions/2');
	await expect(later.locator('#answer')).toHaveValue('43');
	await answerAll(later);
	await finish(later);
	await expect(later.getByRole('heading', { level: 1 })).toHaveText(
		'From what you told us, you may run'
	);
});

test('after seven days they are gone, from the store too, and the form is blank', async ({
	page,
	context,
	phone,
	house
}) => {
	await beginAndLeave(page);
	await house.reopen({ daysAhead: 7 });
	const later = await context.newPage();
	await later.goto('/screening/check');
	await expect(later).toHaveURL(/\/screening$/);
	const { runnerId } = (await (await phone.get('/account/export')).json()) as { runnerId: string };
	expect(rowsOf(house, 'screening_draft').filter((row) => row.runner_id === runnerId)).toEqual([]);
	await sayNoneUrgent(later);
	await expect(later).toHaveURL(/\/screening\/questions\/2$/);
	await expect(later.locator('#answer')).toHaveValue('');
});

test('thirteen hours later the urgent question comes first, wherever the form is opened', async ({
	page,
	phone,
	house
}) => {
	await phone.answerAll();
	await page.goto('/screening/check');
	await house.reopen({ minutesAhead: 13 * 60 });
	for (const path of ['/screening/check', '/screening/questions/7', '/screening/questions/22']) {
		expect((await phone.get(path)).headers().location, path).toBe('/screening');
	}
	// A check page that was left open finishes nothing either.
	await page.getByLabel('My answers are true').check();
	await page.getByRole('button', { name: 'See my result' }).click();
	await expect(page).toHaveURL(/\/screening$/);
	expect(await phone.result()).toBe('No result yet');
	await sayNoneUrgent(page);
	await expect(page).toHaveURL(/\/screening\/check$/);
	await finish(page);
});

test('an answer on the way does not stand in for the urgent question', async ({
	page,
	phone,
	house
}) => {
	await phone.answerAll();
	await house.reopen({ minutesAhead: 8 * 60 });
	expect(
		await phone.lead('/screening/questions/2?from=check', {
			question: 'age.years',
			answer: 35,
			from: 'check'
		})
	).toBe('/screening/check');
	// "Right now" was asked sixteen hours ago, although an answer is only eight hours old.
	await house.reopen({ minutesAhead: 16 * 60 });
	await page.goto('/screening/check');
	await expect(page).toHaveURL(/\/screening$/);
});

test('each answer is there again after going back, and a blank form has none', async ({ page }) => {
	await begin(page);
	await expect(page.locator('#answer')).toHaveValue('');
	await answer(page, baseline);
	await expect(page.locator(':checked')).toHaveCount(0);
	await answer(page, { 'plan.effort': 'hard' });
	await page.getByRole('link', { name: 'Back' }).click();
	await expect(page.locator('input[value=hard]')).toBeChecked();
	await page.getByRole('link', { name: 'Back' }).click();
	await expect(page.locator('#answer')).toHaveValue('34');
});
