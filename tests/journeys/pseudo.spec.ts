import { execFileSync } from 'node:child_process';
import type { Page } from '@playwright/test';
import { CLOSING, OPENING } from '../pseudo/pseudo-text.js';
import { allWalks } from './all-walks.ts';
import { cutOff } from './barriers/room.ts';
import { House } from './house.ts';
import { inPseudo } from './in-pseudo.ts';
import { expect, test as base } from './lantern-street.ts';

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
	/Breathmark|\b[0-9A-Z]{4}-[0-9A-Z]{4}\b|Lantern Street beginners|Odile Marr|Run leader, level 2|Mill park, east gate|East gate, by the clock|Sports hall, wall right of the door|Bram Holt|Outing 3|Quay Street beginners|Fatima Haddad|sister|Siobh[áÁ]n|SIOBHÁN|W{58}|Cork|Ines|Tobias|Rashid|Gwen|Dagny|Pavel|Mei-Lin|odile@lantern\.example|https?:\S+|km\/h|[A-Z]\w+\/[\w/]+|UTC/g;

// One worker and one build: the walks come by every page (`looked-at.ts`).
test.describe.configure({ mode: 'default' });

test('no text is written in a page: the made-up group, before anybody is here', async ({
	page,
	phone
}) => {
	for (const change of ['load', 'remove']) {
		await page.goto('/demo');
		await inspect(page, `demo, before ${change}`);
		await phone.send(`/demo?/${change}`);
	}
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

test('what a phone shows of the app on its home screen is in the words', async ({ phone }) => {
	const manifest = (await (await phone.get('/manifest.webmanifest')).json()) as {
		description: string;
		shortcuts: readonly { name: string }[];
	};
	const texts = [manifest.description, ...manifest.shortcuts.map(({ name }) => name)];
	for (const text of texts) {
		expect(text).toContain(OPENING);
		expect(outside(text)).toEqual([]);
	}
});

test('where no page can be drawn, what is said comes from the words', async ({ page, phone }) => {
	const answer = await phone.get('/account/export');
	await page.setContent(await answer.text());
	await inspect(page, 'a fault without a page');
});

/** What stands on the page now, at the width of a phone. */
async function inspect(page: Page, stop: string) {
	await page.setViewportSize({ width: 360, height: 780 });
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
		if (around?.closest('script, noscript, style, option, bdi, cite, textarea')) continue;
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
