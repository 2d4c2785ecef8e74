import { expect, test } from './test.ts';
import { measureResting, ready, screen } from './walk.ts';

// What guards the gate has one try.
test.describe.configure({ retries: 0 });

test('a new runner with nothing flagged may run and sees bands of their own', async ({ page }) => {
	await screen(page);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(
		'From what you told us, you may run'
	);
	await expect(page.getByText('No form can remove all risk')).toBeVisible();
	await page.getByRole('link', { name: 'See my bands' }).click();

	// Without a resting pulse: the line, the feeling and the natural speed, and not one beat.
	await ready(page);
	await expect(page.getByRole('heading', { name: 'Steady run' })).toBeVisible();
	await expect(page.getByText('I can say one full sentence')).toBeVisible();
	await expect(page.getByText('bpm')).toHaveCount(0);

	// Age 34: 208 - 0.7 x 34 = 184.2 (Tanaka 2001). Resting 68: the reserve is 116.2 (Karvonen 1957).
	// Steady run 50 to 62 %: 126.1 to 140.04. Warm-up 30 to 45 %: 102.86 to 120.29.
	await measureResting(page, 68);
	await page.goto('/bands');
	const run = page.getByRole('region', { name: 'Steady run' });
	await expect(run).toContainText('126–140');
	await expect(run).toContainText('32–35');
	await expect(page.getByRole('region', { name: 'Warm-up walk' })).toContainText('103–120');
	await expect(run.getByRole('img')).toHaveAccessibleName(
		/126 to 140 beats a minute, give or take 7/
	);
	await expect(page.getByRole('table', { name: /Each part with its pulse band/ })).toContainText(
		'126–140'
	);
	// Ten beats more: 194.2, so 131.1 to 146.24.
	await expect(page.getByRole('table', { name: /if the maximum is off/ })).toContainText('131–146');
	await expect(page.locator('canvas')).toBeVisible();
});
