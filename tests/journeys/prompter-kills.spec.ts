import type { Page } from '@playwright/test';
import { plainOuting, type PlannedPhase } from '../../src/lib/outing/plain-outing.ts';
import { phasesOf } from '../../src/lib/outing/outing.ts';
import { ownOuting } from '../../src/lib/outing/own-outing.ts';
import { answerDay, button, heading, ready, take, whenOf } from './an-outing.ts';
import { KilledBrowser } from './killed-browser.ts';
import { entriesIn } from './past-entries.ts';
import { Phone } from './phone.ts';
import { expect, test } from './test.ts';
import { leadsTo, type Answers } from './walk.ts';

/*
 * In each part of an outing the page is loaded again, and the browser's process is killed. Our own
 * rules, no source: no second and no answer is lost, and none is there twice.
 */

const levels = ['comfortable', 'with-breaths', 'broke-off'] as const;
const shown = {
	comfortable: 'comfortable',
	'with-breaths': 'with breaths',
	'broke-off': 'broke off'
};

/** When in a phase somebody answers: after the passage of a long walk, and before the end. */
function answersIn({ kind, seconds }: PlannedPhase): readonly { at: number; passage: boolean }[] {
	if (kind === 'warm-up-walk' || kind === 'cool-down-walk') return [];
	const line = { at: seconds - 6, passage: false };
	return kind === 'brisk-walk' ? [{ at: 160, passage: true }, line] : [line];
}

const outings: readonly {
	readonly of: string;
	readonly phases: readonly PlannedPhase[];
	readonly answers: Answers;
}[] = [
	{ of: 'the plain outing, all eleven parts', phases: plainOuting, answers: {} },
	{
		of: 'a walk of settling in, its passage included',
		phases: phasesOf(ownOuting('Walk', 'walks')),
		answers: leadsTo.settlingIn
	}
];

for (const { of, phases, answers } of outings) {
	test(`${of}: a reload and a kill of the browser in each part, and at each answer`, async ({
		house
	}) => {
		const began = Math.floor(Date.now() / 1000) * 1000;
		const browser = await KilledBrowser.start(test.info().project.use.launchOptions ?? {}, began);
		try {
			const phone = new Phone(browser.page.request, house.url);
			await phone.screen(answers);
			await begin(browser.page, house.url);
			let now = began;
			const goTo = async (atMs: number) => {
				await browser.page.clock.fastForward(atMs - now);
				now = atMs;
			};
			const reload = async () => {
				await browser.page.reload();
				await ready(browser.page);
			};
			/** Killed, and a second later there again. */
			const kill = async () => {
				now += 1000;
				await browser.killAndStart(now);
				await browser.page.goto(`${house.url}/prompter`);
				await ready(browser.page);
			};
			const said: unknown[] = [];
			let start = began;
			for (const [place, phase] of phases.entries()) {
				const isRight = () =>
					showsPlace(browser.page, {
						place,
						of: phases.length,
						leftMs: start + phase.seconds * 1000 - now
					});
				await goTo(start + 5000);
				await isRight();
				await reload();
				await isRight();
				await kill();
				await isRight();
				for (const { at, passage } of answersIn(phase)) {
					await goTo(start + at * 1000);
					const talk = levels[said.length % 3] ?? 'comfortable';
					const written = await entriesHere(browser.page);
					await button(browser.page, shown[talk]).click();
					await expect.poll(() => entriesHere(browser.page)).toBe(written + 1);
					await kill();
					await expect(button(browser.page, shown[talk])).toHaveAttribute('aria-pressed', 'true');
					await button(browser.page, '6').click();
					await expect.poll(() => entriesHere(browser.page)).toBe(written + 2);
					await reload();
					await expect(button(browser.page, '6')).toHaveAttribute('aria-pressed', 'true');
					await isRight();
					said.push([place, talk, null, passage], [place, talk, 6, passage]);
				}
				start += phase.seconds * 1000;
			}
			await goTo(start + 1000);
			await expect(heading(browser.page)).toHaveText('Done');
			const sent = async () => (await entriesIn(new Phone(browser.page.request, house.url))).length;
			await expect.poll(sent).toBe(said.length + phases.length + 2);
			const entries = await entriesIn(new Phone(browser.page.request, house.url));
			expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
			const answered = entries.flatMap((it) =>
				it.kind === 'talk-answer' ? [[it.phase, it.talk, it.effort, it.afterPassage]] : []
			);
			expect(answered).toEqual(said);
			const done = entries.flatMap((it) =>
				it.kind === 'phase-done' ? [[it.phase, it.how, it.activeSeconds]] : []
			);
			expect(done).toEqual(phases.map(({ seconds }, place) => [place, 'whole', seconds]));
			expect(entries.filter(({ kind }) => kind === 'ended')).toMatchObject([{ how: 'finished' }]);
		} finally {
			await browser.end();
		}
	});
}

async function begin(page: Page, url: string) {
	await page.goto(`${url}/prompter`);
	await ready(page);
	await take(page);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
	await expect.poll(async () => (await whenOf(page)).began).toBeGreaterThan(0);
}

async function showsPlace(
	page: Page,
	{ place, of, leftMs }: { readonly place: number; readonly of: number; readonly leftMs: number }
) {
	await expect(page.getByText(`part ${place + 1} of ${of}`).first()).toBeVisible();
	const seconds = Math.ceil(leftMs / 1000);
	const clock = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
	await expect(page.locator('.clock')).toHaveText(clock);
}

/** How many entries are written down on this phone, for good. */
const entriesHere = (page: Page) =>
	page.evaluate(
		() =>
			new Promise<number>((done) => {
				const opening = indexedDB.open('breathmark');
				opening.onsuccess = () => {
					const count = opening.result.transaction('entry').objectStore('entry').count();
					count.onsuccess = () => {
						opening.result.close();
						done(count.result);
					};
				};
			})
	);
