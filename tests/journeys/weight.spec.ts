import { gzipSync } from 'node:zlib';
import type { Browser, Page } from '@playwright/test';
import { answerDay, button, heading, take } from './an-outing.ts';
import { todayIn } from './days.ts';
import type { House } from './house.ts';
import { Phone } from './phone.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// Our own limits, no source: a phone with little network has a page in a few seconds. Everything is
// counted gzipped. Files are sent with brotli, pages with gzip.

/** The lines that ask again for a page that the back button brings from memory. */
const ASKING_AGAIN = 500;
const SCRIPT = 60_000;
/** It also looks whether an outing on this phone was not sent, and leads to help. */
const SCRIPT_OF_ACCOUNT = 64_500;
/** Until an outing is taken: what is kept here, and what was written down and not sent. */
const SCRIPT_OF_PROMPTER = 34_000;
/** The bands are drawn by hand and by script; never the first page that somebody sees. */
const SCRIPT_OF_BANDS = 70_000;
const SCRIPT_WITH_CHART = 128_000;
/**
 * From opening the page to the end of an outing, with all that is fetched on the way: it keeps time,
 * sounds, speaks and writes down what was done, all without a network.
 */
const SCRIPT_OF_OUTING = 54_000;
const SCRIPT_OF_OUTING_WITH_PULSE = 61_000;
/** A pulse is measured by script: fetched on its own, and only by whoever asks for it. */
const SCRIPT_WITH_PULSE = 63_000;
/** An outing is built by script, and the expected pulse is worked out beside it as a hand drags. */
const SCRIPT_OF_EDITOR = 80_000;
const SCRIPT_OF_EDITOR_WITH_CHART = 130_000;
/** Most of all an outing with a pulse; other pages have two thirds of it. */
const STYLES = 7_800;
const FONTS = 95_000;
const PAGE = 12_000;

/** What the drawing library says of itself: so we know it where it is loaded. */
const DRAWING = 'is not a registered ';

const WEIGHED: ReadonlySet<string> = new Set(['document', 'script', 'stylesheet', 'font']);

interface Weight {
	readonly bytes: Readonly<Record<string, number>>;
	readonly draws: boolean;
	readonly unpacked: readonly string[];
}

test('pages to read have no script; those with script stay light', async ({ browser, house }) => {
	const { phone, weigh, close } = await visitor(browser, house);
	for (const path of [
		'/',
		'/privacy',
		'/help',
		'/safety',
		'/methods',
		'/methods/formulas',
		'/methods/checks',
		'/offline'
	]) {
		isLight(await weigh(path), path, 0);
	}
	isLight(await weigh('/emergency-number'), 'emergency number', ASKING_AGAIN);
	for (const path of ['/screening', '/link']) isLight(await weigh(path), path, SCRIPT);
	isLight(await weigh('/account'), 'account', SCRIPT_OF_ACCOUNT);

	await phone.lead('/screening?/answer', { urgent: 'none' });
	isLight(await weigh('/screening/consent'), 'consent', ASKING_AGAIN);
	await phone.begin();
	for (const n of [2, 3, 10])
		isLight(await weigh(`/screening/questions/${n}`), `question ${n}`, ASKING_AGAIN);
	await phone.answerAll(leadsTo.askFirst);
	isLight(await weigh('/screening/check'), 'check', ASKING_AGAIN);
	await phone.lead('/screening/check', { truth: 'yes' });
	for (const name of ['result', 'advice', 'change']) {
		isLight(await weigh(`/screening/${name}`), name, ASKING_AGAIN);
	}
	isLight(await weigh('/screening/doctor'), 'doctor', SCRIPT);
	await close();
});

