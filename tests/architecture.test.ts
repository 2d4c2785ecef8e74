import { describe, expect, test } from 'vitest';
import { LANGUAGE } from '../src/lib/words/en/locale.ts';
import { site } from '../src/lib/words/en/site.ts';
import { bareTexts } from './architecture/bare-text.ts';
import { unexplainedPackages, unmappedRoutes } from './architecture/documents.ts';
import { strangeHosts } from './architecture/hosts.ts';
import { importFaults } from './architecture/import-faults.ts';
import { localeFaults } from './architecture/locale.ts';
import { bareFaults, wordsOutside } from './architecture/outside-words.ts';
import { impurities } from './architecture/purity.ts';
import { sizeFaults, vagueFolders } from './architecture/sizes.ts';
import { filesIn, foldersIn, topFile } from './architecture/source-file.ts';
import { screenFaults, wordFaults } from './architecture/vocabulary.ts';

const code = filesIn(['src'], ['.ts', '.js', '.svelte']).filter(
	({ path }) => path !== 'src/app.d.ts'
);
const written = filesIn(['src', 'static', 'README.md'], ['']);
const developers = topFile('DEVELOPERS.md');

describe('the house keeps its own rules', () => {
	test('there are files to look at', () => {
		expect(code.length).toBeGreaterThan(100);
		expect(written.length).toBeGreaterThan(code.length);
	});

	test('no part imports what is not its business', () => {
		expect(importFaults(code)).toEqual([]);
	});

	test('the pure folders take clock, chance, zone and language as arguments', () => {
		expect(impurities(code)).toEqual([]);
	});

	test('a file is about one thing, and short', () => {
		expect(sizeFaults(code)).toEqual([]);
	});

	test('every folder says what is in it', () => {
		expect(vagueFolders(foldersIn(['src', 'tests', '.setup']))).toEqual([]);
	});

	test('one word for one thing, and no word that belongs to somebody else', () => {
		expect(wordFaults(written)).toEqual([]);
		expect(screenFaults(filesIn(['src/lib/words'], ['.ts']))).toEqual([]);
	});

	test('every text that a person reads comes from the words', () => {
		expect(bareTexts(filesIn(['src'], ['.svelte']))).toEqual([]);
	});

	test('what surrounds a page holds the name of the app and no other word', () => {
		const around = filesIn(['src/app.html', 'src/error.html'], ['.html']);
		expect(around).toHaveLength(2);
		const words = { name: site.name, language: LANGUAGE };
		expect(around.flatMap((file) => wordsOutside(file, words))).toEqual([]);
	});

	test('a fault says what it is in the words, also where no page can be drawn', () => {
		expect(bareFaults(code)).toEqual([]);
	});

	test('what is served as it lies there holds no text that a person reads', () => {
		const paths = filesIn(['static'], ['']).map(({ path }) => path);
		expect(paths.filter((path) => !/\.(png|svg|js)$/.test(path))).toEqual([]);
	});

	test('numbers, dates, plurals and orders follow the one language', () => {
		expect(localeFaults(code)).toEqual([]);
	});

	test('nothing that we ship names a host that we do not know', () => {
		expect(strangeHosts(written)).toEqual([]);
	});

	test.skipIf(developers === null)('every package that runs with the app has its reason', () => {
		const { dependencies } = JSON.parse(topFile('package.json') ?? '{}') as {
			dependencies: Record<string, string>;
		};
		expect(unexplainedPackages(Object.keys(dependencies), developers ?? '')).toEqual([]);
	});

	test.skipIf(developers === null)('every route stands on the map', () => {
		const paths = filesIn(['src/routes'], ['']).map(({ path }) => path);
		expect(unmappedRoutes(paths, developers ?? '')).toEqual([]);
	});
});
