import type { Page } from '@playwright/test';
import { expect, test } from './test.ts';
import { ready } from './walk.ts';

const heading = (page: Page) => page.getByRole('heading', { level: 1 });
const numbers = ['112', '999', '911', '000', '111'];

/** Once this is through, everything that is kept for offline is kept. */
async function visit(page: Page) {
	await page.goto('/screening');
	await ready(page);
	await page.evaluate(async () => {
		const { active } = await navigator.serviceWorker.ready;
		if (active === null || active.state === 'activated') return;
		await new Promise((done) => active.addEventListener('statechange', done));
	});
}

/** What the browser keeps of the app: the addresses, and the text of each page. */
async function kept(page: Page): Promise<Record<string, string>> {
	return page.evaluate(async () => {
		const all: Record<string, string> = {};
		for (const name of await caches.keys()) {
			const cache = await caches.open(name);
			for (const request of await cache.keys()) {
				const answer = await cache.match(request);
				const isPage = answer?.headers.get('content-type')?.startsWith('text/html');
				all[new URL(request.url).pathname] = isPage ? ((await answer?.text()) ?? '') : '';
			}
		}
		return all;
	});
}

test('after one visit the urgent signs work without a network, and lead to help', async ({
	page,
	context
}) => {
	await visit(page);
	await context.setOffline(true);
	await page.goto('/screening');
	await expect(heading(page)).toHaveText('Do you have any of these right now?');
	await page.getByLabel('Pain, pressure or tightness').check();
	for (const number of numbers) {
		await expect(page.getByRole('link', { name: number })).toBeVisible();
	}
	await page.getByRole('button', { name: 'Go on' }).click();
	await expect(heading(page)).toHaveText('No network right now');
	for (const number of numbers) {
		await expect(page.getByRole('link', { name: number })).toBeVisible();
	}
	await page.getByRole('link', { name: 'Signs to stop' }).first().click();
	await expect(heading(page)).toHaveText('Signs to stop');
	await expect(page).toHaveURL(/\/safety$/);
});

test('without a network every other page says that there is none', async ({ page, context }) => {
	await visit(page);
	await context.setOffline(true);
	for (const path of ['/', '/bands', '/account', '/screening/result']) {
		await page.goto(path);
		await expect(heading(page), path).toHaveText('No network right now');
	}
	await page.goto('/screening');
	await page.getByRole('link', { name: 'Signs to stop' }).click();
	await expect(heading(page)).toHaveText('Signs to stop');
});

test('nothing of the runner is kept: pages that anyone may see, and files', async ({
	page,
	phone
}) => {
	await phone.screen();
	await phone.send('/emergency-number', { number: '1414', from: 'account' });
	await phone.send('/account?/settings', { theme: 'dark', timeZone: 'Asia/Tokyo' });
	await visit(page);
	await page.goto('/bands');
	await page.goto('/screening/result');
	await page.goto('/account');
	const all = await kept(page);
	const pages = Object.keys(all).filter((path) => !path.startsWith('/_app/immutable/'));
	expect(pages.sort()).toEqual([
		'/offline',
		'/prompter',
		'/safety',
		'/safety/health',
		'/safety/outing',
		'/safety/weather',
		'/screening'
	]);
	for (const path of pages) {
		expect(all[path], path).toContain('First questions</a>');
		expect(all[path], path).not.toMatch(/href="\/(bands|account)"|data-theme|Call 1414|Tokyo/);
	}
});

test('with a network, the network wins over what is kept', async ({ page, context }) => {
	await visit(page);
	await page.evaluate(async () => {
		const [name] = await caches.keys();
		const cache = await caches.open(name ?? '');
		const headers = { 'content-type': 'text/html' };
		await cache.put('/safety', new Response('<h1>An old copy</h1>', { headers }));
	});
	await page.goto('/safety');
	await expect(heading(page)).toHaveText('Signs to stop');
	await context.setOffline(true);
	await page.goto('/safety');
	await expect(heading(page)).toHaveText('An old copy');
	await context.setOffline(false);
	await page.goto('/safety');
	await expect(heading(page)).toHaveText('Signs to stop');
});

test('what an older version kept is dropped', async ({ page }) => {
	await page.goto('/privacy');
	await page.evaluate(async () => {
		const cache = await caches.open('breathmark-an-older-version');
		await cache.put('/screening', new Response('old'));
	});
	await visit(page);
	expect(await page.evaluate(() => caches.keys())).toEqual([
		expect.stringMatching(/^breathmark-(?!an-older-version$)/)
	]);
});
