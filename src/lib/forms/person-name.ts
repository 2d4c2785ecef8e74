import { z } from 'zod';

/** Longest name that is kept, in UTF-16 units; the field of a form stops there too. */
export const NAME_LENGTH = 60;

/** Cannot be seen, or turn the direction of a whole line: one name could be dressed up as another. */
const UNSEEN = /[\u00AD\u200B\u200E\u200F\u202A-\u202E\u2060-\u2069\uFEFF]/g;
const APOSTROPHES = /['\u2018\u2019\u02BC\uFF07`\u00B4]/g;
/** Steer how letters join, or stretch them; they make no other name. */
const JOINERS = /[\u0640\u200C\u200D]/g;

/**
 * A name as it is kept: one form for each letter (NFC), single spaces, nothing unseen.
 *
 * @example tidyName('  Mei\u00A0 Lin ') // 'Mei Lin'
 */
export function tidyName(typed: string): string {
	return typed.normalize('NFC').replace(UNSEEN, '').replace(/\s+/g, ' ').trim();
}

/**
 * Two names are the same when this is: case, spaces, kinds of apostrophe and width do not count.
 *
 * @example foldName('Siobh\u00E1n  O\u2019Brien') === foldName("siobh\u00E1n o'brien") // true
 */
export function foldName(name: string): string {
	const plain = name.normalize('NFKC').replace(JOINERS, '').replace(APOSTROPHES, "'");
	return tidyName(plain).toLowerCase();
}

/** The name of somebody in any script. It holds a letter or a digit, and no control character. */
export const personName = z
	.string({ error: 'missing' })
	.transform(tidyName)
	.pipe(
		z
			.string()
			.min(1, 'missing')
			.max(NAME_LENGTH, 'too-long')
			.regex(/[\p{L}\p{N}]/u, 'not-a-name')
			.regex(/^\P{Cc}*$/u, 'not-a-name')
	);
