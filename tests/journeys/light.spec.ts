import type { Page } from '@playwright/test';
import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { ready } from './walk.ts';

// The two grounds of the app's own design.
const LIGHT = 'rgb(250, 246, 238)';
const DARK = 'rgb(29, 22, 34)';

const ground = (page: Page) => expect(page.locator('body'));

async function choose(page: Page, light: string) {
	await page.goto('/account');
	await ready(page);
	await page.getByLabel('Light or dark').selectOption(light);
	await page.getByRole('button', { name: 'Keep these settings' }).click();
	await expect(page.getByLabel('Light or dark').locator('option:checked')).toHaveText(light);
}

test('pages follow the phone until the runner chooses, and follow it again', async ({
	page,
	phone
}) => {
	await page.emulateMedia({ colorScheme: 'light' });
	await page.goto('/');
	await ground(page).toHaveCSS('background-color', LIGHT);
	await page.emulateMedia({ colorScheme: 'dark' });
	await ground(page).toHaveCSS('background-color', DARK);

	await phone.screen();
	for (const [light, whenLight, whenDark] of [
		['Dark', DARK, DARK],
		['Light', LIGHT, LIGHT],
		['As the phone', LIGHT, DARK]
	] as const) {
		await choose(page, light);
		for (const path of ['/', '/safety', '/screening/result', '/bands', '/nowhere']) {
			await page.goto(path);
			await page.emulateMedia({ colorScheme: 'light' });
			await ground(page).toHaveCSS('background-color', whenLight);
			await page.emulateMedia({ colorScheme: 'dark' });
			await ground(page).toHaveCSS('background-color', whenDark);
		}
	}
});

test('the chosen light is in the first bytes of a page, so that no other flashes up', async ({
	page,
	phone
}) => {
	await phone.screen();
	await choose(page, 'Dark');
	const sent = await (await phone.get('/bands')).text();
	expect(sent.indexOf('data-theme="dark"')).toBeLessThan(sent.indexOf('<head>'));
	expect(sent).toMatch(/^<!doctype html>\s*<html lang="en" data-theme="dark">/);

	// Painted for the first time only when the styles are there: they stand in the head, as links.
	const head = sent.slice(0, sent.indexOf('</head>'));
	expect(head).toMatch(/<link href="[^"]+\.css" rel="stylesheet">/);
	await page.emulateMedia({ colorScheme: 'light' });
	await page.route('**/*.js', (route) => route.abort());
	await page.goto('/bands');
	await ground(page).toHaveCSS('background-color', DARK);
});

test('a light that nobody offered changes nothing', async ({ page, context, phone }) => {
	await page.emulateMedia({ colorScheme: 'light' });
	for (const value of ['sepia', '%22%3E%3Cb%3E', 'DARK', '']) {
		await context.addCookies([{ name: 'theme', value, url: phone.url }]);
		await page.goto('/');
		await ground(page).toHaveCSS('background-color', LIGHT);
		await expect(page.locator('html')).not.toHaveAttribute('data-theme');
	}
});

test('the picture of the bands is drawn again when the light changes', async ({ page, phone }) => {
	await page.emulateMedia({ colorScheme: 'light' });
	await phone.screen();
	await phone.measureResting(68, todayIn('UTC'));
	await page.goto('/bands');
	const drawn = () =>
		page.locator('canvas').evaluate((it) => (it as HTMLCanvasElement).toDataURL());
	const blank = () =>
		page.locator('canvas').evaluate((it) => {
			const { width, height } = it as HTMLCanvasElement;
			return Object.assign(document.createElement('canvas'), { width, height }).toDataURL();
		});
	await expect.poll(async () => (await drawn()) !== (await blank())).toBe(true);
	const light = await drawn();
	await page.emulateMedia({ colorScheme: 'dark' });
	await expect.poll(drawn).not.toBe(light);
	await page.emulateMedia({ colorScheme: 'light' });
	await expect.poll(drawn).toBe(light);
});
