import type { BrowserContext, Page } from '@playwright/test';
import type { KeptForRunner } from '../../src/lib/outing/kept.ts';
import type { Outing } from '../../src/lib/outing/outing.ts';
import { expect } from './test.ts';

export const heading = (page: Page) => page.getByRole('heading', { level: 1 });
export const button = (page: Page, name: string) => page.getByRole('button', { name });
const day = { well: 'Do you feel well', sign: 'Any new pain', change: 'Any change' };

export async function answerDay(
	page: Page,
	answers: Partial<Record<keyof typeof day, string>> = {}
) {
	const all = { well: 'Yes', sign: 'No', change: 'No', ...answers };
	for (const name of ['well', 'sign', 'change'] as const) {
		await page.getByRole('group', { name: day[name] }).getByLabel(all[name]).check();
	}
	await button(page, 'Go on').click();
}

/** An outing covers the page, so that the document itself has no size to be seen by. */
export const ready = (page: Page) =>
	page.locator('html[data-ready]').waitFor({ state: 'attached' });

export async function open(page: Page) {
	await page.clock.install({ time: Date.now() });
	await page.goto('/prompter');
	await ready(page);
}

export async function start(page: Page) {
	await open(page);
	await take(page);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
}

export const take = (page: Page, name = 'The plain outing') =>
	button(page, `Take this one: ${name}`).click();

/** What the phone is given as the usual outing, in place of the plain one. */
export const usualIs = (context: BrowserContext, usual: Outing) => keptIs(context, { usual });

/** What the phone may keep, with something else in place of what the server says. */
export async function keptIs(
	context: BrowserContext,
	instead: Partial<Pick<KeptForRunner<unknown>, 'usual' | 'longestRunSeconds'>>
) {
	await context.route('**/prompter/kept', async (route) => {
		// A connection that the server has just given up is no news; a page that is gone waits for none.
		const answer = route.fetch({ maxRetries: 3 }).then((given) => given.json() as Promise<object>);
		const kept = await answer.catch(() => null);
		await (kept ? route.fulfill({ json: { ...kept, ...instead } }) : route.abort()).catch(
			() => null
		);
	});
}

/** The page's clock, and when its outing began. */
export const whenOf = (page: Page) =>
	page.evaluate(
		() =>
			new Promise<{ at: number; began: number }>((done) => {
				const opening = indexedDB.open('breathmark');
				opening.onsuccess = () => {
					const all = opening.result.transaction('entry').objectStore('entry').getAll();
					all.onsuccess = () => {
						const began = (all.result as { entry: { at: number } }[])[0]?.entry.at ?? 0;
						opening.result.close();
						done({ at: Date.now(), began });
					};
				};
			})
	);

/** Once this is through, the app itself is kept. */
export const worker = (page: Page) =>
	page.evaluate(async () => {
		const { active } = await navigator.serviceWorker.ready;
		if (active === null || active.state === 'activated') return;
		await new Promise((done) => active.addEventListener('statechange', done));
	});
