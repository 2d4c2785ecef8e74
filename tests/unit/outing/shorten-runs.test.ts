import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { phasesOf, type Outing, type OutingPart } from '$lib/outing/outing.ts';
import { phaseTargets, type PhaseKind } from '$lib/outing/phase.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { runsTooLong } from '$lib/outing/runs-too-long.ts';
import { LEAST_WALK_BETWEEN_SECONDS, shortenRuns } from '$lib/outing/shorten-runs.ts';
import { outingTotals } from '$lib/outing/totals.ts';
import { anyOuting } from './any-outing.ts';

// Our own rules, no source.

const anyLimit = fc.integer({ min: 15, max: 240 });
const isRun = ({ kind }: { readonly kind: PhaseKind }) => phaseTargets[kind].gait === 'run';
const outing = (...parts: readonly OutingPart[]): Outing => ({ name: 'One', parts });
const lengths = (short: Outing) => phasesOf(short).map(({ kind, seconds }) => `${kind} ${seconds}`);
const run = (seconds: number) => plainPhase('steady-run', seconds);
const walk = (seconds: number) => plainPhase('recovery-walk', seconds);

/** Seconds of running between two walks that are long enough to end a run. */
function stretches(phases: ReturnType<typeof phasesOf>): readonly number[] {
	const found = [0];
	let walked = 0;
	for (const phase of phases) {
		walked = isRun(phase) ? 0 : walked + phase.seconds;
		if (walked >= LEAST_WALK_BETWEEN_SECONDS) found.push(0);
		if (isRun(phase)) found[found.length - 1] = (found.at(-1) ?? 0) + phase.seconds;
	}
	return found;
}

describe('an outing with shorter runs', () => {
	test('never has a run above the limit', () => {
		fc.assert(
			fc.property(anyOuting, anyLimit, (any, limit) => {
				const short = shortenRuns(any, limit);
				expect(outingTotals(short).longestRunSeconds).toBeLessThanOrEqual(limit);
				expect(Math.max(...stretches(phasesOf(short)))).toBeLessThanOrEqual(limit);
			})
		);
	});

	test('is as long, with as many phases, and no run or walk where it was none', () => {
		fc.assert(
			fc.property(anyOuting, anyLimit, (any, limit) => {
				const [before, after] = [phasesOf(any), phasesOf(shortenRuns(any, limit))];
				expect(after.length).toBe(before.length);
				expect(outingTotals({ parts: after }).totalSeconds).toBe(outingTotals(any).totalSeconds);
				for (const [n, phase] of after.entries()) {
					if (isRun(phase)) expect(phase.seconds).toBeLessThanOrEqual(before[n]?.seconds ?? 0);
					else if (!isRun(before[n]!)) {
						expect(phase.seconds).toBeGreaterThanOrEqual(before[n]!.seconds);
					}
					if (isRun(phase)) expect(isRun(before[n]!)).toBe(true);
				}
			})
		);
	});

	test('is the same where it is short enough, so once more changes nothing', () => {
		fc.assert(
			fc.property(anyOuting, anyLimit, (any, limit) => {
				const short = shortenRuns(any, limit);
				expect(shortenRuns(short, limit)).toBe(short);
			})
		);
	});

	test('keeps each run from its start, and walks the rest of it', () => {
		const short = shortenRuns(outing({ times: 2, phases: [run(50), walk(110)] }), 30);
		expect(lengths(short)).toEqual([
			'steady-run 30',
			'recovery-walk 130',
			'steady-run 30',
			'recovery-walk 130'
		]);
	});

	test('counts runs without a walk between as one', () => {
		expect(lengths(shortenRuns(outing(run(20), run(50), walk(110)), 45))).toEqual([
			'steady-run 20',
			'steady-run 25',
			'recovery-walk 135'
		]);
		expect(lengths(shortenRuns(outing({ times: 3, phases: [run(50)] }), 30))).toEqual([
			'steady-run 30',
			'brisk-walk 70',
			'brisk-walk 50'
		]);
	});

	test('takes a walk of less than a minute for no end of a run', () => {
		expect(lengths(shortenRuns(outing(run(30), walk(10), run(30), walk(60), run(30)), 30))).toEqual(
			['steady-run 30', 'recovery-walk 10', 'brisk-walk 30', 'recovery-walk 60', 'steady-run 30']
		);
	});

	test('makes a brisk walk of a run that nothing follows, or that ends in too long a walk', () => {
		expect(lengths(shortenRuns(outing(run(50)), 30))).toEqual(['brisk-walk 50']);
		expect(lengths(shortenRuns(outing(run(50), walk(7190)), 30))).toEqual([
			'brisk-walk 50',
			'recovery-walk 7190'
		]);
	});

	test('asks for a limit that a run can have', () => {
		expect(() => shortenRuns(outing(), 10)).toThrow(RangeError);
		expect(() => shortenRuns(outing(), Number.NaN)).toThrow(RangeError);
	});
});

describe('runs that are too long for now', () => {
	test('are named once each, at their length', () => {
		const long = outing(run(30), walk(90), { times: 2, phases: [run(50), walk(110)] });
		expect(runsTooLong(long, 30)).toEqual([
			{ code: 'run-too-long-yet', path: ['parts', 2, 'phases', 0, 'seconds'] }
		]);
	});

	test('are none exactly where nothing has to be shortened', () => {
		fc.assert(
			fc.property(anyOuting, anyLimit, (any, limit) => {
				expect(runsTooLong(any, limit).length === 0).toBe(shortenRuns(any, limit) === any);
			})
		);
	});
});
