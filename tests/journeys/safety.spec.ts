import { expect, test } from './test.ts';

test('the stricter of wet bulb, heat index and a warning wins', async ({ page }) => {
	await page.goto('/safety');
	await page.getByRole('link', { name: 'Weather and air' }).click();
	await page.getByLabel('Wet-bulb globe temperature').fill('26,5');
	await page.getByLabel('Heat index').fill('33');
	await page.getByRole('button', { name: 'What does it mean today?' }).click();
	await expect(page.getByRole('status')).toContainText('Walk only');
	await page.getByLabel('Heat index').fill('20');
	await page.getByRole('button', { name: 'What does it mean today?' }).click();
	await expect(page.getByRole('status')).toContainText('Shorter, in the shade');
	await expect(page.getByLabel('Wet-bulb globe temperature')).toHaveValue('26.5');
	await page.getByLabel('There is a public heat warning').check();
	await page.getByRole('button', { name: 'What does it mean today?' }).click();
	await expect(page.getByRole('status')).toContainText('Walk only');
});

test('degrees that cannot be, and nothing at all, are said at the field', async ({ page }) => {
	await page.goto('/safety/weather');
	const ask = page.getByRole('button', { name: 'What does it mean today?' });
	await ask.click();
	await expect(page.getByRole('alert')).toContainText('Fill in one of them');
	await page.getByLabel('Heat index').fill('95');
	await ask.click();
	await expect(page.getByRole('alert')).toContainText('Is it in °C?');
	await expect(page.getByLabel('Heat index')).toHaveValue('95');
	await page.getByLabel('Heat index').fill('hot');
	await ask.click();
	await expect(page.getByRole('alert')).toContainText('Type a number of degrees');
});

test('the sheets name the number that was chosen, and who may advise what', async ({ page }) => {
	await page.goto('/safety/outing');
	await expect(page.getByText('choose it before you set out')).toBeVisible();
	await page.goto('/emergency-number');
	await page.getByRole('radio').first().check();
	await page.getByRole('button', { name: 'Keep this number' }).click();
	for (const sheet of ['weather', 'outing', 'health']) {
		await page.goto(`/safety/${sheet}`);
		await expect(page.getByRole('link', { name: 'Emergency number: 112' })).toBeVisible();
	}
	// Our own rule, common practice: a sign of illness needs a doctor.
	await expect(page.getByRole('row', { name: /A sign of illness/ })).toContainText(/a doctor$/);
	await expect(page.getByRole('row', { name: /Ill today/ })).toContainText('Nobody');
});
