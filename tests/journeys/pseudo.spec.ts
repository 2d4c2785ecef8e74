import { execFileSync } from 'node:child_process';
import type { Page } from '@playwright/test';
import { CLOSING, OPENING } from '../pseudo/pseudo-text.js';
import { allWalks } from './all-walks.ts';
import { cutOff } from './barriers/room.ts';
import { todayIn } from './days.ts';
import { House } from './house.ts';
import { inPseudo } from './in-pseudo.ts';
import { LanternStreet, become, expect, test as base } from './lantern-street.ts';
import { didAnOuting } from './past-outing.ts';
import { Phone } from './phone.ts';
import { routes } from './routes.ts';
import { leadsTo } from './walk.ts';

const VITE = new URL('../../node_modules/vite/bin/vite.js', import.meta.url).pathname;

/** Built once more, with every text of the words in a language that nobody speaks. */
const test = base.extend<object, { house: House }>({
	house: [
		async ({}, use) => {
			const env = { ...process.env, BREATHMARK_WORDS: 'pseudo' };
			execFileSync(process.execPath, [VITE, 'build'], { env, stdio: 'pipe' });
			const house = await House.build({
				handler: '../.svelte-kit/pseudo/build/handler.js',
				env: { ADDRESS_HEADER: 'x-phone-address' }
			});
			await use(house);
			await house.tearDown();
		},
		{ scope: 'worker', timeout: 300_000 }
	]
});

/** What people typed; names and unit symbols that are the same in every language. */
const DATA =
	/Breathmark|Lantern Street beginners|Odile Marr|Run leader, level 2|Mill park, east gate|East gate, by the clock|Sports hall, wall right of the door|Bram Holt|Outing 3|Ines|Rashid|Gwen|odile@lantern\.example|https?:\S+|km\/h|[A-Z]\w+\/[\w/]+|UTC/g;

const open = [
	'/',
	'/screening',
	'/safety',
	'/methods',
	'/methods/by-hand',
	'/methods/checks',
	'/methods/formulas',
	'/privacy',
	'/help',
	'/offline',
	'/learn',
	'/learn/talk',
	'/learn/scale',
	'/learn/one-breath',
	'/learn/teach',
	'/safety/weather',
	'/safety/outing',
	'/safety/health',
	'/emergency-number',
	'/screening/emergency',
	'/account/gone',
	'/join/none',
	'/tablet/none/done',
	'/coach/sign-up',
	'/coach/gone',
	'/demo',
	'/nowhere',
	'/link',
	'/prompter'
];
const results = [
	'/screening/result',
	'/screening/doctor',
	'/screening/advice',
	'/screening/change',
	'/account',
	'/past'
];
const gated = [
	'/bands',
	'/bands/about-you',
	'/bands/resting-pulse',
	'/bands/card',
	'/bands/walk-check',
	'/prompter/strap',
	'/methods/yours',
	'/bands/mile-walk',
	'/learn/edge',
	'/learn/guess',
	'/past/progress',
	'/learn/one-breath/moving',
	'/learn/talk/moving',
	'/outings',
	'/prompter'
];

/** Where the looks went, over all tests of this file. */
const seen = new Set<string>();

// One worker, one build; where one is tried again all are, so that the last knows where each went.
//XX test.describe.configure({ mode: 'serial' });

test('no text is written in a page: for anybody', async ({ page }) => {
	await look(page, open);
});

for (const name of ['mayRun', 'byTalk', 'mayWalk', 'settlingIn', 'askFirst'] as const) {
	test(`no text is written in a page: ${name}`, async ({ page, phone }) => {
		await phone.screen(leadsTo[name]);
		await phone.send('/bands/resting-pulse?/add', { beats: 68, seconds: 60, on: todayIn('UTC') });
		await look(page, name === 'askFirst' ? results : [...results, ...gated]);
	});
}

test('no text is written in a page: outings of one’s own, past and to come', async ({
	page,
	phone
}) => {
	await phone.screen();
	await look(page, [await didAnOuting(phone), await phone.lead('/outings?/make')]);
});

test('no text is written in a page: between the questions', async ({ page, phone }) => {
	await phone.lead('/screening?/answer', { urgent: 'none' });
	await look(page, ['/screening/consent']);
	await phone.screen(leadsTo.notToday);
	await look(page, ['/screening/well']);
	await phone.screen(leadsTo.askFirst);
	await phone.answerAll();
	await phone.send('/screening/check', { truth: 'yes' });
	await look(page, ['/screening/changed']);
});

