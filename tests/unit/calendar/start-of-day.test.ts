import { describe, expect, it } from 'vitest';
import { startOfDay } from '$lib/calendar/start-of-day.ts';

/* Offsets from UTC: the IANA time zone database, from memory. */

describe('a day', () => {
	it.each([
		['2026-11-25', 'UTC', '2026-11-25T00:00:00Z'],
		['2026-11-25', 'Europe/Dublin', '2026-11-25T00:00:00Z'],
		['2026-07-01', 'Europe/Dublin', '2026-06-30T23:00:00Z'],
		['2026-11-25', 'Pacific/Kiritimati', '2026-11-24T10:00:00Z'],
		['2026-11-25', 'America/New_York', '2026-11-25T05:00:00Z']
	])('%s in %s begins at %s', (date, zone, at) => {
		expect(startOfDay(date, zone)).toBe(Date.parse(at));
	});

	it('is a caller’s mistake where it is none', () => {
		expect(() => startOfDay('2026-02-30', 'UTC')).toThrow(RangeError);
	});
});
