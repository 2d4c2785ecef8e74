import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { request } from 'node:http';
import { networkInterfaces } from 'node:os';
import { demoScript } from './demo-script.ts';
import { House } from './house.ts';
import { Phone } from './phone.ts';
import { rowsOf } from './rows.ts';
import { expect, test as base } from './test.ts';

// Our own rules, no source.

/** Each test begins with an empty house. */
const test = base.extend<{ phone: Phone; baseURL: string; empty: House }>({
	empty: async ({}, use) => {
		const house = await House.build();
		await use(house);
		await house.tearDown();
	},
	baseURL: async ({ empty }, use) => {
		await use(empty.url);
	},
	phone: async ({ page, empty }, use) => {
		await use(new Phone(page.request, empty.url));
	}
});

const MADE_UP = 'All of this is made up. Nobody here is real.';
/** What each stop of the tour is called on the page itself. */
const stops = [
	'Lantern Street',
	'Ask first',
	'Your effort bands',
	'Bands of the group',
	'To the lock and back',
	'Programme',
	'Which outing?',
	'Past outings'
];
const line = (page: Page) => page.getByRole('complementary', { name: 'Made-up group' });
const heading = (page: Page) => page.getByRole('heading', { level: 1 });
const axe = async (page: Page) => (await new AxeBuilder({ page }).analyze()).violations;
const see = (page: Page, name: string) =>
	page.getByRole('button', { name: `See it as ${name}` }).click();

for (const [where, width] of [
	['phone', 360],
	['desk', 1280]
] as const) {
	test(`on a ${where}: one press in, a tour in eight looks, one press out`, async ({
		page,
		empty
	}) => {
		await page.setViewportSize({ width, height: 800 });
		await page.goto('/');
		await page.getByRole('button', { name: 'Look around with a made-up group' }).click();
		await expect(heading(page)).toHaveText('Look around');
		expect(await axe(page)).toEqual([]);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);

		await page.locator('ol button').first().click();
		for (const [i, title] of stops.entries()) {
			await expect(heading(page)).toContainText(title);
			await expect(page.getByText(`${i + 1} of ${stops.length}: `)).toBeVisible();
			await expect(page.getByText(MADE_UP)).toBeVisible();
			expect(await page.evaluate(() => document.documentElement.scrollWidth), `${i}`).toBe(width);
			await line(page)
				.getByRole('button', { name: i < stops.length - 1 ? /^Next: / : 'End of the tour' })
				.click();
		}
		await expect(heading(page)).toHaveText('Look around');
		await page.goto('/coach');
		await expect(line(page).getByRole('button')).toHaveCount(0);

		await page.goto('/demo');
		await page.getByRole('button', { name: 'Remove the made-up group' }).click();
		await expect(page).toHaveURL(`${empty.url}/`);
		await expect(page.getByText(MADE_UP)).toHaveCount(0);
		for (const table of ['user', 'session', 'running_group', 'member', 'demo_person'] as const) {
			expect(rowsOf(empty, table), table).toEqual([]);
		}
		await expect(
			page.getByRole('button', { name: 'Look around with a made-up group' })
		).toBeVisible();
	});
}

test('whoever turns aside from the tour is led back to it, and leaves it as somebody', async ({
	page,
	phone
}) => {
	await phone.lead('/demo?/load');
	await page.goto('/demo');
	await page.getByRole('button', { name: 'Somebody who asks first' }).click();
	expect(await axe(page)).toEqual([]);
	await page.goto('/screening/doctor');
	await line(page).getByRole('button', { name: 'Go on with the tour' }).click();
	await expect(page).toHaveURL(/\/screening\/result$/);
	// Rashid's page holds no beats.
	await page.goto('/demo');
	await see(page, 'Rashid');
	await expect(page.getByText('You look as Rashid.')).toBeVisible();
	expect(await page.locator('main').innerText()).not.toMatch(/\d+ (to \d+ )?(beats|bpm)/);
	await line(page).getByRole('button', { name: 'Back to Odile Marr' }).click();
	await expect(heading(page)).toContainText('Lantern Street beginners');
	await expect(line(page).getByRole('button')).toHaveCount(0);
	// A group that somebody deleted has no tour, and an outing that is gone leads to its library.
	expect((await phone.send('/demo?/look', { step: 'nowhere' })).status()).toBe(404);
});

test('it is seen as each of them, and everybody’s pages say that they are made up', async ({
	page,
	phone
}) => {
	await phone.lead('/demo?/load');
	for (const [name, title] of [
		['Gwen', 'Ask first'],
		['Tobias', /bands|walk/i],
		['Pavel', /bands|run/i]
	] as const) {
		await page.goto('/demo');
		await see(page, name);
		await expect(heading(page)).toContainText(title);
		for (const path of ['/', '/account', '/screening/result', '/safety', '/nowhere']) {
			await page.goto(path);
			await expect(page.getByText(MADE_UP), path).toBeVisible();
			await expect(page.getByText(`You look as ${name}.`), path).toBeVisible();
		}
	}
	// What a browser kept for the prompter goes with them.
	const removed = await phone.send('/demo?/remove');
	expect(removed.headers()['clear-site-data']).toContain('"storage"');
});

