import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	addDays,
	addMonths,
	compareDates,
	daysBetween,
	isLocalDate,
	localDate
} from '$lib/calendar/local-date.ts';

/** The calendar of the language standard (ECMAScript Temporal), where this runtime has it. */
interface ReferenceDate {
	add(span: { months?: number; days?: number }): ReferenceDate;
	until(other: ReferenceDate): { days: number };
	toString(): string;
}
interface ReferenceMoment {
	toZonedDateTimeISO(zone: string): { toPlainDate(): ReferenceDate };
}
interface Reference {
	PlainDate: { from(date: string): ReferenceDate };
	Instant: { fromEpochMilliseconds(epochMs: number): ReferenceMoment };
}
const reference = (globalThis as { Temporal?: Reference }).Temporal;

const dates = fc
	.date({ min: new Date('1900-01-01'), max: new Date('2200-12-31'), noInvalidDate: true })
	.map((date) => date.toISOString().slice(0, 10));

describe('a date is a day that exists, written in full', () => {
	test.each(['2026-11-25', '2028-02-29', '2000-02-29', '1000-01-01', '9999-12-31'])(
		'%s',
		(date) => {
			expect(isLocalDate(date)).toBe(true);
		}
	);

	test.each([
		'',
		'2026-02-29',
		'1900-02-29',
		'2026-02-30',
		'2026-13-01',
		'2026-00-10',
		'2026-11-31',
		'2026-1-5',
		'26-11-25',
		'2026-11-25T00:00:00Z',
		' 2026-11-25',
		'2026-11-25\n',
		'25.11.2026',
		'0999-01-01',
		20261125,
		null,
		undefined,
		['2026-11-25']
	])('%j is none', (value) => {
		expect(isLocalDate(value)).toBe(false);
	});
});

describe('the date on the wall where the person is', () => {
	// Offsets from the IANA time zone database, from memory.
	test.each([
		['2026-11-25T00:30:00Z', 'Europe/Dublin', '2026-11-25'],
		['2026-11-25T00:30:00Z', 'America/Los_Angeles', '2026-11-24'],
		['2026-11-24T23:30:00Z', 'Asia/Tokyo', '2026-11-25'],
		['2026-11-24T10:00:00Z', 'Pacific/Kiritimati', '2026-11-25'],
		['2026-11-24T09:59:59Z', 'Pacific/Kiritimati', '2026-11-24'],
		['2026-11-24T10:59:00Z', 'Pacific/Pago_Pago', '2026-11-23'],
		['2026-11-24T18:29:00Z', 'Asia/Kolkata', '2026-11-24'],
		['2026-11-24T18:30:00Z', 'Asia/Kolkata', '2026-11-25'],
		// Summer time begins and ends.
		['2026-03-28T23:59:00Z', 'Europe/Dublin', '2026-03-28'],
		['2026-06-30T23:00:00Z', 'Europe/Dublin', '2026-07-01'],
		['2026-10-25T00:59:00Z', 'Europe/Dublin', '2026-10-25'],
		// Samoa left out 30 December 2011.
		['2011-12-30T09:59:00Z', 'Pacific/Apia', '2011-12-29'],
		['2011-12-30T10:00:00Z', 'Pacific/Apia', '2011-12-31']
	])('%s in %s is %s', (moment, zone, date) => {
		expect(localDate(Date.parse(moment), zone)).toBe(date);
	});

	test.each([
		[Number.NaN, 'Europe/Dublin'],
		[Number.POSITIVE_INFINITY, 'Europe/Dublin'],
		[0, 'Europe/Atlantis'],
		[0, ''],
		[0, undefined as never]
	])('a moment %s in zone %s is the caller’s mistake', (moment, zone) => {
		expect(() => localDate(moment, zone)).toThrow(RangeError);
	});

	test.skipIf(!reference)('agrees with the calendar of the language standard', () => {
		const zones = fc.constantFrom(
			'Europe/Dublin',
			'America/St_Johns',
			'Pacific/Apia',
			'Asia/Kathmandu',
			'Australia/Lord_Howe'
		);
		const moments = fc.integer({ min: 0, max: Date.parse('2100-01-01T00:00:00Z') });
		fc.assert(
			fc.property(moments, zones, (moment, zone) => {
				const zoned = reference!.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(zone);
				expect(localDate(moment, zone)).toBe(zoned.toPlainDate().toString());
			}),
			{ numRuns: 500 }
		);
	});
});

describe('months later', () => {
	test.each([
		['2026-11-24', 12, '2027-11-24'],
		['2028-02-29', 12, '2029-02-28'],
		['2028-02-29', 48, '2032-02-29'],
		['2027-02-28', 12, '2028-02-28'],
		['2026-01-31', 1, '2026-02-28'],
		['2026-03-31', -1, '2026-02-28'],
		['2026-12-15', 1, '2027-01-15'],
		['2026-11-24', 0, '2026-11-24'],
		['2026-01-15', -1, '2025-12-15']
	])('%s and %i months is %s', (date, months, later) => {
		expect(addMonths(date, months)).toBe(later);
	});

	test.each([
		['2026-02-30', 1],
		['2026-11-24', 1.5],
		['2026-11-24', Number.NaN],
		['9999-12-31', 1]
	])('%s and %s months is the caller’s mistake', (date, months) => {
		expect(() => addMonths(date, months)).toThrow(RangeError);
	});

	test.skipIf(!reference)('agree with the calendar of the language standard', () => {
		fc.assert(
			fc.property(dates, fc.integer({ min: -500, max: 500 }), (date, months) => {
				const later = reference!.PlainDate.from(date).add({ months });
				expect(addMonths(date, months)).toBe(later.toString());
			})
		);
	});
});

describe('days later, and days between', () => {
	test.each([
		['2028-02-28', 1, '2028-02-29'],
		['2027-02-28', 1, '2027-03-01'],
		['2027-01-01', -1, '2026-12-31'],
		// Clocks change in between; calendar days do not care.
		['2026-03-28', 2, '2026-03-30'],
		['2026-10-24', 2, '2026-10-26']
	])('%s and %i days is %s', (date, days, later) => {
		expect(addDays(date, days)).toBe(later);
		expect(daysBetween(date, later)).toBe(days);
		expect(compareDates(date, later)).toBe(days > 0 ? -1 : 1);
	});

	test('a day is as far from itself as from nothing', () => {
		expect(daysBetween('2026-11-25', '2026-11-25')).toBe(0);
		expect(compareDates('2026-11-25', '2026-11-25')).toBe(0);
	});

	test.each([
		() => addDays('2026-11-25', 0.5),
		() => addDays('yesterday', 1),
		() => daysBetween('2026-11-25', ''),
		() => compareDates('2026-11-25', '2026-11-31')
	])('a day that does not exist is the caller’s mistake', (call) => {
		expect(call).toThrow(RangeError);
	});

	test('adding days and counting them agree', () => {
		fc.assert(
			fc.property(dates, fc.integer({ min: -4000, max: 4000 }), (date, days) => {
				expect(daysBetween(date, addDays(date, days))).toBe(days);
			})
		);
	});

	test.skipIf(!reference)('agree with the calendar of the language standard', () => {
		fc.assert(
			fc.property(dates, dates, (one, other) => {
				const [from, to] = [one, other].map((date) => reference!.PlainDate.from(date));
				expect(daysBetween(one, other)).toBe(from!.until(to!).days);
			})
		);
	});
});
