import { describe, expect, test } from 'vitest';
import { readWishes } from '$lib/forms/programme.ts';

// Our own rules, no source.

const good: Record<string, string | string[]> = {
	weeks: '16',
	outingsAWeek: '3',
	firstRun: '0:30',
	goalKind: 'minutes',
	goalMinutes: '30',
	goalKilometres: '',
	goalSpeed: '',
	goalRun: '',
	startsOn: '2026-11-30',
	weekdays: ['6', '1', '3'],
	holidayFrom: ['2026-12-24', '', '2027-01-01'],
	holidayUntil: ['2026-12-26', '', '']
};

function read(changed: Record<string, string | string[]> = {}, unit: 'km/h' | 'mph' = 'km/h') {
	const form = new FormData();
	for (const [field, value] of Object.entries({ ...good, ...changed })) {
		for (const part of [value].flat()) form.append(field, part);
	}
	return readWishes(form, unit);
}

const goalOf = (changed: Record<string, string>, unit?: 'km/h' | 'mph') => {
	const answer = read(changed, unit);
	return answer.ok ? answer.value.wishes.goal : answer.issues;
};

describe('the wishes for a programme', () => {
	test('are read whole: days in order, each day of a break', () => {
		expect(read()).toMatchObject({
			ok: true,
			value: {
				wishes: {
					weeks: 16,
					outingsAWeek: 3,
					firstRunSeconds: 30,
					goal: { kind: 'minutes', minutes: 30 },
					settlingIn: false
				},
				days: {
					startsOn: '2026-11-30',
					weekdays: [1, 3, 6],
					holidays: ['2026-12-24', '2026-12-25', '2026-12-26', '2027-01-01']
				}
			}
		});
		expect(read({ settlingIn: 'yes' })).toMatchObject({ value: { wishes: { settlingIn: true } } });
	});

	test('a distance has a speed in the unit of the group', () => {
		const distance = { goalKind: 'distance', goalKilometres: '4,5', goalSpeed: '4' };
		expect(goalOf(distance)).toEqual({ kind: 'distance', kilometres: 4.5, speedKmh: 4 });
		expect(goalOf(distance, 'mph')).toMatchObject({ speedKmh: expect.closeTo(6.437, 3) });
		expect(goalOf({ ...distance, goalSpeed: 'fast' })).toEqual([
			{ field: 'goalSpeed', code: 'not-a-number' }
		]);
	});

	test('only the goal that was chosen is looked at', () => {
		expect(goalOf({ goalKind: 'walk-and-run', goalRun: '3:00', goalMinutes: 'x' })).toEqual({
			kind: 'walk-and-run',
			longestRunSeconds: 180
		});
		expect(goalOf({ goalMinutes: '' })).toEqual([{ field: 'goalMinutes', code: 'not-a-number' }]);
	});

	test.each([
		[{ weeks: '9' }, 'weeks', 'too-low'],
		[{ weeks: '12.5' }, 'weeks', 'not-whole'],
		[{ weeks: '' }, 'weeks', 'missing'],
		[{ outingsAWeek: '7' }, 'outingsAWeek', 'unknown-option'],
		[{ firstRun: '30' }, 'firstRun', 'not-a-length'],
		[{ firstRun: '' }, 'firstRun', 'missing'],
		[{ startsOn: '2027-02-29' }, 'startsOn', 'not-a-date'],
		[{ startsOn: '' }, 'startsOn', 'missing'],
		[{ weekdays: [] as string[] }, 'weekdays', 'missing'],
		[{ weekdays: ['8'] }, 'weekdays', 'unknown-option'],
		[{ holidayFrom: ['soon'] }, 'holidays', 'not-a-date'],
		[{ holidayFrom: [''], holidayUntil: ['2026-12-26'] }, 'holidays', 'not-a-date'],
		[{ holidayFrom: ['2026-12-26'], holidayUntil: ['2026-12-24'] }, 'holidays', 'ends-before'],
		[{ holidayFrom: ['2026-01-01'], holidayUntil: ['9999-12-31'] }, 'holidays', 'too-many-holidays']
	])('%j: %s is %s, and what was typed is kept', (changed, field, code) => {
		const answer = read(changed);
		expect(answer.ok ? [] : answer.issues).toEqual([{ field, code }]);
		expect(answer.values).toMatchObject({ goalMinutes: '30', ...changed });
	});
});