test('no text is written in a page: the questions', async ({ page, phone }) => {
	await phone.answerAll();
	await look(page, [...Array.from({ length: 21 }, (_, i) => `/screening/questions/${i + 2}`)]);
	await look(page, ['/screening/check']);
});

test('no text is written in a page: the desk', async ({ page, stranger, house }) => {
	const coach = new Phone(await stranger(), house.url);
	const lantern = await LanternStreet.found(coach);
	await lantern.join(await stranger(), 'Ines');
	await lantern.join(await stranger(), 'Rashid', leadsTo.byTalk);
	await lantern.join(await stranger(), 'Gwen', leadsTo.askFirst);
	await become(page, coach);
	await look(page, ['/coach', '/coach/account', '/coach/new', lantern.bandsOf('Ines')]);
	const parts = ['', '/attendance', '/bands', '/invite', '/settings', '/import', '/print'];
	await look(
		page,
		[
			...parts,
			'/outings',
			'/programme',
			'/programme/new',
			'/cards',
			'/wall',
			'/stop-signs',
			'/cues'
		].map(on(lantern))
	);
	const member = `/members/${lantern.runners.get('Ines')?.memberId}`;
	await look(page, [lantern.path + member, lantern.link]);
	await look(page, [await coach.lead(`${lantern.path}/outings?/make`)]);
	await coach.lead(`${lantern.path}?/start`);
	await look(page, [`${lantern.path}/contact/${lantern.runners.get('Ines')?.memberId}`]);
	await look(page, [await coach.lead(`${lantern.path}/invite?/tablet`)]);
	await page.context().clearCookies();
	await look(page, ['/coach/sign-in', '/coach/forgot', '/coach/reset?token=none']);
	await look(page, ['/coach/invited/none']);
});

for (const { name, go } of allWalks) {
	test(`no text is written in a page, whatever was pressed: ${name}`, async ({
		page,
		phone,
		house
	}) => {
		await go({ page: inPseudo(page), phone, house }, (stop) => inspect(page, stop));
	});
}

test('every page was looked at', () => {
	const pages = routes.filter(({ isPage }) => isPage).map(({ id }) => id);
	const patterns = pages
		.map((id) => ({ id, pattern: new RegExp(`^${id.replaceAll(/\[[^\]]+\]/g, '[^/]+')}$`) }))
		.sort((a, b) => a.id.split('[').length - b.id.split('[').length);
	const looked = [...seen].map((path) => patterns.find(({ pattern }) => pattern.test(path))?.id);
	expect(pages.filter((id) => !looked.includes(id))).toEqual([]);
});

const on =
	({ path }: LanternStreet) =>
	(part: string) =>
		path + part;

async function look(page: Page, paths: readonly string[]) {
	for (const path of paths) {
		await page.goto(path);
		await page.waitForLoadState('networkidle');
		await inspect(page, path);
	}
}

/** What stands on the page now, at the width of a phone. */
async function inspect(page: Page, stop: string) {
	await page.setViewportSize({ width: 360, height: 780 });
	seen.add(new URL(page.url()).pathname);
	const texts = await page.evaluate(textsOf);
	const written = texts.flatMap((text) => outside(text.replace(DATA, '')));
	expect.soft(written, `${stop}: a text that no translation reaches`).toEqual([]);
	expect(texts.join(''), `${stop} is in the pseudo-language`).toContain(OPENING);
	const wide = await page.evaluate(() => document.documentElement.scrollWidth);
	expect.soft(wide, `${stop}: longer words still fit a phone`).toBeLessThanOrEqual(360);
	expect.soft(await cutOff(page), `${stop}: longer words are seen whole`).toEqual([]);
}

/** All text of the page in its order, then each text that is only heard. Runs in the page. */
function textsOf(): string[] {
	const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
	const parts: string[] = [];
	while (walker.nextNode()) {
		const around = walker.currentNode.parentElement;
		if (around?.closest('script, noscript, style, option, bdi, cite')) continue;
		parts.push(walker.currentNode.nodeValue ?? '');
	}
	const heard = ['aria-label', 'placeholder', 'title', 'alt', 'aria-description'];
	const attributes = heard.flatMap((name) =>
		[...document.querySelectorAll(`[${name}]`)].map((it) => it.getAttribute(name) ?? '')
	);
	return [parts.join(' '), document.title, ...attributes];
}

/** Words that stand outside of the marks. */
function outside(text: string): string[] {
	let depth = 0;
	let bare = '';
	for (const letter of text) {
		if (letter === OPENING) depth += 1;
		if (depth === 0) bare += letter;
		if (letter === CLOSING) depth -= 1;
	}
	return bare.match(/\p{L}{2,}/gu) ?? [];
}
