import { rowsOf } from './rows.ts';
import { expect, test } from './test.ts';
import { begin, leadsTo } from './walk.ts';

test('under 18 the form ends kindly at the age, and keeps no answer', async ({
	page,
	phone,
	house
}) => {
	await begin(page);
	await page.locator('#answer').fill('17');
	await page.getByRole('button', { name: 'Next question' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('This is for adults');
	await expect(page.getByText('a parent or carer')).toBeVisible();
	const { runnerId } = (await (await phone.get('/account/export')).json()) as { runnerId: string };
	for (const table of ['screening_draft', 'screening_result', 'profile']) {
		expect(rowsOf(house, table).filter((row) => row.runner_id === runnerId)).toEqual([]);
	}

	await page.getByRole('link', { name: 'Answer again' }).click();
	await expect(page).toHaveURL(/\/screening$/);
	await page.goto('/screening/questions/3');
	await expect(page).toHaveURL(/\/screening$/);
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('No result yet');
});

test('an age under 18 ends a result that was open before', async ({ page, phone }) => {
	await phone.screen(leadsTo.mayRun);
	await begin(page);
	await page.locator('#answer').fill('17');
	await page.getByRole('button', { name: 'Next question' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('This is for adults');
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Please answer again');
});

for (const [typed, message] of [
	['', 'Type your age in whole years'],
	['17.5', 'Type your age in whole years'],
	['-34', 'It cannot be under 0'],
	['1990', 'not the year you were born'],
	['thirty', 'Type your age as a number']
] as const) {
	test(`an age typed as "${typed}" is asked again at the field and stays there`, async ({
		page
	}) => {
		await begin(page);
		await page.locator('#answer').fill(typed);
		await page.getByRole('button', { name: 'Next question' }).click();
		await expect(page.locator('#answer-issue')).toContainText(message);
		await expect(page.locator('#answer')).toHaveValue(typed);
		await expect(page.locator('#answer')).toHaveAttribute('aria-invalid', 'true');
		await expect(page.getByRole('alert')).toContainText(message);
	});
}
