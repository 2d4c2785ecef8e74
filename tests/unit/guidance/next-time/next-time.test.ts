import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holds, type DatedOuting, type NextTimeRules } from '$lib/guidance/next-time/asked.ts';
import { nextTime } from '$lib/guidance/next-time/next-time.ts';
import { nextAdvices } from '$lib/guidance/next-time/rows.ts';
import { settleEntries } from '$lib/outing/settle-entries.ts';
import { anyEntry } from '../../outing/any-entry.ts';
import { doneOuting, type ToldPhase } from '../../outing/done-entries.ts';

// The table is our own, of common practice and caution. No source.

const open: NextTimeRules = {
	today: '2026-11-25',
	held: { 'steady-run': null, 'brisk-walk': null },
	bandHighBpm: { 'steady-run': 140, 'brisk-walk': 130 },
	painStands: false,
	signStands: false
};
type Answer = NonNullable<ToldPhase['answer']>;
type More = Parameters<typeof doneOuting>[1];

const easy: Answer = { talk: 'comfortable', effort: 5, speedKmh: 6.4 };

/** Three runs of 60 s with walks between; each run with what was said of it. */
function runs(answers: readonly (Answer | null)[] = [easy, easy, easy], more: More = {}) {
	const phases = answers.flatMap((answer): ToldPhase[] => [
		{ kind: 'recovery-walk', seconds: 110 },
		{ kind: 'steady-run', seconds: 60, ...(answer && { answer }) }
	]);
	return dated(doneOuting(phases, more));
}
const dated = (outing: ReturnType<typeof doneOuting>, onDate = '2026-11-24'): DatedOuting => ({
	...outing,
	onDate
});
const advise = (
	outing: DatedOuting,
	rules: Partial<NextTimeRules> = {},
	before: DatedOuting[] = []
) => nextTime([outing, ...before], { ...open, ...rules });
const of = (...given: Parameters<typeof advise>) => advise(...given).advice;

