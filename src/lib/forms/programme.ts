import { z } from 'zod';
import { addDays, compareDates, isLocalDate, type LocalDate } from '../calendar/local-date.ts';
import { MOST_HOLIDAYS, type ProgrammeDays } from '../outing/programme/days.ts';
import { programmeLimits } from '../outing/programme/programme-limits.ts';
import type { ProgrammeGoal, ProgrammeWishes } from '../outing/programme/wishes.ts';
import { typedLength } from '../outing/typed-length.ts';
import { kmhFromTyped, type SpeedUnit } from '../outing/typed-speed.ts';
import { calendarDate, oneOf, rowId, wholeNumber } from './fields.ts';
import { readForm, type Issue, type Typed } from './read-form.ts';

/** What a coach wishes; how the pulse answers is the group's own and not typed. */
export interface WishesTyped {
	readonly wishes: Omit<ProgrammeWishes, 'pulse'>;
	readonly days: ProgrammeDays;
}

export type WishesAnswer =
	| { readonly ok: true; readonly value: WishesTyped; readonly values: Typed }
	| { readonly ok: false; readonly issues: readonly Issue[]; readonly values: Typed };

const LISTS = ['weekdays', 'holidayFrom', 'holidayUntil'] as const;
const states = oneOf(['planned', 'done', 'missed']);
const anyText = z.string().trim().max(40, 'too-long').optional().default('');

const length = z
	.string({ error: 'missing' })
	.refine((text) => text.trim() !== '', 'missing')
	.transform((text, check) => {
		const seconds = typedLength(text);
		if (seconds === null) check.addIssue({ code: 'custom', message: 'not-a-length' });
		return seconds ?? z.NEVER;
	});

const days = {
	weekdays: z.array(oneOf(['1', '2', '3', '4', '5', '6', '7'])).min(1, 'missing'),
	holidayFrom: z.array(anyText),
	holidayUntil: z.array(anyText)
};

const typed = z.object({
	weeks: wholeNumber(programmeLimits.weeks),
	outingsAWeek: oneOf(['2', '3', '4']),
	firstRun: length,
	goalKind: oneOf(['minutes', 'distance', 'walk-and-run']),
	goalMinutes: anyText,
	goalKilometres: anyText,
	goalSpeed: anyText,
	goalRun: anyText,
	settlingIn: z.literal('yes').optional(),
	startsOn: calendarDate,
	...days
});

/** The days of a programme that goes on, and the revision of it that was looked at. */
const daysTyped = z.object({ ...days, revision: wholeNumber({ low: 0, high: 1_000_000 }) });

/** What a coach says of a day, and what it said when they looked. */
export const saidForm = z.object({ id: rowId, was: states, state: states });

/** Takes a day off, or days back. */
export const offForm = z.object({
	from: calendarDate,
	until: calendarDate,
	revision: wholeNumber({ low: 0, high: 1_000_000 })
});

/** Marks a day as hot for everybody in the group, or takes that back. */
export const heatForm = z.object({ onDate: calendarDate, hot: oneOf(['yes', 'no']) });

/** Sets an outing of the library for a day. */
export const planForm = z.object({ id: rowId, onDate: calendarDate });

/**
 * The wishes for a programme as a form sends them. A slip in any field is an issue of its own; what
 * the wishes come to together is the generator's to say.
 *
 * @param unit in which the speed of a distance is typed
 */
