import { mean, standardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { UPTAKE_ERROR_FRACTION, oxygenUptake } from '$lib/physiology/metabolic-cost.ts';
import { pulseForecast, type PulseForecast } from '$lib/physiology/pulse-forecast.ts';
import { kineticsSpread, usualKinetics } from '$lib/physiology/pulse-kinetics.ts';
import { expectedCurve, expectedMean, expectedPeak } from '$lib/physiology/pulse-response.ts';
import { targetAtFraction } from '$lib/physiology/reserve.ts';
import {
	pulseSteps,
	type Demand,
	type DemandingPhase,
	type RunnerPulse
} from '$lib/physiology/steady-pulse.ts';

const runner = {
	resting: { bpm: 66, spreadBpm: 3 },
	maximum: { bpm: 180, spreadBpm: 11.4 },
	capacity: { mlPerKgPerMinute: 35, spread: 3 }
} satisfies RunnerPulse;

const walking: Demand = { kind: 'speed', gait: 'walk', speedMetresPerMinute: 75, grade: 0 };
const running: Demand = { kind: 'speed', gait: 'run', speedMetresPerMinute: 100, grade: 0 };
const phase = (durationSeconds: number, demand: Demand): DemandingPhase => ({
	durationSeconds,
	demand
});
const outing: readonly DemandingPhase[] = [
	phase(400, walking),
	...[50, 60, 70, 60].flatMap((seconds) => [phase(seconds, running), phase(110, walking)]),
	phase(360, { kind: 'reserve', reserveFraction: 0.3 })
];
const options = { startReserveFraction: 0.1, everySeconds: 30 };

function forecastOf(forecast: PulseForecast) {
	if (forecast.kind !== 'forecast') throw new Error(forecast.reason);
	return forecast;
}

describe('forecast of the pulse with its doubt', () => {
	it('refuses an outing that takes no time, and an interval that is none', () => {
		expect(() => pulseForecast([], runner, options)).toThrow(RangeError);
		expect(() => pulseForecast([phase(-1, walking)], runner, options)).toThrow(RangeError);
		expect(() => pulseForecast(outing, runner, { ...options, everySeconds: 0 })).toThrow(
			RangeError
		);
	});

	it('gives no curve at all when one run is beyond the whole reserve', () => {
		const sprint: Demand = { ...walking, gait: 'run', speedMetresPerMinute: 200 };
		expect(pulseForecast([phase(60, walking), phase(60, sprint)], runner, options)).toEqual({
			kind: 'no-estimate',
			reason: 'over-reserve',
			phaseIndex: 1
		});
	});

	it('has no spread when everything is known and nothing moves', () => {
		const known = {
			resting: { bpm: 66, spreadBpm: 0 },
			maximum: { bpm: 180, spreadBpm: 0 },
			capacity: null
		};
		const still = phase(300, { kind: 'reserve', reserveFraction: 0.1 });
		const { points, mean: average } = forecastOf(pulseForecast([still], known, options));
		expect(points.map(({ spreadBpm }) => spreadBpm)).toEqual(points.map(() => 0));
		expect(average).toEqual({ bpm: expect.closeTo(77.4, 9), spreadBpm: 0 });
	});

	it('ends in the spread of a target when a fraction is held for long', () => {
		const long = phase(3600, { kind: 'reserve', reserveFraction: 0.6 });
		const { points } = forecastOf(pulseForecast([long], runner, options));
		const target = targetAtFraction(0.6, runner.resting, runner.maximum);
		expect(points.at(-1)!.bpm).toBeCloseTo(target.bpm, 9);
		expect(points.at(-1)!.spreadBpm).toBeCloseTo(target.spreadBpm, 9);
	});

	it('is the expected curve, peak and mean, point by point', () => {
		const steps = pulseSteps(outing, runner);
		if (steps.kind !== 'steps') throw new Error(steps.reason);
		const startBpm = targetAtFraction(0.1, runner.resting, runner.maximum).bpm;
		const forecast = forecastOf(pulseForecast(outing, runner, options));
		const curve = expectedCurve(steps.steps, startBpm, 30);
		expect(forecast.points.map(({ seconds }) => seconds)).toEqual(
			curve.map(({ seconds }) => seconds)
		);
		forecast.points.forEach(({ bpm }, at) => expect(bpm).toBeCloseTo(curve[at]!.bpm, 9));
		const peak = expectedPeak(steps.steps, startBpm);
		expect(forecast.peak.seconds).toBe(peak.seconds);
		expect(forecast.peak.bpm).toBeCloseTo(peak.bpm, 9);
		expect(forecast.mean.bpm).toBeCloseTo(expectedMean(steps.steps, startBpm), 9);
	});

	it('is wider the less is known', () => {
		const peakSpread = (change: Partial<RunnerPulse>) =>
			forecastOf(pulseForecast(outing, { ...runner, ...change }, options)).peak.spreadBpm;
		const usual = peakSpread({});
		expect(peakSpread({ maximum: { bpm: 180, spreadBpm: 3 } })).toBeLessThan(usual);
		expect(peakSpread({ resting: { bpm: 66, spreadBpm: 1 } })).toBeLessThan(usual);
		expect(peakSpread({ capacity: { ...runner.capacity, spread: 5.7 } })).toBeGreaterThan(usual);
	});
});

/** Seeded uniform numbers (mulberry32), so that the simulation is the same every time. */
function seeded(seed: number): () => number {
	let state = seed;
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
		mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
}

/** Many invented people drawn about the runner, each with a curve of their own. */
function simulated(people: number) {
	const uniform = seeded(20);
	const score = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
	// A time constant cannot be negative: log-normal with the published mean and spread.
	const timeConstant = (name: 'risingTauSeconds' | 'fallingTauSeconds') => {
		const share = kineticsSpread[name] / usualKinetics[name];
		const logSpread = Math.sqrt(Math.log(1 + share * share));
		return usualKinetics[name] * Math.exp(logSpread * score() - (logSpread * logSpread) / 2);
	};
	return Array.from({ length: people }, () => {
		const restingBpm = runner.resting.bpm + runner.resting.spreadBpm * score();
		const reserveBpm = runner.maximum.bpm + runner.maximum.spreadBpm * score() - restingBpm;
		const capacity = runner.capacity.mlPerKgPerMinute + runner.capacity.spread * score();
		const economy = 1 + UPTAKE_ERROR_FRACTION * score();
		const kinetics = {
			risingTauSeconds: timeConstant('risingTauSeconds'),
			fallingTauSeconds: timeConstant('fallingTauSeconds')
		};
		const steps = outing.map(({ durationSeconds, demand }) => {
			const fraction =
				demand.kind === 'reserve'
					? demand.reserveFraction
					: Math.min(1, (oxygenUptake(demand) * economy - 3.5) / (capacity - 3.5));
			return { durationSeconds, steadyBpm: restingBpm + fraction * reserveBpm };
		});
		const startBpm = restingBpm + options.startReserveFraction * reserveBpm;
		return {
			curve: expectedCurve(steps, startBpm, options.everySeconds, kinetics),
			peakBpm: expectedPeak(steps, startBpm, kinetics).bpm,
			meanBpm: expectedMean(steps, startBpm, kinetics)
		};
	});
}

describe('forecast beside a simulation of 4,000 invented people', () => {
	const people = simulated(4000);
	const forecast = forecastOf(pulseForecast(outing, runner, options));

	it('has a spread within 6 % of theirs at every point', () => {
		forecast.points.forEach(({ spreadBpm }, at) => {
			const theirs = standardDeviation(people.map(({ curve }) => curve[at]!.bpm));
			expect(Math.abs(spreadBpm / theirs - 1)).toBeLessThan(0.06);
		});
	});

	it('has a curve within 2.5 bpm of their mean', () => {
		forecast.points.forEach(({ bpm }, at) => {
			expect(Math.abs(bpm - mean(people.map(({ curve }) => curve[at]!.bpm)))).toBeLessThan(2.5);
		});
	});

	it('has a spread of peak and mean within 5 % of theirs', () => {
		const ofPeaks = standardDeviation(people.map(({ peakBpm }) => peakBpm));
		const ofMeans = standardDeviation(people.map(({ meanBpm }) => meanBpm));
		expect(Math.abs(forecast.peak.spreadBpm / ofPeaks - 1)).toBeLessThan(0.05);
		expect(Math.abs(forecast.mean.spreadBpm / ofMeans - 1)).toBeLessThan(0.05);
	});
});
