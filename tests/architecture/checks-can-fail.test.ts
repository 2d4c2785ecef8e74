import { expect, test } from 'vitest';
import { bareTexts } from './bare-text.ts';
import { unexplainedPackages, unmappedRoutes } from './documents.ts';
import { strangeHosts } from './hosts.ts';
import { importFaults } from './import-faults.ts';
import { importsOf } from './imports-of.ts';
import { localeFaults } from './locale.ts';
import { bareFaults, wordsOutside } from './outside-words.ts';
import { impurities } from './purity.ts';
import { sizeFaults, vagueFolders } from './sizes.ts';
import { screenFaults, wordFaults } from './vocabulary.ts';

// A check that cannot fail is worth nothing: each is given something bad here, and something good.

const file = (path: string, text: string) => ({ path, text });

test('every way to import is seen, and which of them leave nothing behind', () => {
	const text = `
		import 'a';
		import b, { type B } from 'b';
		import type { C } from 'c';
		import { type D } from 'd';
		export * from 'e';
		export type { F } from 'f';
		const g = await import('g');
		let h: import('h').H;
		const i = await import(name);
	`;
	expect(importsOf(file('x.ts', text))).toEqual([
		{ from: 'a', isTypeOnly: false },
		{ from: 'b', isTypeOnly: false },
		{ from: 'c', isTypeOnly: true },
		{ from: 'd', isTypeOnly: true },
		{ from: 'e', isTypeOnly: false },
		{ from: 'f', isTypeOnly: true },
		{ from: 'g', isTypeOnly: false },
		{ from: 'h', isTypeOnly: true },
		{ from: '(a computed name)', isTypeOnly: false }
	]);
});

test('both scripts of a component are read', () => {
	const text = `<script module lang="ts">import 'a';</script><script lang="ts">import 'b';</script><p>import 'c'</p>`;
	const names = importsOf(file('X.svelte', text)).map(({ from }) => from);
	expect(names.sort()).toEqual(['a', 'b']);
});

test.each([
	['src/lib/physiology/a.ts', `import '../screening/b.ts';`],
	['src/lib/physiology/a.ts', `import type { B } from '$lib/outing/b.ts';`],
	['src/lib/physiology/a.ts', `import { readFileSync } from 'node:fs';`],
	['src/lib/outing/a.ts', `import '$lib/screening/b.ts';`],
	['src/lib/guidance/a.ts', `import '$words/site.ts';`],
	['src/lib/words/en/a.ts', `import { b } from '$lib/physiology/b.ts';`],
	['src/lib/forms/a.ts', `import '$lib/server/b.ts';`],
	['src/lib/device/a.ts', `import 'zod';`],
	['src/lib/components/A.svelte', `<script>import '$lib/device/b.ts';</script>`],
	['src/lib/server/a.ts', `import '$words/site.ts';`],
	['src/lib/server/a.ts', `import '$lib/components/B.svelte';`],
	['src/routes/+page.svelte', `<script>import '$lib/server/b.ts';</script>`],
	['src/routes/+page.svelte', `<script>import 'zod';</script>`],
	['src/routes/+page.ts', `import { b } from '$lib/forms/b.ts';`],
	['src/lib/forms/sent-form.ts', `import { b } from './b.ts';`],
	['src/lib/forms/sent-form.ts', `import 'zod';`],
	['src/routes/+page.server.ts', `import '$lib/device/b.ts';`],
	['src/routes/+server.ts', `import '$lib/components/B.svelte';`],
	['src/hooks.server.ts', `import '$lib/components/B.svelte';`],
	['src/perimeter/a.ts', `import '$lib/device/b.ts';`],
	['src/lib/elsewhere/a.ts', ``]
])('%s may not hold %s', (path, text) => {
	expect(importFaults([file(path, text)])).toHaveLength(1);
});

test('what stands beside a page is a page as soon as one imports it', () => {
	const beside = file('src/routes/bands/b.ts', `import '$lib/server/c.ts';`);
	const door = file('src/routes/bands/+page.server.ts', `import './b.ts';`);
	const page = file('src/routes/bands/+page.svelte', `<script>import './b.ts';</script>`);
	expect(importFaults([beside, door])).toEqual([]);
	expect(importFaults([beside, door, page])).toHaveLength(1);
});