describe('next time', () => {
	it('cannot be said without an outing', () => {
		expect(() => nextTime([], open)).toThrow('nextTime requires an outing');
	});

	it('is one notch up, at first in the last run, where talk was comfortable throughout', () => {
		expect(advise(runs())).toEqual({
			advice: 'notch-up',
			because: [
				{ kind: 'talk', talk: 'comfortable' },
				{ kind: 'effort', effort: 5 }
			],
			main: 'steady-run',
			speedKmh: 6.4,
			inAll: false
		});
		expect(advise(runs(), {}, [runs()]).inAll).toBe(true);
	});

	it('is the next step after three of the same that went well', () => {
		const late = { ...easy, talk: 'with-breaths', secondsIntoPhase: 50 } as const;
		const well = runs([easy, late, late]);
		expect(of(well, {}, [well])).toBe('same');
		expect(of(well, {}, [well, well])).toBe('next-step');
		expect(of(well, {}, [well, runs([easy, easy]), well]), 'another outing between').toBe('same');
		const hot = runs([easy, easy, easy], { hot: true });
		expect(of(well, {}, [hot, well]), 'a hot one does not count').toBe('same');
	});

	it('eases back where a run was not finished, talk broke off twice, or effort was 8', () => {
		const broke = { ...easy, talk: 'broke-off' } as const;
		expect(of(runs([broke, broke, easy]))).toBe('ease-back');
		expect(of(runs([easy, { ...easy, effort: 8 }, easy]))).toBe('ease-back');
		const cut = doneOuting([
			{ kind: 'steady-run', answer: easy },
			{ kind: 'steady-run', done: 20, how: 'cut-short', answer: easy }
		]);
		expect(advise(dated(cut))).toMatchObject({
			advice: 'ease-back',
			because: [
				{ kind: 'unfinished', count: 1, of: 2 },
				{ kind: 'talk', talk: 'comfortable' }
			]
		});
		const left = doneOuting([{ kind: 'steady-run', answer: easy }], { ended: 'early' });
		const planned = { ...left, phases: [] };
		expect(of(dated(planned)), 'ended before it').toBe('ease-back');
	});

	it('recovers longer where talk broke off once, effort was 7, or the pulse was over its band', () => {
		const broke = { ...easy, talk: 'broke-off' } as const;
		expect(of(runs([broke, easy, easy]))).toBe('longer-recovery');
		expect(of(runs([easy, { ...easy, effort: 7 }, easy]))).toBe('longer-recovery');
		const pulse = (phase: number, meanBpm: number) =>
			({
				kind: 'pulse-summary',
				phase,
				source: 'chest-strap',
				meanBpm,
				highestBpm: meanBpm + 5,
				measuredSeconds: 55
			}) as const;
		const over = (beats: readonly number[]) =>
			runs([easy, easy, easy], { more: beats.map((bpm, nth) => pulse(2 * nth + 1, bpm)) });
		expect(of(over([141, 141, 130]))).toBe('longer-recovery');
		expect(of(over([141, 130, 130])), 'a third is not more than a third').toBe('same');
		expect(of(over([130, 130, 130]))).toBe('notch-up');
		const off = { 'steady-run': null, 'brisk-walk': null };
		expect(of(over([180, 180, 180]), { bandHighBpm: off }), 'pulse off').toBe('notch-up');
	});

	it('is the same again where answers are missing, or breaths came early, or in a walk', () => {
		expect(of(runs([easy, null, null]))).toBe('same');
		expect(of(runs([null, null, null]))).toBe('same');
		const early = { ...easy, talk: 'with-breaths', secondsIntoPhase: 20 } as const;
		expect(of(runs([early, easy, easy]))).toBe('same');
		const walk = { ...easy, talk: 'with-breaths', secondsIntoPhase: 95 } as const;
		expect(of(dated(doneOuting([{ kind: 'brisk-walk', answer: walk }])))).toBe('same');
	});

	it('never asks for more where screening does not, after a hot day, or without a whole outing', () => {
		for (const why of holds) {
			const { advice, because } = advise(runs(), {
				held: { 'steady-run': why, 'brisk-walk': null }
			});
			expect(advice).toBe('same');
			expect(because[0]).toEqual({ kind: 'held', why });
		}
		const walk = dated(doneOuting([{ kind: 'brisk-walk', answer: easy }]));
		expect(of(walk)).toBe('notch-up');
		expect(of(walk, { held: { 'steady-run': null, 'brisk-walk': 'settling-in' } })).toBe('same');
		expect(of(runs([easy, easy, easy], { hot: true }))).toBe('same');
		expect(of(runs([easy, easy, easy], { ended: 'early' }))).toBe('same');
		expect(of(runs([easy, easy, easy], { ended: null }))).toBe('same');
	});

	it('is one step back after two weeks, and whatever went well before', () => {
		const longAgo = { ...runs(), onDate: '2026-11-11' };
		expect(of(longAgo, {}, [longAgo, longAgo])).toBe('step-back');
		expect(of({ ...runs(), onDate: '2026-11-12' })).toBe('notch-up');
	});

	it('is walking while pain stands, and the questions while a sign does', () => {
		const sore = runs([easy, easy, easy], {
			more: [{ kind: 'pain', level: 'new', where: 'shin' }]
		});
		expect(of(sore, { painStands: true })).toBe('walk-only');
		expect(of(runs(), { painStands: true }), 'pain of another outing').toBe('walk-only');
		expect(of(sore), 'gone, and still nothing is raised').toBe('same');
		const sign = runs([easy, easy, easy], {
			more: [{ kind: 'something-wrong', sign: 'call-now' }]
		});
		expect(of(sign, { signStands: true, painStands: true })).toBe('questions');
		expect(of(sign), 'lifted by a doctor: as after an illness').toBe('step-back');
	});

	it('decides everything, with two facts of two kinds, whatever was written down', () => {
		const anyDone = fc
			.array(anyEntry, { minLength: 1, maxLength: 25 })
			.map((entries) => dated(settleEntries(entries)));
		fc.assert(
			fc.property(
				fc.array(anyDone, { minLength: 1, maxLength: 4 }),
				fc.boolean(),
				(some, stands) => {
					const next = nextTime(some, { ...open, painStands: stands });
					expect(nextAdvices).toContain(next.advice);
					expect(next.because[0]).not.toEqual(next.because[1]);
				}
			)
		);
	});

	it('asks for no more of whoever told of a harder outing', () => {
		const order = nextAdvices.filter((one) => one !== 'questions' && one !== 'walk-only');
		const asks: Record<string, number> = {
			'ease-back': 0,
			'step-back': 0,
			'longer-recovery': 1,
			same: 2
		};
		const rank = (advice: string) => asks[advice] ?? 3;
		expect(order.map(rank)).toContain(3);
		const levels = ['comfortable', 'with-breaths', 'broke-off'] as const;
		const told = fc.tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 0, max: 10 }));
		fc.assert(
			fc.property(fc.array(told, { minLength: 3, maxLength: 3 }), fc.nat(2), (answers, at) => {
				const asOuting = (list: readonly (readonly [number, number])[]) =>
					runs(
						list.map(([talk, effort]) => ({
							...easy,
							talk: levels[talk] ?? 'broke-off',
							effort: effort as 5
						}))
					);
				const harder = answers.map(([talk, effort], nth): [number, number] =>
					nth === at ? [Math.min(2, talk + 1), Math.min(10, effort + 1)] : [talk, effort]
				);
				expect(rank(of(asOuting(harder)))).toBeLessThanOrEqual(rank(of(asOuting(answers))));
			})
		);
	});
});
