import { expect, test } from './test.ts';
import { leadsTo, screen } from './walk.ts';

const walks = [
	['4.824', '98'],
	['5.628', '106'],
	['6.432', '115']
] as const;

// Walks at 80.4, 93.8 and 107.2 m/min with 98, 106 and 115 beats: the line of uptake over pulse is
// 0.157465 x pulse - 3.86382 (computed). Age 34: maximum 184.2, so 25.14 mL/kg/min.
test('three walks give a fitness estimate, and speeds, until they are deleted', async ({
	page
}) => {
	await screen(page);
	await page.goto('/bands');
	await page.getByRole('link', { name: 'Walk check' }).click();
	for (const [nth, [speed, pulse]] of walks.entries()) {
		await page.getByLabel(`Speed of walk ${nth + 1}`).fill(speed);
		await page.getByLabel(`Pulse at the end of walk ${nth + 1}`).fill(pulse);
	}
	await page.getByRole('button', { name: 'Work it out' }).click();
	await expect(page.getByText('about 25 mL/kg/min')).toBeVisible();
	await page.goto('/bands');
	await expect(page.getByText('Walk check')).toBeVisible();
	await page.goto('/bands/walk-check');
	await page.getByRole('button', { name: 'Delete this walk check' }).click();
	await expect(page.getByText('mL/kg/min')).toHaveCount(0);
});

test('the beats of a short count, and a pulse that does not rise, are asked again', async ({
	page
}) => {
	await screen(page);
	await page.goto('/bands/walk-check');
	for (const [nth, [speed]] of walks.entries()) {
		await page.getByLabel(`Speed of walk ${nth + 1}`).fill(speed);
		await page.getByLabel(`Pulse at the end of walk ${nth + 1}`).fill(nth === 0 ? '25' : '110');
	}
	await page.getByRole('button', { name: 'Work it out' }).click();
	await expect(page.getByText('A pulse is for a full minute.').first()).toBeVisible();
	await page.getByLabel('Pulse at the end of walk 1').fill('108');
	await page.getByRole('button', { name: 'Work it out' }).click();
	await expect(page.getByText('rises by less than ten beats').first()).toBeVisible();
	await expect(page.getByLabel('Speed of walk 2')).toHaveValue('5.628');
});

test('by talk there is no walk check', async ({ page }) => {
	await screen(page, leadsTo.byTalk);
	await page.goto('/bands/walk-check');
	await expect(page.getByText('There is no walk check for you')).toBeVisible();
	await expect(page.getByRole('textbox')).toHaveCount(0);
});