test('what the table allows is not a fault', () => {
	const good = [
		file('src/lib/guidance/a.ts', `import '$lib/physiology/b.ts'; import '../screening/c.ts';`),
		file('src/lib/words/en/a.ts', `import type { B } from '$lib/outing/b.ts';`),
		file('src/lib/server/a.ts', `import { sql } from 'kysely'; import 'node:path';`),
		file('src/routes/+page.svelte', `<script>import '$lib/components/B.svelte';</script>`),
		file(
			'src/routes/+page.server.ts',
			`import '$lib/server/b.ts'; import type { C } from './$types';`
		)
	];
	expect(importFaults(good)).toEqual([]);
});

test.each([
	'Date.now()',
	'new Date()',
	'Date()',
	'new Date(2026, 10, 25)',
	'new Date(0).getHours()',
	'Math.random()',
	"fetch('/x')",
	'process.env',
	'window.name',
	'document.title',
	'globalThis.x',
	'(5).toLocaleString()',
	"'a'.localeCompare('b')",
	'new Intl.NumberFormat()',
	'Intl.DateTimeFormat(undefined, {})',
	'setTimeout(() => 1, 1)',
	'(async () => await 1)()',
	'/* eslint-disable */ Date.now()'
])('%s is not pure', (expression) => {
	const text = `export const a = () => ${expression};`;
	expect(impurities([file('src/lib/outing/a.ts', text)])).not.toEqual([]);
	expect(impurities([file('src/lib/server/a.ts', text)])).toEqual([]);
});

test('what is given its clock, zone and language is pure', () => {
	const text = `
		export const a = (now: number) => new Date(now).getUTCDate() + Date.UTC(2026, 1, 1);
		export const b = (n: number) => n.toLocaleString('en') + 'a'.localeCompare('b', 'en');
		export const c = new Intl.NumberFormat('en-GB', {});
	`;
	expect(impurities([file('src/lib/outing/a.ts', text)])).toEqual([]);
});

test('long files, and files that are mostly not short, are found', () => {
	const lines = (count: number) => 'a\n'.repeat(count);
	const short = file('src/lib/forms/a.ts', lines(10));
	expect(sizeFaults([short, short, file('src/lib/forms/b.ts', lines(200))])).toEqual([]);
	expect(sizeFaults([short, short, file('src/lib/forms/b.ts', lines(201))])).toHaveLength(1);
	expect(sizeFaults([short, short, file('src/lib/outing/b.ts', lines(121))])).toHaveLength(1);
	expect(sizeFaults([short, short, file('src/lib/words/en/b.ts', lines(900))])).toEqual([]);
	expect(sizeFaults([file('src/lib/forms/a.ts', lines(60))])).toHaveLength(1);
});

test('folders that say nothing are found', () => {
	const folders = [
		'src/lib/utils',
		'src/lib/common',
		'tests/helpers',
		'src/core',
		'src/lib/outing'
	];
	expect(vagueFolders(folders)).toEqual(folders.slice(0, 4));
});

test.each([
	'a workout',
	'Zone 2',
	'readiness',
	'medically cleared',
	'PAR-Q+ based',
	'training load'
])('%s is no word of ours', (word) => {
	expect(wordFaults([file('src/a.ts', `// ${word}`)])).toHaveLength(1);
});

test.each(['your zone', 'a gauge', 'you are cleared', 'Well done!', 'the user', 'Borg', 'HRR'])(
	'%s does not stand on a screen',
	(word) => {
		const text = (name: string) =>
			file(`src/lib/words/en/${name}.ts`, `export const a = \`${word}\`;`);
		expect(screenFaults([text('bands')])).toHaveLength(1);
		expect(screenFaults([file('src/lib/words/en/bands.ts', `// ${word}`)])).toEqual([]);
	}
);

test('the methods page may name the scales that it cites, and a time zone is one', () => {
	const text = `export const a = ['Borg', 'HRR', 'time zone'];`;
	expect(screenFaults([file('src/lib/words/en/methods.ts', text)])).toEqual([]);
});