export function readWishes(form: FormData, unit: SpeedUnit): WishesAnswer {
	const read = readForm(form, typed, LISTS);
	const values = typedIn(form);
	if (!read.ok) return { ok: false, issues: read.issues, values };
	const { goalKind: _, holidayFrom, holidayUntil, ...plain } = read.value;
	const goal = goalOf(read.value, unit);
	const holidays = holidaysIn(holidayFrom, holidayUntil);
	const issues = [goal, holidays].filter((one) => 'code' in one);
	if ('code' in goal || 'code' in holidays) return { ok: false, issues, values };
	return {
		ok: true,
		values,
		value: {
			wishes: {
				weeks: plain.weeks,
				outingsAWeek: Number(plain.outingsAWeek),
				firstRunSeconds: plain.firstRun,
				goal,
				settlingIn: plain.settlingIn === 'yes'
			},
			days: {
				startsOn: plain.startsOn,
				weekdays: inOrder(plain.weekdays),
				holidays: holidays.dates
			}
		}
	};
}

/** The days of a programme that goes on, as a form sends them. */
export function readDays(form: FormData) {
	const read = readForm(form, daysTyped, LISTS);
	const values = typedIn(form);
	if (!read.ok) return { ok: false as const, issues: read.issues, values };
	const { holidayFrom, holidayUntil, weekdays, revision } = read.value;
	const holidays = holidaysIn(holidayFrom, holidayUntil);
	if ('code' in holidays) return { ok: false as const, issues: [holidays], values };
	const value = { weekdays: inOrder(weekdays), holidays: holidays.dates, revision };
	return { ok: true as const, value, values };
}

const inOrder = (weekdays: readonly string[]) =>
	[...new Set(weekdays.map(Number))].sort((one, other) => one - other);

/** Every field as it was typed. */
export function typedIn(form: FormData): Typed {
	const values: Record<string, string | string[]> = {};
	for (const field of Object.keys(typed.shape)) {
		const sent = form.getAll(field).filter((part) => typeof part === 'string');
		const isList = (LISTS as readonly string[]).includes(field);
		if (isList) values[field] = sent.map((part) => part.slice(0, 40));
		else if (sent[0] !== undefined) values[field] = sent[0].slice(0, 40);
	}
	return values;
}

function goalOf(
	{ goalKind, ...sent }: z.output<typeof typed>,
	unit: SpeedUnit
): ProgrammeGoal | Issue {
	switch (goalKind) {
		case 'minutes': {
			const minutes = numberIn(sent.goalMinutes);
			if (minutes === null) return { field: 'goalMinutes', code: 'not-a-number' };
			return { kind: goalKind, minutes };
		}
		case 'distance': {
			const kilometres = numberIn(sent.goalKilometres);
			if (kilometres === null) return { field: 'goalKilometres', code: 'not-a-number' };
			const speedKmh = kmhFromTyped(sent.goalSpeed, unit);
			if (speedKmh === null || Number.isNaN(speedKmh)) {
				return { field: 'goalSpeed', code: 'not-a-number' };
			}
			return { kind: goalKind, kilometres, speedKmh };
		}
		case 'walk-and-run': {
			const longestRunSeconds = typedLength(sent.goalRun);
			if (longestRunSeconds === null) return { field: 'goalRun', code: 'not-a-length' };
			return { kind: goalKind, longestRunSeconds };
		}
	}
}

function numberIn(text: string): number | null {
	return /^\d{1,3}([.,]\d{1,2})?$/.test(text) ? Number(text.replace(',', '.')) : null;
}

/** From the first to the last day of each line; a line with one day is that day. */
function holidaysIn(
	from: readonly string[],
	until: readonly string[]
): { readonly dates: readonly LocalDate[] } | Issue {
	const field = 'holidays';
	const dates = new Set<LocalDate>();
	for (const [nth, first] of from.entries()) {
		const last = until[nth] || first;
		if (first === '' && last === '') continue;
		if (!isLocalDate(first) || !isLocalDate(last)) return { field, code: 'not-a-date' };
		if (compareDates(last, first) < 0) return { field, code: 'ends-before' };
		for (let date = first; compareDates(date, last) <= 0; date = addDays(date, 1)) {
			dates.add(date);
			if (dates.size > MOST_HOLIDAYS) return { field, code: 'too-many-holidays' };
		}
	}
	return { dates: [...dates].sort() };
}
