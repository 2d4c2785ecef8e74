import { describe, expect, it } from 'vitest';
import { donePhases } from '$lib/outing/done-phases.ts';
import { doneTotals } from '$lib/outing/done-totals.ts';
import { morningAfter } from '$lib/outing/morning-after.ts';
import { settleEntries } from '$lib/outing/settle-entries.ts';
import { outingTotals } from '$lib/outing/totals.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { comfortable, doneOuting, type ToldPhase } from './done-entries.ts';

// Our own rules, no source.

const walk: ToldPhase = { kind: 'recovery-walk', seconds: 110 };
const run: ToldPhase = { kind: 'steady-run', seconds: 50 };

describe('what an outing came to', () => {
	it('is nothing where nothing was done', () => {
		expect(doneTotals(doneOuting([]))).toEqual({
			totalSeconds: 0,
			running: { seconds: 0, longestSeconds: 0 }
		});
	});

	it('is what was planned, where all of it was done', () => {
		const phases = [walk, run, walk, run, run, walk];
		const planned = outingTotals({
			parts: phases.map(({ kind, seconds = 0 }) => plainPhase(kind, seconds))
		});
		expect(doneTotals(doneOuting(phases))).toEqual({
			totalSeconds: planned.totalSeconds,
			running: { seconds: planned.runningSeconds, longestSeconds: planned.longestRunSeconds }
		});
	});

	it('counts what was done of a run, and joins two with no walk between them', () => {
		const skipped = { ...walk, done: 0, how: 'skipped' } as const;
		const half = { ...run, done: 25, how: 'cut-short' } as const;
		expect(doneTotals(doneOuting([run, skipped, half, walk, run])).running).toEqual({
			seconds: 125,
			longestSeconds: 75
		});
	});

	it('does not know what was a run where the start never arrived', () => {
		const done = doneOuting([run, walk]);
		expect(doneTotals({ ...done, started: null })).toEqual({ totalSeconds: 160, running: null });
		expect(donePhases({ ...done, started: null }).map(({ kind }) => kind)).toEqual([null, null]);
	});

	it('takes a phase beyond those planned for a walk that was put in on the way', () => {
		const done = doneOuting([run], {
			more: [{ kind: 'phase-done', phase: 1, activeSeconds: 300, how: 'whole' }]
		});
		expect(donePhases(done).map(({ kind }) => kind)).toEqual(['steady-run', 'cool-down-walk']);
		expect(doneTotals(done).running).toEqual({ seconds: 50, longestSeconds: 50 });
	});

	it('has every phase once, with all that was said of it, in order', () => {
		const done = doneOuting([walk, run], {
			more: [
				{ ...comfortable, phase: 0, talk: 'with-breaths' },
				{ ...comfortable, phase: 0, afterPassage: true },
				{
					kind: 'pulse-summary',
					phase: 3,
					source: 'tapped',
					meanBpm: 120,
					highestBpm: 130,
					measuredSeconds: 40
				}
			]
		});
		const phases = donePhases(done);
		expect(phases.map(({ phase }) => phase)).toEqual([0, 1, 3]);
		expect(phases[0]?.answers).toHaveLength(2);
		expect(phases[2]).toMatchObject({ activeSeconds: null, how: null, pulse: { meanBpm: 120 } });
	});

	it('counts of the pulses of one phase the one that was measured longest, in either order', () => {
		const of = (measuredSeconds: number, meanBpm: number) =>
			({
				kind: 'pulse-summary',
				phase: 1,
				source: 'chest-strap',
				meanBpm,
				highestBpm: 150,
				measuredSeconds
			}) as const;
		for (const more of [
			[of(12, 140), of(40, 130)],
			[of(40, 130), of(12, 140)]
		]) {
			const phases = donePhases(doneOuting([walk, run], { more }));
			expect(phases.find(({ phase }) => phase === 1)?.pulse).toMatchObject({ meanBpm: 130 });
		}
	});
});

describe('the morning after', () => {
	const { painNextMorning } = settleEntries([
		{
			id: 'a',
			outingRunId: 'r',
			at: 0,
			seq: 0,
			elapsedMs: 0,
			kind: 'pain-next-morning',
			level: 'none',
			where: null
		}
	]);
	const on = (onDate: string, answered = false) => ({
		onDate,
		painNextMorning: answered ? painNextMorning : null
	});

	it('is not asked about without an outing, nor on its own day', () => {
		expect(morningAfter([], '2026-11-25')).toBeNull();
		expect(morningAfter([on('2026-11-25')], '2026-11-25')).toBeNull();
	});

	it('is asked about from the next day on, for three days', () => {
		const asked = ['2026-11-24', '2026-11-22', '2026-11-21'].map(
			(day) => morningAfter([on(day)], '2026-11-25')?.onDate ?? null
		);
		expect(asked).toEqual(['2026-11-24', '2026-11-22', null]);
	});

	it('is about the newest outing of an earlier day, in whatever order they come', () => {
		const outings = [on('2026-11-23'), on('2026-11-25'), on('2026-11-24')];
		for (const order of [outings, outings.toReversed()]) {
			expect(morningAfter(order, '2026-11-25')?.onDate).toBe('2026-11-24');
		}
	});

	it('is over once it was answered: an older one is not asked about after it', () => {
		const outings = [on('2026-11-23'), on('2026-11-24', true)];
		expect(morningAfter(outings, '2026-11-25')).toBeNull();
	});
});
