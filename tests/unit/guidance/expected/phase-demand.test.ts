import { describe, expect, test } from 'vitest';
import { phaseDemand } from '$lib/guidance/expected/phase-demand.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { courseWith } from './any-course.ts';

const run = plainPhase('steady-run', 60);
const walk = plainPhase('brisk-walk', 60);
const share = (demand: ReturnType<typeof phaseDemand>['demand']) =>
	demand.kind === 'reserve' ? demand.reserveFraction : NaN;

describe('without a capacity', () => {
	const unknown = courseWith(null);

	test('a runner is taken to hold the middle of the range, whatever speed is written', () => {
		expect(phaseDemand({ ...run, speedKmh: 8 }, unknown)).toEqual({
			range: { low: 0.5, high: 0.62 },
			demand: { kind: 'reserve', reserveFraction: expect.closeTo(0.56, 12) },
			from: 'range'
		});
	});

	test('anything under is taken from a stroll up', () => {
		expect(share(phaseDemand(plainPhase('cool-down-walk', 60), unknown).demand)).toBeCloseTo(0.3);
	});

	test('a narrower target of the phase narrows the range', () => {
		const { range } = phaseDemand({ ...walk, target: { low: 0.45, high: 0.5 } }, unknown);
		expect(range).toEqual({ low: 0.45, high: 0.5 });
	});
});

describe('where target and range do not meet the gentler counts', () => {
	const limited = courseWith(null, { pulse: { on: true, careTeamLimitBpm: 119.5 } });

	test('the range, when the target is above it', () => {
		const { range } = phaseDemand({ ...walk, target: { low: 0.5, high: 0.55 } }, limited);
		expect(range).toEqual({ low: 0.4, high: 0.45 });
	});

	test('the target, when it is under the range', () => {
		const course = courseWith(null);
		const narrow = {
			...course,
			ranges: { ...course.ranges, 'brisk-walk': { low: 0.5, high: 0.59 } }
		};
		const { range } = phaseDemand({ ...walk, target: { low: 0.4, high: 0.45 } }, narrow);
		expect(range).toEqual({ low: 0.4, high: 0.45 });
	});
});

describe('with a capacity', () => {
	test('a written speed counts, with its incline', () => {
		expect(phaseDemand({ ...walk, speedKmh: 6, inclinePercent: 2 }, courseWith(35))).toMatchObject({
			demand: { kind: 'speed', gait: 'walk', speedMetresPerMinute: 100, grade: 0.02 },
			from: 'speed'
		});
	});

	// Capacity 35: 62 % is 23.03, a run of 97.65 m/min or 5.9 km/h; capacity 30: 82.15 m/min or 4.9.
	test('a run is held in its range while there is a run that gentle, else taken at the slowest', () => {
		expect(phaseDemand(run, courseWith(35)).from).toBe('range');
		expect(phaseDemand(run, courseWith(30))).toMatchObject({
			demand: { kind: 'speed', gait: 'run', speedMetresPerMinute: expect.closeTo(83.333, 3) },
			from: 'slowest-run'
		});
	});

	test('a recovery walk is one of 4.5 km/h', () => {
		expect(phaseDemand(plainPhase('recovery-walk', 60), courseWith(35))).toMatchObject({
			demand: { kind: 'speed', gait: 'walk', speedMetresPerMinute: 75 },
			from: 'recovery-speed'
		});
	});
});
