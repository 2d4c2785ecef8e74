import type { BrowserContext, Page, Route } from '@playwright/test';
import { plainPhase } from '../../src/lib/outing/plain-phase.ts';
import { answerDay, button, heading, ready, take, usualIs, whenOf } from './an-outing.ts';
import { entriesIn } from './past-entries.ts';
import { seeded } from './seeded.ts';
import { expect, test } from './test.ts';

/*
 * A network that fails and a page that goes, at any moment. Our own rules, no source: whatever is cut, each
 * answer reaches the account, and once.
 */

test.use({ viewport: { width: 360, height: 780 } });

const levels = ['comfortable', 'with breaths', 'broke off'] as const;
const names = ['comfortable', 'with-breaths', 'broke-off'] as const;
const PHASE_SECONDS = 20;
const round = [plainPhase('steady-run', 20), plainPhase('recovery-walk', 20)];
/** A hundred phases, each with an answer: two of these make two hundred cuts. */
const outing = {
	name: 'Many short runs',
	parts: [
		{ times: 40, phases: round },
		{ times: 10, phases: round }
	]
};

async function begin(page: Page) {
	await page.goto('/prompter');
	await ready(page);
	await take(page, outing.name);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Steady run');
}

/** What becomes of each request that sends entries: lost on the way there, on the way back, or not. */
async function failBy(context: BrowserContext, chance: () => number) {
	const cuts = { there: 0, back: 0 };
	const cut = async (route: Route) => {
		const drawn = chance();
		if (drawn < 0.4) {
			cuts.there += 1;
			return route.abort();
		}
		if (drawn < 0.8) {
			cuts.back += 1;
			await route.fetch({ maxRetries: 3 }).catch(() => null);
			return route.abort();
		}
		return route.continue();
	};
	await context.route('**/prompter/entries', cut);
	return cuts;
}

for (const seed of [20_261_125, 7]) {
	test(`a hundred answers, the network cut, pages loaded again and pages closed: none lost, none twice (${seed})`, async ({
		page: first,
		phone,
		context
	}) => {
		test.setTimeout(400_000);
		const chance = seeded(seed);
		await phone.screen();
		await usualIs(context, outing);
		await first.clock.install({ time: Date.now() });
		let page = first;
		await begin(page);
		const cuts = await failBy(context, chance);
		const said: string[] = [];
		// To within the last third of each phase, in which it is asked.
		await page.clock.runFor(15_000);
		for (let phase = 0; phase < 100; phase += 1) {
			const level = Math.floor(chance() * 3);
			await button(page, levels[level] ?? '').click();
			said.push(names[level] ?? '');
			const drawn = chance();
			if (drawn < 0.06) {
				await page.reload();
				await ready(page);
			} else if (drawn < 0.12) {
				const next = await context.newPage();
				await page.close();
				page = next;
				await page.goto('/prompter');
				await ready(page);
			} else if (drawn < 0.2) {
				await context.setOffline(true);
				await page.clock.runFor(3000);
				await context.setOffline(false);
			}
			// A page that opens sends first and asks then, each for four seconds at most.
			await expect(page.locator('.clock')).toBeVisible({ timeout: 30_000 });
			// Not by the clock alone: what fell due while nothing ran is made up for.
			const { at, began } = await whenOf(page);
			const wanted = (phase + 1) * PHASE_SECONDS * 1000 + 15_000;
			if (phase < 99) await page.clock.runFor(Math.max(0, wanted - (at - began)));
		}
		await page.clock.runFor(30_000);
		await expect(heading(page)).toHaveText('Done');
		await context.unroute('**/prompter/entries');
		// A page that is opened sends at once, however long it would have waited.
		await page.reload();
		await ready(page);
		await expect(page.getByText('waiting to be sent')).toHaveCount(0);
		expect(cuts.there + cuts.back).toBeGreaterThan(100);
		const ends = async () =>
			(await entriesIn(phone)).filter(({ kind }) => kind === 'phase-done').length;
		await expect.poll(ends).toBe(100);
		const entries = await entriesIn(phone);
		const answers = entries.flatMap((entry) => (entry.kind === 'talk-answer' ? entry : []));
		expect(answers.map(({ phase, talk }) => [phase, talk])).toEqual(
			said.map((talk, phase) => [phase, talk])
		);
		expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
	});
}

test('an answer that is tapped in the very moment of a reload is there afterwards, once', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await usualIs(context, outing);
	await page.clock.install({ time: Date.now() });
	await begin(page);
	await page.clock.runFor(15_000);
	// Another page of this phone writes meanwhile, so that the database cannot have it yet.
	await page.evaluate(
		() =>
			new Promise<void>((done) => {
				const opening = indexedDB.open('breathmark');
				opening.onsuccess = () => {
					const store = opening.result.transaction('entry', 'readwrite').objectStore('entry');
					const again = () => {
						store.count().onsuccess = again;
						done();
					};
					again();
				};
			})
	);
	await button(page, 'with breaths').evaluate((pressed: HTMLElement) => {
		pressed.click();
		location.reload();
	});
	await ready(page);
	await expect(page.locator('.clock')).toBeVisible();
	const answers = async () =>
		(await entriesIn(phone)).flatMap((entry) => (entry.kind === 'talk-answer' ? entry.talk : []));
	await expect.poll(answers).toEqual(['with-breaths']);
	expect(await page.evaluate(() => localStorage.getItem('breathmark-jotted'))).toBeNull();
});
