import type { SourceFile } from './source-file.ts';

/** Attributes that a person reads or hears, and a description in a head. */
const SPOKEN = /\b(?:alt|aria-label|label|placeholder|title|content)="([^"]*)"/g;

/** Set in a head for the browser alone. */
const FOR_BROWSERS = /<meta [^>]*(?:name="(?:viewport|color-scheme)"|charset)[^>]*>/g;

/**
 * Words in what surrounds each page, which no component draws: only the app's name and what the
 * server puts in may stand there, and the language has to be that of the words.
 */
export function wordsOutside(
	{ path, text }: SourceFile,
	{ name, language }: { readonly name: string; readonly language: string }
): string[] {
	const bare = text
		.replaceAll(/<!--.*?-->|<style>.*?<\/style>/gs, '')
		.replaceAll(FOR_BROWSERS, '')
		.replaceAll(/%[\w.-]+%/g, '');
	const read = [
		bare.replaceAll(/<[^>]*>/g, ' '),
		...[...bare.matchAll(SPOKEN)].map(([, it]) => it)
	];
	const words = read.flatMap((it) => it?.replaceAll(name, '').match(/\p{L}+/gu) ?? []);
	const said = /<html lang="([^"]*)"/.exec(text)?.[1];
	return [
		...words.map((word) => `${path}: “${word}” comes from no words`),
		...(said === language || said === '%lang%' ? [] : [`${path} says that it is in ${said}`])
	];
}

/** Messages of faults that are no text of the words: where no page can be drawn, they are what is read. */
export const bareFaults = (files: readonly SourceFile[]): string[] =>
	files
		.filter(({ path }) => /^src\/(routes|perimeter)\//.test(path))
		.flatMap(({ path, text }) =>
			[...text.matchAll(/\berror\(\d+, (?:\{[^}]*message: )?['"`][^)]*\)/g)].map(
				([what]) => `${path}: ${what}`
			)
		);
