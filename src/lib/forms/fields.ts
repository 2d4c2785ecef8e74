import { z } from 'zod';
import { isLocalDate } from '../screening/calendar.ts';

/** The building blocks of forms. Every message is an issue code of the words. */

interface Range {
	readonly low: number;
	readonly high: number;
}

const typed = z.string({ error: 'missing' }).trim();
const emptyAsNull = (typed: unknown) =>
	typed === undefined || (typeof typed === 'string' && typed.trim() === '') ? null : typed;

/** A number as people type it: 62,5 and 62.5 are the same. */
const number = typed
	.min(1, 'missing')
	.regex(/^-?\d{1,9}([.,]\d{1,9})?$/, 'not-a-number')
	.transform((text) => Number(text.replace(',', '.')));

export const wholeNumber = ({ low, high }: Range) =>
	number.pipe(z.number().int('not-whole').min(low, 'too-low').max(high, 'too-high'));

export const decimalNumber = ({ low, high }: Range) =>
	number.pipe(z.number().min(low, 'too-low').max(high, 'too-high'));

/** The same field, left empty: null. */
export const optional = <Schema extends z.ZodType>(schema: Schema) =>
	z.preprocess(emptyAsNull, schema.nullable());

export const oneOf = <const Options extends readonly [string, ...string[]]>(options: Options) =>
	z.enum(options, { error: (issue) => (issue.input === undefined ? 'missing' : 'unknown-option') });

export const ticked = z.literal('yes', { error: 'missing' });

export const calendarDate = typed.min(1, 'missing').refine(isLocalDate, 'not-a-date');

/** Short free text, such as a name. Never about health. */
export const shortText = z
	.string()
	.trim()
	.max(40, 'too-long')
	.optional()
	.transform((text) => text || null);

/** Free text of at most so many characters, on one line. Left empty: null. Never about health. */
export const textUpTo = (length: number) =>
	z
		.string()
		.transform((text) => text.replace(/\s+/g, ' ').trim())
		.pipe(z.string().max(length, 'too-long'))
		.optional()
		.transform((text) => text || null);

/** An IANA name that this server knows. */
export const timeZone = z
	.string({ error: 'missing' })
	.refine(
		(zone) => zone === 'UTC' || Intl.supportedValuesOf('timeZone').includes(zone),
		'unknown-option'
	);

/** A number to call, as digits. */
export const phoneNumber = typed
	.min(1, 'missing')
	.regex(/^\+?[0-9][0-9 ().\-/]{1,22}$/, 'not-a-number')
	.transform((number) => number.replace(/[ ().\-/]/g, ''))
	.pipe(z.string().regex(/^\+?\d{2,15}$/, 'not-a-number'));

/** The id of a row of ours, as a form carries it along. */
export const rowId = z.string({ error: 'missing' }).regex(/^[0-9a-zA-Z-]{1,60}$/, 'missing');
