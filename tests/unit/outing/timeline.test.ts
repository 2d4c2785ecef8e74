import { describe, expect, test } from 'vitest';
import type { OutingLog } from '$lib/outing/outing-log.ts';
import { cuesAhead, cuesSince, phasesDone, positionAt } from '$lib/outing/timeline.ts';
import { phase, twoRuns, twoRunsMs } from './beginners-outing.ts';

// Expected places and times are added up by hand from the phases of twoRuns.

const at = (nowMs: number, log: OutingLog = []) => positionAt(twoRuns, log, nowMs);

describe('where am I', () => {
	test('an outing without phases is over before it begins, and says nothing', () => {
		expect(positionAt([], [], 0)).toEqual({ state: 'over', phases: [] });
		expect(cuesSince([], [], null, 1e9)).toEqual([]);
	});

	test('a clock before the start, or none, is a mistake of the caller', () => {
		expect(() => at(-1)).toThrow(RangeError);
		expect(() => at(Number.NaN)).toThrow(RangeError);
	});

	test('at the start the first phase is on, with all of it left', () => {
		expect(at(0)).toMatchObject({
			state: 'going',
			index: 0,
			leftMs: 400_000,
			outingLeftMs: twoRunsMs,
			before: null,
			next: { kind: 'steady-run', seconds: 50 }
		});
	});

	test('the moment at which a phase ends belongs to the next', () => {
		expect(at(399_999)).toMatchObject({ index: 0, leftMs: 1 });
		expect(at(400_000)).toMatchObject({ index: 1, inPhaseMs: 0, leftMs: 50_000 });
		expect(at(400_000)).toMatchObject({ before: { index: 0, how: 'whole' } });
	});

	test('after the last phase it is over', () => {
		expect(at(twoRunsMs - 1)).toMatchObject({ state: 'going', index: 5, next: null });
		expect(at(twoRunsMs).state).toBe('over');
		expect(at(twoRunsMs * 50).state).toBe('over');
	});

	test('seven minutes without a look change nothing: the place is worked out, not counted', () => {
		expect(at(600_000)).toMatchObject({ index: 3, inPhaseMs: 40_000 });
	});
});

describe('what a thumb can do', () => {
	test('a pause holds everything, and adds its length', () => {
		const log: OutingLog = [
			{ kind: 'paused', atMs: 410_000 },
			{ kind: 'resumed', atMs: 500_000 }
		];
		expect(at(450_000, log)).toMatchObject({ state: 'paused', index: 1, inPhaseMs: 10_000 });
		expect(at(500_000, log)).toMatchObject({ state: 'going', index: 1, inPhaseMs: 10_000 });
		expect(at(540_000, log)).toMatchObject({ index: 2, inPhaseMs: 0 });
	});

	test('what is not yet so at a moment is not looked at', () => {
		expect(at(405_000, [{ kind: 'paused', atMs: 410_000 }]).state).toBe('going');
	});

	test('going on without a pause does nothing', () => {
		expect(at(410_000, [{ kind: 'resumed', atMs: 5000 }])).toEqual(at(410_000));
	});

	test('a skip ends the phase that was meant, and a second tap not the one after it', () => {
		const skip = { kind: 'skipped', phase: 1 } as const;
		const log: OutingLog = [
			{ ...skip, atMs: 420_000 },
			{ ...skip, atMs: 420_300 }
		];
		expect(at(421_000, log)).toMatchObject({ index: 2, inPhaseMs: 1000 });
		expect(phasesDone(twoRuns, log, 421_000).at(-1)).toMatchObject({
			index: 1,
			activeMs: 20_000,
			how: 'skipped'
		});
	});

	test('a skip while the clock stands goes to the next phase and waits there', () => {
		const log: OutingLog = [
			{ kind: 'paused', atMs: 410_000 },
			{ kind: 'skipped', phase: 1, atMs: 415_000 }
		];
		expect(at(430_000, log)).toMatchObject({ state: 'paused', index: 2, inPhaseMs: 0 });
	});

	test('30 s more are for a recovery alone, and as often as needed', () => {
		const more = (phase: number, atMs: number) => ({ kind: 'added', phase, atMs }) as const;
		expect(at(420_000, [more(1, 410_000)])).toMatchObject({ phaseMs: 50_000 });
		expect(at(455_000, [more(2, 451_000), more(2, 452_000)])).toMatchObject({
			phaseMs: 170_000,
			leftMs: 165_000
		});
		expect(at(455_000, [more(4, 451_000)])).toMatchObject({ phaseMs: 110_000 });
	});

	test('whoever is sent to cool down takes the outing’s own last walk', () => {
		const log: OutingLog = [{ kind: 'cooling-down', atMs: 420_000 }];
		expect(at(421_000, log)).toMatchObject({
			index: 2,
			phase: { kind: 'cool-down-walk', seconds: 380 },
			next: null
		});
		expect(at(800_000, log).state).toBe('over');
	});

	test('an outing without one is given six minutes; from a walk that cools down there is no way on', () => {
		const runOnly = [phase('steady-run', 600)];
		const log: OutingLog = [
			{ kind: 'cooling-down', atMs: 10_000 },
			{ kind: 'cooling-down', atMs: 20_000 }
		];
		expect(positionAt(runOnly, log, 20_000)).toMatchObject({
			phase: { kind: 'cool-down-walk', seconds: 360 },
			inPhaseMs: 10_000
		});
	});

	test('something wrong stops the clock until it is said to go on', () => {
		const log: OutingLog = [
			{ kind: 'halted', atMs: 420_000 },
			{ kind: 'resumed', atMs: 900_000 }
		];
		expect(at(899_999, log)).toMatchObject({ state: 'halted', inPhaseMs: 20_000 });
		expect(at(900_000, log)).toMatchObject({ state: 'going', inPhaseMs: 20_000 });
	});

	test('an outing that was ended stays ended, whatever is tapped then', () => {
		const log: OutingLog = [
			{ kind: 'ended', atMs: 420_000 },
			{ kind: 'resumed', atMs: 421_000 },
			{ kind: 'skipped', phase: 1, atMs: 422_000 }
		];
		expect(at(430_000, log).state).toBe('over');
		expect(phasesDone(twoRuns, log, 430_000).map(({ how }) => how)).toEqual(['whole', 'cut-short']);
	});
});

