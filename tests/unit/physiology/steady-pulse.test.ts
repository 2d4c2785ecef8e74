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