test('nobody real begins while it is there, and the page says so and offers to remove it', async ({
	page,
	phone
}) => {
	await phone.lead('/demo?/load');
	await page.context().clearCookies();
	await page.goto('/');
	await page.getByRole('link', { name: 'Go on looking around' }).click();
	await expect(heading(page)).toHaveText('Look around');
	for (const path of [
		'/coach/sign-up',
		'/coach/sign-in',
		'/coach',
		'/link',
		'/bands',
		'/account'
	]) {
		await page.goto(path);
		await expect(page, path).toHaveURL(/\/demo\?only$/);
	}
	await expect(page.getByText('That page is for real people.')).toBeVisible();
	await expect(page.getByRole('button', { name: 'Remove the made-up group' })).toBeVisible();
	// The signs that need help now are never taken away.
	expect((await phone.get('/screening')).status()).toBe(200);
	expect(await phone.lead('/screening?/answer', { urgent: 'chest' })).toBe('/screening/emergency');
	expect(await phone.lead('/screening?/answer', { urgent: 'none' })).toBe('/screening/consent');
	expect((await phone.get('/screening/consent')).headers()['location']).toBe('/demo?only');
	expect((await phone.send('/screening/consent', { agree: 'yes' })).status()).toBe(403);
	expect((await phone.send('/coach/sign-up', { name: 'Bram' })).status()).toBe(403);
	expect((await phone.send('/api/auth/sign-in/anonymous')).status()).toBe(404);
});

test('beside real people it is not there: no offer, no page, no way into an account', async ({
	page,
	phone,
	empty,
	playwright
}) => {
	// Without a made-up group nobody is looked at.
	expect((await phone.send('/demo?/look', { as: 'ines' })).status()).toBe(404);
	expect((await phone.send('/demo?/remove')).status()).toBe(404);
	expect((await phone.get('/demo')).status()).toBe(200);
	await phone.screen();
	const [user] = rowsOf(empty, 'user');
	const stranger = new Phone(await playwright.request.newContext(), empty.url);
	for (const who of [stranger, phone]) {
		for (const as of [String(user?.['id']), String(user?.['email']), 'ines', 'odile']) {
			expect((await who.send('/demo?/look', { as })).status()).toBe(404);
		}
		expect((await who.send('/demo?/look', { step: 'bands' })).status()).toBe(404);
		for (const action of ['load', 'remove']) {
			expect((await who.send(`/demo?/${action}`)).status()).toBe(404);
		}
		expect((await who.get('/demo')).status()).toBe(404);
	}
	expect(rowsOf(empty, 'user')).toHaveLength(1);
	await page.context().clearCookies();
	await page.goto('/');
	await expect(page.getByText('made-up')).toHaveCount(0);
	await stranger.request.dispose();
});

test('where others can reach the house no press brings it in', async ({ phone, empty }) => {
	await empty.reopen({ env: { ORIGIN: empty.url } });
	expect((await phone.get('/demo')).status()).toBe(404);
	expect((await phone.send('/demo?/load')).status()).toBe(404);
	expect(rowsOf(empty, 'user')).toEqual([]);
});

test('a press from elsewhere brings nothing in, whatever name it types and whoever sends it on', async ({
	phone,
	empty
}) => {
	const sentOn = { 'x-forwarded-for': '127.0.0.1' };
	for (const path of ['/demo', '/demo?/load']) {
		const method = path === '/demo' ? 'GET' : 'POST';
		const form = method === 'POST' ? { form: { go: 'yes' } } : {};
		const headers = { ...sentOn, origin: empty.url };
		const answer = await phone.request.fetch(empty.url + path, { method, headers, ...form });
		expect(answer.status(), path).toBe(404);
	}
	// From an address of the network, where this machine has one.
	await empty.reopen({ env: { HOST: '0.0.0.0' } });
	const outside = Object.values(networkInterfaces())
		.flat()
		.find((one) => one?.internal === false && one.family === 'IPv4');
	if (outside) {
		const status = await new Promise<number | undefined>((answered, failed) => {
			const { host } = new URL(empty.url);
			request({ host: outside.address, port: empty.port, path: '/demo', headers: { host } })
				.once('response', (answer) => answered(answer.resume().statusCode))
				.once('error', failed)
				.end();
		});
		expect(status).toBe(404);
	}
	expect(rowsOf(empty, 'user')).toEqual([]);
	expect((await phone.get('/demo')).status()).toBe(200);
});

test('its host brings it and takes it away by a command, and never beside real people', async ({
	page,
	phone,
	empty
}) => {
	expect(await demoScript(empty, 'bring')).toContain('1: Say npm run demo');
	expect(await demoScript(empty)).toBe('done');
	expect(await demoScript(empty)).toBe('done');
	await page.goto('/');
	await expect(page.getByText(MADE_UP)).toBeVisible();
	expect(rowsOf(empty, 'running_group')).toHaveLength(1);
	expect(await demoScript(empty, 'remove')).toBe('done');
	expect(rowsOf(empty, 'user')).toEqual([]);
	await phone.screen();
	expect(await demoScript(empty)).toContain('1: Real people are here already');
	expect(rowsOf(empty, 'running_group')).toEqual([]);
});