test.each([
	'<p>Hello</p>',
	'<p>{words.a} bpm</p>',
	'<p>{a ? "yes" : words.no}</p>',
	'<p>{`Hello ${name}`}</p>',
	'{#if a}<p>Hello</p>{/if}',
	'{#each a as b}<i>Hello {b}</i>{/each}',
	'<A>Hello</A>',
	'<A label="Hello" />',
	'<input placeholder="Your name" />',
	'<img alt={a ? "A run" : ""} />',
	'<svelte:head><title>Breathmark</title></svelte:head>'
])('%s has a text of its own', (text) => {
	expect(bareTexts([file('A.svelte', text)])).not.toEqual([]);
});

test('texts from the words, marks and names of classes are no texts of their own', () => {
	const text = `<script>const a = 'b';</script><p class="lead" id="a">{words.a} – 5 · {f('unit')}</p><style>p { color: red }</style>`;
	expect(bareTexts([file('A.svelte', text)])).toEqual([]);
});

test.each([
	['lib/words/en/a.ts', 'speed.toFixed(1)'],
	['routes/a/A.svelte', '<p>{speed.toPrecision(2)}</p>'],
	['lib/components/a.ts', 'speed.toLocaleString()'],
	['routes/a/A.svelte', "{date.toLocaleDateString('en-GB')}"],
	['lib/server/a.ts', 'a.localeCompare(b)'],
	['lib/server/a.ts', "new Intl.Collator('en')"],
	['lib/words/en/a.ts', 'new Intl.NumberFormat()'],
	['perimeter/a.ts', 'Intl.PluralRules(undefined)'],
	['lib/words/en/a.ts', "count === 1 ? 'one' : 'more'"]
])('in %s %s follows no one language', (path, text) => {
	expect(localeFaults([file(`src/${path}`, text)])).toHaveLength(1);
});

test.each([
	'new Intl.Collator(LOCALE)',
	"Intl.supportedValuesOf('timeZone')",
	'Intl.LDMLPluralRule'
])('%s follows the one language', (text) => {
	expect(localeFaults([file('src/lib/words/en/a.ts', text)])).toEqual([]);
});

test.each(["error(404, 'Sorry')", "error(404, { code: 'not-found', message: 'Sorry' })"])(
	'%s is no text of the words',
	(text) => {
		expect(bareFaults([file('src/routes/+server.ts', text)])).toHaveLength(1);
		expect(
			bareFaults([file('src/routes/+server.ts', 'error(404, { message: faultText(a) })')])
		).toEqual([]);
	}
);

test('a word around a page is found, and a language that is not that of the words', () => {
	const words = { name: 'Breathmark', language: 'en' };
	const around = (text: string) => wordsOutside(file('src/app.html', text), words);
	const head = '<meta name="viewport" content="width=device-width" /><title>Breathmark</title>';
	expect(around(`<html lang="%lang%">${head}<p>%sveltekit.error.message%</p>`)).toEqual([]);
	expect(around('<html lang="en"><p>Sorry</p>')).toHaveLength(1);
	expect(around('<html lang="en"><img alt="Sorry" />')).toHaveLength(1);
	expect(around('<html lang="de">')).toHaveLength(1);
});

test('a host that we do not know is found, and an unknown part of a known one', () => {
	const text =
		'https://doi.org/10.1 http://localhost:4173 https://fonts.example.com/a https://doi.org.evil.test';
	expect(strangeHosts([file('src/a.ts', text)])).toEqual([
		'src/a.ts names fonts.example.com',
		'src/a.ts names doi.org.evil.test'
	]);
});

test('a package without a sentence and a route off the map are found', () => {
	const text = '`zod` checks what comes in at every edge.\n`pg`\nThe bands are at `/bands`.';
	expect(unexplainedPackages(['zod', 'pg', 'kysely'], text)).toEqual(['pg', 'kysely']);
	const paths = [
		'src/routes/bands/+page.svelte',
		'src/routes/past/+server.ts',
		'src/routes/past/a.ts'
	];
	expect(unmappedRoutes(paths, text)).toEqual(['/past']);
});
