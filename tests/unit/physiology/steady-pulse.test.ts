import { describe, expect, it } from 'vitest';
import {
	pulseSteps,
	steadyPulse,
	type Demand,
	type RunnerPulse
} from '$lib/physiology/steady-pulse.ts';

const runner: RunnerPulse = Object.freeze({
	resting: { bpm: 70, spreadBpm: 3 },
	maximum: { bpm: 180, spreadBpm: 11.4 },
	capacity: { mlPerKgPerMinute: 35, spread: 2, basis: 'walk-check' as const }
});
const running = (speedMetresPerMinute: number): Demand => ({
	kind: 'speed',
	gait: 'run',
	speedMetresPerMinute,
	grade: 0
});
const held = (reserveFraction: number): Demand => ({ kind: 'reserve', reserveFraction });

/*
 * Hunt 2015 (seen): a step of running speed lifted the pulse of 24 healthy men by 24.2 beats a minute
 * for each m/s, with a spread of 8.3 between them. Their capacities are not told here: 45 to 60
 * mL/kg/min, resting 60 and a maximum of 190 are assumed, from memory of men who run.
 */
describe('a step of running speed', () => {
	it.each([45, 50, 60])(
		'lifts the pulse as was measured, within two spreads, at a capacity of %s',
		(mlPerKgPerMinute) => {
			const man: RunnerPulse = {
				resting: { bpm: 60, spreadBpm: 3 },
				maximum: { bpm: 190, spreadBpm: 11.4 },
				capacity: { mlPerKgPerMinute, spread: 3 }
			};
			const at = (metresPerSecond: number) => {
				const steady = steadyPulse(running(metresPerSecond * 60), man);
				return steady.kind === 'steady' ? steady.bpm : NaN;
			};
			const gain = (at(2.8) - at(2)) / 0.8;
			expect(Math.abs(gain - 24.2)).toBeLessThan(2 * 8.3);
		}
	);
});

describe('steady pulse of a demand', () => {
	it('is resting at nothing, and the maximum at the whole reserve', () => {
		expect(steadyPulse(held(0), runner)).toMatchObject({ kind: 'steady', bpm: 70 });
		expect(steadyPulse(held(1), runner)).toMatchObject({ kind: 'steady', bpm: 180 });
	});

	it('is the maximum at the speed that takes the whole capacity, and no estimate beyond', () => {
		// 157.5 m/min takes 35 mL/kg/min.
		expect(steadyPulse(running(157.5), runner)).toMatchObject({ kind: 'steady', bpm: 180 });
		expect(steadyPulse(running(157.6), runner)).toEqual({
			kind: 'no-estimate',
			reason: 'over-reserve'
		});
	});

	it('is not known from a speed without a capacity, but is from a held fraction', () => {
		const unmeasured = { ...runner, capacity: null };
		expect(steadyPulse(running(100), unmeasured)).toEqual({
			kind: 'no-estimate',
			reason: 'capacity-unknown'
		});
		expect(steadyPulse(held(0.5), unmeasured)).toMatchObject({ kind: 'steady', bpm: 125 });
	});

	it('refuses a fraction outside 0 to 1 and a maximum that is not above resting', () => {
		for (const fraction of [-0.1, 1.1, 50, NaN]) {
			expect(() => steadyPulse(held(fraction), runner)).toThrow(RangeError);
		}
		const flat = { ...runner, maximum: { bpm: 70, spreadBpm: 0 } };
		expect(() => steadyPulse(held(0.5), flat)).toThrow(RangeError);
	});
});

describe('steps of an outing', () => {
	it('are none for no phases', () => {
		expect(pulseSteps([], runner)).toEqual({ kind: 'steps', steps: [] });
	});

	it('name the first phase that has no estimate', () => {
		const phases = [
			{ durationSeconds: 400, demand: held(0.4) },
			{ durationSeconds: 50, demand: running(200) },
			{ durationSeconds: 110, demand: held(2) }
		];
		expect(pulseSteps(phases, runner)).toEqual({
			kind: 'no-estimate',
			reason: 'over-reserve',
			phaseIndex: 1
		});
	});

	it('keep their order and durations', () => {
		const phases = [
			{ durationSeconds: 400, demand: held(0.4) },
			{ durationSeconds: 50, demand: held(0.6) }
		];
		expect(pulseSteps(phases, runner)).toEqual({
			kind: 'steps',
			steps: [
				{ durationSeconds: 400, steadyBpm: 114 },
				{ durationSeconds: 50, steadyBpm: 136 }
			]
		});
	});
});
