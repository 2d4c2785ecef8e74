import { describe, expect, test } from 'vitest';
import { usualOuting, usualWalk } from '$lib/outing/usual-outing.ts';
import { calendarView } from '../../src/routes/coach/[group]/programme/calendar-view.ts';

// Our own rules, no source.

const today = '2026-12-03';
const current = { id: 'p', holidays: [] as string[] };
const day = (onDate: string, changed: object = {}) => ({
	id: onDate,
	programmeId: 'p',
	number: 1,
	week: 1,
	onDate,
	outing: usualOuting('Outing'),
	state: 'planned' as const,
	...changed
});
const alone = (onDate: string, changed: object = {}) =>
	day(onDate, { programmeId: null, number: null, week: null, ...changed });
const close = (days: Parameters<typeof calendarView>[0]) => {
	const view = calendarView(days, current, today);
	return [...view.soon, ...view.later]
		.filter((row) => row.kind === 'outing' && row.isTooClose)
		.map((row) => (row.kind === 'outing' ? row.onDate : ''));
};

describe('the calendar of a group', () => {
	test('parts what is open, soon, later and over, today among what comes', () => {
		const view = calendarView(
			[day('2026-11-30', { state: 'done' }), day('2026-12-01'), day(today), day('2027-02-01')],
			current,
			today
		);
		const dates = (rows: readonly object[]) => rows.map((row) => 'onDate' in row && row.onDate);
		expect(dates(view.open)).toEqual(['2026-12-01']);
		expect(dates(view.soon)).toEqual([today]);
		expect(view.soon[0]).toMatchObject({ isToday: true, isComing: true });
		expect(dates(view.later)).toEqual(['2027-02-01']);
		expect(dates(view.over)).toEqual(['2026-11-30']);
	});

	test('shows days without an outing as one line, until the last of them is over', () => {
		const holidays = ['2026-11-01', '2026-12-02', '2026-12-03', '2026-12-04', '2026-12-24'];
		const { soon } = calendarView([], { ...current, holidays }, today);
		expect(soon).toEqual([
			{ kind: 'free', from: '2026-12-02', until: '2026-12-04' },
			{ kind: 'free', from: '2026-12-24', until: '2026-12-24' }
		]);
	});

	test('points out runs on neighbouring days where one is by itself, and no walks', () => {
		expect(close([day('2026-12-05'), alone('2026-12-06')])).toEqual(['2026-12-05', '2026-12-06']);
		expect(close([day('2026-12-05'), alone('2026-12-07')])).toEqual([]);
		const walk = { outing: usualWalk('Walk') };
		expect(close([day('2026-12-05', walk), alone('2026-12-06')])).toEqual([]);
		expect(close([day('2026-12-05'), alone('2026-12-06', walk)])).toEqual([]);
	});
});
