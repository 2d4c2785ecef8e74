import type { Locator, Page } from '@playwright/test';
import { expect, test } from './test.ts';
import { baseline, leadsTo, ready } from './walk.ts';

// WCAG 2.2: 2.1.1 keyboard, 2.1.2 no trap, 2.4.1 bypass, 2.4.7 focus visible.

test('from the start to the bands by keyboard alone, with the focus seen at each stop', async ({
	page
}) => {
	await page.goto('/');
	await press(page, page.getByRole('link', { name: 'I am starting to run' }));
	await ready(page);
	await tabTo(page, page.getByLabel('None of these'));
	await page.keyboard.press('Space');
	await press(page, page.getByRole('button', { name: 'Next question' }));
	await tabTo(page, page.getByLabel('I agree that this app'));
	await page.keyboard.press('Space');
	await press(page, page.getByRole('button', { name: 'Start the questions' }));

	while (!page.url().includes('/screening/check')) {
		await answerByKeys(page);
		await press(page, page.getByRole('button', { name: 'Next question' }));
	}
	await tabTo(page, page.getByLabel('My answers are true'));
	await page.keyboard.press('Space');
	await press(page, page.getByRole('button', { name: 'See my result' }));
	await press(page, page.getByRole('link', { name: 'See my bands' }));
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Your effort bands');
	await ready(page);
	await tabTo(page, page.getByText('Where these numbers come from').first());
	await page.keyboard.press('Enter');
	await expect(page.locator('details[open]')).toBeVisible();
});

test('the first stop of a page is a way past its head', async ({ page }) => {
	await page.goto('/safety');
	await page.keyboard.press('Tab');
	const skip = page.getByRole('link', { name: 'Skip to the page' });
	await expect(skip).toBeFocused();
	await expect(skip).toBeInViewport({ ratio: 1 });
	await page.keyboard.press('Enter');
	await page.keyboard.press('Tab');
	await expect(page.getByRole('link', { name: '112' })).toBeFocused();
});

test('a table that is wider than a phone is reached and scrolled by keys', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.askFirst);
	await page.setViewportSize({ width: 360, height: 640 });
	await page.goto('/screening/doctor');
	const table = page.getByRole('region', { name: /The load of each part/ });
	await tabTo(page, table);
	await page.keyboard.press('ArrowRight');
	await expect.poll(() => table.evaluate((it) => it.scrollLeft)).toBeGreaterThan(0);
});

/** Presses Tab until it is there; each stop on the way has to be seen. */
async function tabTo(page: Page, wanted: Locator) {
	for (let stops = 0; stops < 60; stops++) {
		await page.keyboard.press('Tab');
		await seen(page);
		if (await wanted.evaluate((it) => it === document.activeElement)) return;
	}
	throw new Error(`no way by Tab to ${String(wanted)} at ${page.url()}`);
}

async function press(page: Page, wanted: Locator) {
	await tabTo(page, wanted);
	await Promise.all([page.waitForEvent('load'), page.keyboard.press('Enter')]);
}

/** A box or a circle shows its focus around the whole answer. */
async function seen(page: Page) {
	const outline = await page.evaluate(() => {
		const focused = document.activeElement;
		if (focused === null || focused === document.body) return null;
		const { outlineStyle, outlineWidth } = getComputedStyle(focused.closest('.choice') ?? focused);
		return { what: focused.outerHTML.slice(0, 80), outlineStyle, outlineWidth };
	});
	if (outline === null) return;
	expect(outline, outline.what).toMatchObject({ outlineStyle: 'solid', outlineWidth: '3px' });
}

async function answerByKeys(page: Page) {
	const id = await page.locator('input[name=question]').inputValue();
	const value = baseline[id];
	if (typeof value === 'number') {
		await tabTo(page, page.locator('#answer'));
		return page.keyboard.type(String(value));
	}
	const inputs = page.locator('input[name=answer]');
	const place = await inputs.evaluateAll(
		(all, wanted) => all.findIndex((it) => (it as HTMLInputElement).value === wanted),
		String(value)
	);
	const isOneChoice = (await inputs.first().getAttribute('type')) === 'radio';
	// Circles are one stop, moved through by arrows; boxes are a stop each.
	await tabTo(page, inputs.nth(isOneChoice ? 0 : place));
	await page.keyboard.press('Space');
	for (let down = 0; isOneChoice && down < place; down++) await page.keyboard.press('ArrowDown');
	await expect(inputs.nth(place)).toBeChecked();
}
