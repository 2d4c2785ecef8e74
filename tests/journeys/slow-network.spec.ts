import type { Page } from '@playwright/test';
import { heading, ready } from './an-outing.ts';
import { SlowWay } from './slow-way.ts';
import { expect, test as base } from './test.ts';

/*
 * A network that takes longer than four seconds is as good as none where something is kept, and
 * nothing else is ever taken from what is kept. Our own choice, no source.
 */

const PATIENCE_MS = 4000;

/** The way to the house; cookies know no port, so a phone is signed in on both. */
const test = base.extend<{ way: SlowWay }>({
	way: async ({ house }, use) => {
		const way = await SlowWay.build(house.url);
		await use(way);
		way.close();
	}
});

async function visit(page: Page, way: SlowWay) {
	await page.goto(`${way.url}/prompter`);
	await ready(page);
	await page.evaluate(async () => {
		const { active } = await navigator.serviceWorker.ready;
		if (active === null || active.state === 'activated') return;
		await new Promise((done) => active.addEventListener('statechange', done));
	});
}

test('what is kept is shown after four seconds of a slow network, not before', async ({
	page,
	phone,
	way
}) => {
	await phone.screen();
	await visit(page, way);
	way.delayMs = 60_000;
	for (const [path, text] of [
		['/prompter', 'Which outing?'],
		['/safety', 'Signs to stop'],
		['/screening', 'Do you have any of these right now?'],
		// Where the installed app opens: not kept, and led on from to what is.
		['/', 'No network right now']
	] as const) {
		const began = performance.now();
		await page.goto(way.url + path);
		await expect(heading(page), path).toHaveText(text);
		// The clocks of browser and test are two.
		expect(performance.now() - began, path).toBeGreaterThan(PATIENCE_MS - 100);
	}
	expect(way.asked, 'the network is asked first').toEqual(
		expect.arrayContaining(['/prompter', '/safety', '/screening', '/'])
	);
});

test('a network that is slow, and quicker than that, wins', async ({ page, way }) => {
	await visit(page, way);
	await page.evaluate(async () => {
		const [name] = await caches.keys();
		const cache = await caches.open(name ?? '');
		const old = new Response('<h1>kept</h1>', { headers: { 'content-type': 'text/html' } });
		await cache.put('/safety', old);
	});
	way.delayMs = 1500;
	await page.goto(`${way.url}/safety`);
	await expect(heading(page)).toHaveText('Signs to stop');
});

test('a page behind the gate is waited for, however slow, and never taken from what is kept', async ({
	page,
	phone,
	way
}) => {
	await phone.screen();
	await visit(page, way);
	await page.goto(`${way.url}/bands`);
	await expect(heading(page)).toHaveText('Your effort bands');
	// Even where something lay there under its name.
	await page.evaluate(async () => {
		const [name] = await caches.keys();
		const cache = await caches.open(name ?? '');
		for (const path of ['/bands', '/screening/result', '/outings']) {
			const old = new Response('<h1>kept</h1>', { headers: { 'content-type': 'text/html' } });
			await cache.put(path, old);
		}
	});
	way.delayMs = PATIENCE_MS + 1500;
	await page.goto(`${way.url}/bands`);
	await expect(heading(page)).toHaveText('Your effort bands');
	way.delayMs = 0;
	for (const path of ['/screening/result', '/outings']) {
		await page.goto(way.url + path);
		await expect(heading(page), path).not.toHaveText('kept');
	}
	await page.context().setOffline(true);
	for (const path of ['/bands', '/screening/result', '/outings']) {
		await page.goto(way.url + path);
		await expect(heading(page), path).toHaveText('No network right now');
	}
});