test('the drawing library comes only with bands that have a pulse', async ({ browser, house }) => {
	const { phone, weigh, close } = await visitor(browser, house);
	await phone.screen();
	isLight(await weigh('/bands'), 'bands without a pulse', SCRIPT_OF_BANDS);
	isLight(await weigh('/prompter'), 'prompter', SCRIPT_OF_PROMPTER);
	isLight(await weigh('/bands/about-you'), 'about you', ASKING_AGAIN);
	isLight(await weigh('/bands/resting-pulse'), 'resting pulse', SCRIPT);
	const outing = await phone.lead('/outings?/make');
	isLight(await weigh(outing), 'an outing without a pulse', SCRIPT_OF_EDITOR);
	await phone.measureResting(68, todayIn('UTC'));
	const withPulse = await weigh('/bands');
	const drawnOuting = await weigh(outing);
	expect(drawnOuting.draws).toBe(true);
	isLight({ ...drawnOuting, draws: false }, 'an outing with a pulse', SCRIPT_OF_EDITOR_WITH_CHART);
	expect(withPulse.draws).toBe(true);
	isLight(await weigh('/prompter/strap'), 'the live pulse', SCRIPT_WITH_PULSE);
	isLight({ ...withPulse, draws: false }, 'bands with a pulse', SCRIPT_WITH_CHART);
	await phone.screen(leadsTo.byTalk);
	isLight(await weigh('/bands'), 'bands by talk', SCRIPT_OF_BANDS);
	isLight(await weigh(outing), 'an outing by talk', SCRIPT_OF_EDITOR);
	await close();
});

test('an outing from its choice to its end brings little script', async ({ browser, house }) => {
	const { phone, weigh, close } = await visitor(browser, house);
	await phone.screen();
	await phone.measureResting(68, todayIn('UTC'));
	const outing = async (page: Page) => {
		await take(page);
		await answerDay(page);
		await page.getByLabel('Outdoors').check();
		await button(page, 'Start').click();
		await expect(heading(page)).toHaveText('Warm-up walk');
		await button(page, 'Something feels wrong').click();
		await button(page, 'None of these').click();
		await button(page, 'Skip this part').click();
		await expect(heading(page)).toHaveText('Steady run');
	};
	const end = async (page: Page) => {
		await button(page, 'End early').click();
		await button(page, 'End now').click();
		await expect(heading(page)).toHaveText('Done');
	};
	const plain = await weigh('/prompter', async (page) => {
		await outing(page);
		await end(page);
	});
	isLight(plain, 'an outing', SCRIPT_OF_OUTING);
	const measured = await weigh('/prompter', async (page) => {
		await outing(page);
		await button(page, 'Pulse').click();
		await expect(button(page, 'Chest strap')).toBeVisible();
		await end(page);
	});
	isLight(measured, 'an outing with a pulse', SCRIPT_OF_OUTING_WITH_PULSE);
	await close();
});

function isLight({ bytes, draws, unpacked }: Weight, name: string, script: number) {
	expect(draws, `${name} draws`).toBe(false);
	expect(unpacked, `${name}: files sent without packing`).toEqual([]);
	const { script: scripts = 0, stylesheet = 0, font = 0, document = 0 } = bytes;
	expect(scripts, `script of ${name}`).toBeLessThanOrEqual(script);
	expect(stylesheet, `styles of ${name}`).toBeLessThan(STYLES);
	expect(font, `fonts of ${name}`).toBeLessThan(FONTS);
	expect(document, `the page ${name} itself`).toBeLessThan(PAGE);
}

/** Somebody whose pages are each opened as if for the first time. */
async function visitor(browser: Browser, house: House) {
	const context = await browser.newContext({ baseURL: house.url, serviceWorkers: 'block' });
	async function weigh(path: string, act?: (page: Page) => Promise<void>): Promise<Weight> {
		const page = await context.newPage();
		const bytes: Record<string, number> = {};
		const unpacked: string[] = [];
		let draws = false;
		const reading: Promise<void>[] = [];
		page.on('response', (response) => {
			const kind = response.request().resourceType();
			// What an outing sends and asks for may still be on its way when the page is closed.
			if (!WEIGHED.has(kind)) return;
			reading.push(
				response.body().then((body) => {
					bytes[kind] = (bytes[kind] ?? 0) + gzipSync(body).length;
					draws ||= kind === 'script' && body.includes(DRAWING);
					const isPacked = response.headers()['content-encoding'] !== undefined;
					const isText = ['document', 'script', 'stylesheet'].includes(kind);
					if (!isPacked && isText) unpacked.push(response.url());
				})
			);
		});
		await page.goto(path, { waitUntil: 'networkidle' });
		expect(new URL(page.url()).pathname).toBe(path);
		await act?.(page);
		await Promise.all(reading);
		await page.close();
		return { bytes, draws, unpacked };
	}
	const phone = new Phone(context.request, house.url);
	return { phone, weigh, close: () => context.close() };
}