describe('cues', () => {
	const kinds = (sinceMs: number | null, nowMs: number, log: OutingLog = []) =>
		cuesSince(twoRuns, log, sinceMs, nowMs).map(({ kind, atMs }) => [kind, atMs]);

	test('a phase of 400 s: its beginning, half-way, one minute left, three, two, one, the next', () => {
		expect(kinds(null, 400_000)).toEqual([
			['phase-begins', 0],
			['half-way', 200_000],
			['one-minute-left', 340_000],
			['three', 397_000],
			['two', 398_000],
			['one', 399_000],
			['phase-begins', 400_000]
		]);
	});

	test('a run of 50 s has no middle and no last minute worth a word', () => {
		expect(kinds(400_000, 450_000).map(([kind]) => kind)).toEqual([
			'three',
			'two',
			'one',
			'phase-begins'
		]);
	});

	test('the end of the last phase is the end of the outing', () => {
		expect(kinds(twoRunsMs - 1, twoRunsMs)).toEqual([['finished', twoRunsMs]]);
		expect(kinds(twoRunsMs, twoRunsMs * 2)).toEqual([]);
	});

	test('a recovery that is made longer counts down anew, and has one middle', () => {
		const log: OutingLog = [{ kind: 'added', phase: 2, atMs: 558_500 }];
		const inRecovery = kinds(450_000, 590_000, log);
		expect(inRecovery.filter(([kind]) => kind === 'half-way')).toEqual([['half-way', 505_000]]);
		expect(inRecovery.filter(([kind]) => kind === 'one')).toEqual([['one', 589_000]]);
		expect(inRecovery.filter(([kind]) => kind === 'three')).toEqual([
			['three', 557_000],
			['three', 587_000]
		]);
	});

	test('whoever ends early is not told that the outing is finished', () => {
		expect(kinds(400_000, twoRunsMs, [{ kind: 'ended', atMs: 410_000 }])).toEqual([]);
	});

	test('what lies ahead is what will be heard if nothing else happens', () => {
		const ahead = cuesAhead(twoRuns, [], 410_000);
		expect(ahead).toEqual(cuesSince(twoRuns, [], 410_000, twoRunsMs));
		expect(cuesAhead(twoRuns, [{ kind: 'paused', atMs: 405_000 }], 410_000)).toEqual([]);
	});
});
