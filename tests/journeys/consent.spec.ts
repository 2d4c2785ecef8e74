import { expect, test } from './test.ts';
import { answerAll, begin, finish, measureResting, ready } from './walk.ts';

test('no question comes before the agreement, and none is stored without it', async ({
	page,
	context
}) => {
	for (const path of [
		'/screening/consent',
		'/screening/questions/2',
		'/screening/check',
		'/screening/changed'
	]) {
		await page.goto(path);
		await expect(page, path).toHaveURL(/\/screening$/);
	}
	await ready(page);
	await page.getByLabel('None of these').check();
	await page.getByRole('button', { name: 'Next question' }).click();
	await expect(page.getByText('It cannot find illness.')).toBeVisible();
	await expect(page.getByText('Whoever runs this server could read it.')).toBeVisible();
	await expect(page.getByRole('checkbox')).not.toBeChecked();
	await page.getByRole('button', { name: 'Start the questions' }).click();
	await expect(page.locator('#agree-issue')).toContainText('Tick the box if you agree.');
	expect((await context.cookies()).map(({ name }) => name).sort()).toEqual([
		'no_urgent_sign',
		'time_zone'
	]);
	await page.getByRole('link', { name: 'I would rather not' }).click();
	await page.goto('/account');
	await expect(page.getByText('There is nothing stored for this phone.')).toBeVisible();
});

test('taken back, bands close at once and open answers go; given again, the result stands', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await measureResting(page, 68);
	const bands = await context.newPage();
	await bands.goto('/bands');
	await expect(bands.getByText('126–140').first()).toBeVisible();
	await page.goto('/account');
	await page.getByRole('button', { name: 'Take it back' }).click();
	await expect(page.getByText('taken back on')).toBeVisible();
	await bands.reload();
	await expect(bands).toHaveURL(/\/screening\/result$/);
	await expect(bands.getByRole('heading', { level: 1 })).toHaveText('You took your agreement back');
	expect(
		(await phone.send('/screening/questions/2', { question: 'age.years', answer: 34 })).headers()
			.location
	).toBe('/screening');

	await begin(page);
	await page.goto('/bands');
	await expect(page.getByText('126–140').first()).toBeVisible();
});

test('taking it back and giving it again does not lift an urgent sign', async ({ page, phone }) => {
	await phone.screen();
	await phone.lead('/screening?/answer', { urgent: 'faint' });
	await phone.lead('/account?/withdraw');
	expect(await phone.result()).toBe('You took your agreement back');
	await begin(page);
	await page.goto('/screening/result');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ask first, today');
	await expect(page.getByText('You told us about an urgent sign.')).toBeVisible();
	await page.goto('/screening/questions/2');
	await answerAll(page);
	await finish(page);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ask first, today');
});
