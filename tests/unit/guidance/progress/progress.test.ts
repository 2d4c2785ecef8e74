import { describe, expect, it } from 'vitest';
import { changeOf } from '$lib/guidance/progress/change.ts';
import { doneWeeks, grewFast } from '$lib/guidance/progress/done-weeks.ts';
import { atTheSameEffort } from '$lib/guidance/progress/same-effort.ts';
import type { EntryContent, TalkAnswer } from '$lib/outing/entry.ts';
import { doneOuting, type ToldPhase } from '../../outing/done-entries.ts';

// Our own rules, no source.

const told = { talk: 'comfortable', effort: 5, speedKmh: 5.6, secondsIntoPhase: 150 } as const;

interface Told {
	readonly onDate?: string;
	readonly hot?: boolean;
	readonly kind?: ToldPhase['kind'];
	readonly seconds?: number;
	readonly more?: readonly EntryContent[];
}
function walked(answer: Partial<TalkAnswer> | null = {}, of: Told = {}) {
	const { onDate = '2026-11-20', hot = false, kind = 'brisk-walk', seconds = 300, more = [] } = of;
	const phase: ToldPhase = { kind, seconds, ...(answer && { answer: { ...told, ...answer } }) };
	return { ...doneOuting([phase], { hot, more }), onDate };
}
const speeds = (...outings: readonly ReturnType<typeof walked>[]) =>
	atTheSameEffort(outings, 'brisk-walk').map(({ speedKmh }) => speedKmh);

describe('outings that are compared', () => {
	it('are those with comfortable talk at effort 5 or 6, two minutes into a part, with a speed', () => {
		expect(speeds()).toEqual([]);
		expect(speeds(walked(), walked({ effort: 6, speedKmh: 6 }))).toEqual([5.6, 6]);
		const not: readonly Partial<TalkAnswer>[] = [
			{ effort: 4 },
			{ effort: 7 },
			{ effort: null },
			{ talk: 'with-breaths' },
			{ speedKmh: null },
			{ secondsIntoPhase: 119 }
		];
		for (const answer of not) expect(speeds(walked(answer)), JSON.stringify(answer)).toEqual([]);
	});

	it('are none that were hot, hurt, outdoors or up a slope, and no runs among walks', () => {
		expect(speeds(walked({}, { hot: true }))).toEqual([]);
		const pain: EntryContent = { kind: 'pain', level: 'new', where: 'shin' };
		expect(speeds(walked({}, { more: [pain] }))).toEqual([]);
		const plain = walked();
		const { started } = plain;
		if (!started) throw new Error('not started');
		expect(speeds({ ...plain, started: null })).toEqual([]);
		expect(speeds({ ...plain, started: { ...started, place: 'outdoors' } })).toEqual([]);
		const { outing } = started;
		const parts = outing.parts.map((part) => ({ ...part, inclinePercent: 2 }));
		expect(speeds({ ...plain, started: { ...started, outing: { ...outing, parts } } })).toEqual([]);
		expect(speeds(walked({}, { kind: 'steady-run' }))).toEqual([]);
	});

	it('come oldest first', () => {
		const days = ['2026-11-20', '2026-11-02', '2026-11-09'];
		const compared = atTheSameEffort(
			days.map((onDate) => walked({}, { onDate })),
			'brisk-walk'
		);
		expect(compared.map(({ onDate }) => onDate)).toEqual([...days].sort());
	});
});

describe('a change', () => {
	const weekly = (...kmh: readonly number[]) =>
		kmh.map((speedKmh, nth) => ({
			onDate: ['2026-10-01', '2026-10-08', '2026-10-15', '2026-10-22', '2026-10-29'][nth] ?? '',
			speedKmh
		}));

	it('is not said of few outings, nor of a short time', () => {
		expect(changeOf([])).toEqual({ kind: 'too-few', outings: 0 });
		expect(changeOf(weekly(5, 5, 5, 5))).toEqual({ kind: 'too-few', outings: 4 });
		const days = ['01', '03', '05', '08', '10'].map((day) => `2026-10-${day}`);
		const soon = days.map((onDate) => ({ onDate, speedKmh: 5 }));
		expect(changeOf(soon)).toEqual({ kind: 'too-short', days: 9 });
	});

	it('is faster, slower, or not clear, with its doubt, over four weeks', () => {
		const faster = changeOf(weekly(5, 5.1, 5.3, 5.4, 5.5));
		if (faster.kind !== 'line') throw new Error('no line');
		expect(faster.way).toBe('faster');
		expect(faster.changeKmh).toBeCloseTo(0.52, 9);
		expect(faster.lowKmh).toBeGreaterThan(0);
		expect(faster.line).toHaveLength(5);
		expect(changeOf(weekly(5.5, 5.4, 5.3, 5.1, 5))).toMatchObject({ way: 'slower' });
		expect(changeOf(weekly(5, 5.6, 4.9, 5.5, 5.2))).toMatchObject({ way: 'not-clear' });
		expect(changeOf(weekly(5, 5, 5, 5, 5))).toMatchObject({ way: 'not-clear', changeKmh: 0 });
	});
});

describe('weeks', () => {
	it('are none before the first outing, and go from Monday to Sunday', () => {
		expect(doneWeeks([], '2026-11-25', 8)).toEqual([]);
		const done = ['2026-11-09', '2026-11-15', '2026-11-25'].map((onDate) => walked({}, { onDate }));
		const weeks = doneWeeks(done, '2026-11-25', 8);
		expect(weeks.map(({ monday, outings }) => [monday, outings])).toEqual([
			['2026-11-09', 2],
			['2026-11-16', 0],
			['2026-11-23', 1]
		]);
		expect(doneWeeks(done, '2027-11-25', 8), 'long ago').toEqual([]);
	});

	it('sum effort times minutes, of outings with an effort', () => {
		const [week] = doneWeeks([walked(), walked({ effort: null })], '2026-11-20', 1);
		expect(week).toMatchObject({ totalSeconds: 600, runningSeconds: 0, effortMinutes: 25 });
		expect(doneWeeks([walked(null)], '2026-11-20', 1)).toMatchObject([{ effortMinutes: null }]);
	});

	it('grew fast over 30 % in two weeks, from ten minutes of running on (Nielsen 2014)', () => {
		const ran = (minutes: number, onDate: string) =>
			walked({}, { kind: 'steady-run', seconds: 60 * minutes, onDate });
		const grew = (before: number, now: number) =>
			grewFast(doneWeeks([ran(before, '2026-11-10'), ran(now, '2026-11-24')], '2026-11-25', 8));
		expect(grew(10, 13)).toBe(false);
		expect(grew(10, 13.1)).toBe(true);
		expect(grew(2, 9)).toBe(false);
		expect(grewFast([])).toBe(false);
		expect(grewFast(doneWeeks([ran(20, '2026-11-24')], '2026-11-25', 8))).toBe(false);
	});
});
