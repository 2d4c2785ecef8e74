import type { Page } from '@playwright/test';
import { expect, test } from './lantern-street.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

const heading = (page: Page) => page.getByRole('heading', { level: 1 });

for (const viewport of [
	{ width: 360, height: 780 },
	{ width: 1280, height: 800 }
]) {
	test(`at ${viewport.width} the first screen says what this is, and has two doors`, async ({
		page
	}) => {
		await page.setViewportSize(viewport);
		await page.goto('/');
		for (const one of [
			heading(page),
			page.getByText('Breathmark helps adults who are new to running.'),
			page.getByRole('link', { name: 'I am starting to run' }),
			page.getByRole('link', { name: 'I coach a group' })
		]) {
			const box = await one.boundingBox();
			expect((box?.y ?? 0) + (box?.height ?? Infinity)).toBeLessThanOrEqual(viewport.height);
		}
	});
}

test('each door leads on', async ({ page }) => {
	await page.goto('/');
	await page.getByRole('link', { name: 'I am starting to run' }).click();
	await expect(page).toHaveURL(/\/screening$/);
	await page.goto('/');
	await page.getByRole('link', { name: 'I coach a group' }).click();
	// In a house without a coach this makes the first one.
	await expect(page).toHaveURL(/\/coach\/sign-(in|up)$/);
});

/** The one way on from an empty page. */
async function leads(page: Page, path: string, name: string | RegExp, to: string | RegExp) {
	await page.goto(path);
	await page.locator('main').getByRole('link', { name }).first().click();
	await expect(page, `${path} leads on`).toHaveURL(to);
}

test('a runner’s empty pages say the first step', async ({ page, phone }) => {
	await leads(page, '/past', 'Begin with the first questions', /\/screening$/);
	await leads(page, '/account', 'Begin with the first questions', /\/screening$/);
	await leads(page, '/screening/result', /questions/i, /\/screening$/);
	await phone.screen();
	await leads(page, '/outings', 'Take the plain outing', /\/prompter$/);
	await expect(page.getByRole('heading', { name: 'The plain outing' })).toBeVisible();
	await leads(page, '/past', 'Choose your first outing', /\/outings$/);
	await page.goto('/outings');
	await page.getByRole('button', { name: 'Make an outing' }).click();
	await expect(page).toHaveURL(/\/outings\/[\w-]{36}/);
	await leads(page, '/bands', 'Measure my resting pulse', /\/resting-pulse$/);
	await expect(page.getByText('None yet. One is enough to begin')).toBeVisible();
});

test('a closed gate says where to go: what comes first', async ({ page, phone }) => {
	await phone.screen(leadsTo.askFirst);
	await leads(page, '/past', 'See what comes first', /\/screening\/result$/);
	await page.goto('/bands');
	await expect(page.locator('main').getByRole('link').first()).toBeVisible();
	await leads(page, '/help', 'See your result', /\/screening\/result$/);
});

test('a coach’s empty pages say the first step', async ({ page, lantern }) => {
	await leads(page, lantern.path, 'Make a link for runners', /\/invite$/);
	await leads(page, `${lantern.path}/bands`, 'Invite runners', /\/invite$/);
	await leads(page, `${lantern.path}/attendance`, 'Bring somebody in', lantern.path);
	await leads(page, `${lantern.path}/programme`, 'Make a programme', /\/programme\/new$/);
	await page.goto(`${lantern.path}/outings`);
	await page.getByRole('button', { name: 'Make an outing' }).click();
	await expect(page).toHaveURL(/\/outings\/[\w-]{36}/);
});

test('where one is stuck, help has the first step, and the pages where it happens lead there', async ({
	page,
	lantern
}) => {
	await page.goto(`${lantern.path}/invite`);
	await page.getByRole('button', { name: 'Take this link back' }).click();
	await expect(page.getByText('Taken back; it would have ended')).toBeVisible();
	await page.context().clearCookies();
	await page.goto(lantern.link);
	await expect(heading(page)).toHaveText('This link no longer works');
	await expect(page.getByRole('link', { name: 'To the questions' })).toBeVisible();
	await page.getByRole('link', { name: 'The link should work' }).click();
	await expect(page).toHaveURL(/\/help#invitation$/);
	await page.goto('/link');
	await page.getByRole('link', { name: 'I have neither' }).click();
	await expect(page).toHaveURL(/\/help#lost$/);
	for (const path of ['/', '/offline', '/nowhere']) {
		await page.goto(path);
		await page.getByRole('link', { name: 'When you are stuck' }).click();
		await expect(heading(page)).toHaveText('When you are stuck');
	}
	const links = page.locator('main a');
	for (const href of await links.evaluateAll((all) => all.map((a) => a.getAttribute('href')))) {
		const answer = await page.request.get(href ?? '');
		expect(answer.status(), `${href}`).toBe(200);
	}
});
