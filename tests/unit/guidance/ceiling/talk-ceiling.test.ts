import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayShifts } from '$lib/guidance/ceiling/day-shift.ts';
import type { OutingTalk } from '$lib/guidance/ceiling/evidence.ts';
import { priorCeiling, priorGrid } from '$lib/guidance/ceiling/prior.ts';
import { talkCeiling } from '$lib/guidance/ceiling/talk-ceiling.ts';
import { jStat } from 'jstat';
import { maximum, prove, resting } from './invented-runners.ts';

const levels = ['comfortable', 'with-breaths', 'broke-off'] as const;
const told = (...answers: readonly [number, (typeof levels)[number]][]): OutingTalk => ({
	daysAgo: 0,
	answers: answers.map(([pulseBpm, talk]) => ({ pulseBpm, talk }))
});
const learn = (...evidence: readonly OutingTalk[]) => talkCeiling(resting, maximum, evidence);
const anyOuting: fc.Arbitrary<OutingTalk> = fc.record({
	daysAgo: fc.integer({ min: 0, max: 200 }),
	answers: fc.array(
		fc.record({
			pulseBpm: fc.integer({ min: 80, max: 185 }),
			talk: fc.constantFrom(...levels)
		}),
		{ minLength: 1, maxLength: 3 }
	)
});

describe('a talk ceiling before the first answer', () => {
	// Foster 2009: the last comfortable stage at 79 ± 9 % of maximum, 151 ± 20 beats a minute, in 14
	// sedentary adults. With a resting pulse of 70 and that study's maximum of 151 / 0.79 = 191.
	it('lies where sedentary adults last talked comfortably, within the study’s own spread', () => {
		const { bpm, spreadBpm } = priorCeiling(
			{ bpm: 70, spreadBpm: 3 },
			{ bpm: 191, spreadBpm: 11.4 }
		);
		expect(Math.abs(bpm - 151)).toBeLessThan(5);
		expect(Math.abs(spreadBpm - 20)).toBeLessThan(2);
	});

	it('is what the grid comes to when nothing was said', () => {
		const prior = priorCeiling(resting, maximum);
		const learned = learn();
		expect(Math.abs(learned.bpm - prior.bpm)).toBeLessThan(0.3);
		expect(Math.abs(learned.spreadBpm - prior.spreadBpm)).toBeLessThan(0.3);
		// Of a normal distribution, four in five lie within 1.2816 spreads (any table of it).
		expect(learned.highBpm - learned.lowBpm).toBeCloseTo(2 * 1.2816 * prior.spreadBpm, 0);
	});

	it('requires a reserve', () => {
		expect(() => priorGrid({ bpm: 80, spreadBpm: 3 }, { bpm: 80, spreadBpm: 3 })).toThrow(
			'priorGrid requires a reserve'
		);
	});
});

describe('the shift of a day', () => {
	// A rule of seven points is exact up to the thirteenth power; moments of a normal distribution.
	it('has the moments of a normal distribution with a spread of 5', () => {
		const moment = (power: number) =>
			dayShifts.reduce((sum, { bpm, share }) => sum + share * bpm ** power, 0);
		expect(moment(0)).toBeCloseTo(1, 10);
		expect(moment(1)).toBeCloseTo(0, 10);
		expect(moment(2)).toBeCloseTo(25, 8);
		expect(moment(4)).toBeCloseTo(3 * 5 ** 4, 6);
		expect(moment(6)).toBeCloseTo(15 * 5 ** 6, 4);
	});
});

describe('a talk ceiling that is learned', () => {
	const cdf = (z: number): number => jStat.normal.cdf(z, 0, 1);
	const pdf = (z: number): number => jStat.normal.pdf(z, 0, 1);

	/** The same model by plain sums on other points, with the normal distribution of jstat. */
	function bySums(evidence: readonly OutingTalk[]) {
		const prior = priorCeiling(resting, maximum);
		let [total, first, second] = [0, 0, 0];
		for (const z of steps(-4, 4, 0.1)) {
			const c = prior.bpm + z * prior.spreadBpm;
			const likely = pdf(z) * likelyAt(evidence, c);
			total += likely;
			first += likely * c;
			second += likely * c * c;
		}
		const mean = first / total;
		return { bpm: mean, spreadBpm: Math.sqrt(second / total - mean * mean) };
	}

	/** Of one ceiling, over all gaps and scatters. */
	function likelyAt(evidence: readonly OutingTalk[], c: number): number {
		let sum = 0;
		for (const g of steps(2, 60, 3)) {
			for (const s of steps(0, 5, 1).map((k) => 3 * 5 ** (k / 5))) {
				const each = evidence.map(({ answers }) => ofOuting(answers, c, g, s));
				sum += each.reduce((product, one) => product * one, pdf((g - 20) / 10));
			}
		}
		return sum;
	}

	/** Of the answers of one outing, over all shifts of a day. */
	function ofOuting(answers: OutingTalk['answers'], c: number, g: number, s: number): number {
		let sum = 0;
		for (const d of steps(-20, 20, 1)) {
			sum += answers.reduce(
				(product, { pulseBpm: h, talk }) => {
					const fine = cdf((c + d - h) / s);
					const over = cdf((h - c - d - g) / s);
					const by = { comfortable: fine, 'broke-off': over, 'with-breaths': 1 - fine - over };
					return product * (0.97 * Math.max(0, by[talk]) + 0.01);
				},
				pdf(d / 5) / 5
			);
		}
		return sum;
	}

	const steps = (from: number, to: number, by: number) =>
		Array.from({ length: Math.floor((to - from) / by + 1e-9) + 1 }, (_, nth) => from + nth * by);

	it('is what plain sums over the same model give', () => {
		for (const evidence of [
			[told([140, 'comfortable'])],
			[told([150, 'broke-off'], [128, 'comfortable']), told([139, 'with-breaths'])]
		]) {
			const learned = learn(...evidence);
			const reference = bySums(evidence);
			expect(Math.abs(learned.bpm - reference.bpm)).toBeLessThan(0.25);
			expect(Math.abs(learned.spreadBpm - reference.spreadBpm)).toBeLessThan(0.25);
		}
	});

	it('does not depend on the order of outings or of answers', () => {
		fc.assert(
			fc.property(fc.array(anyOuting, { minLength: 2, maxLength: 4 }), (outings) => {
				const turned = outings
					.toReversed()
					.map(({ daysAgo, answers }) => ({ daysAgo, answers: answers.toReversed() }));
				expect(learn(...turned)).toEqual(learn(...outings));
			}),
			{ numRuns: 15 }
		);
	});

	it('rises with comfortable talk, falls with breaths early, and more with talk that broke off', () => {
		const at = (talk: (typeof levels)[number]) => learn(told([144, talk])).bpm;
		expect(at('comfortable')).toBeGreaterThan(learn().bpm);
		expect(at('with-breaths')).toBeLessThan(learn().bpm);
		expect(at('broke-off')).toBeLessThan(at('with-breaths'));
	});

	it('has an interval that holds the mean, and a careful edge inside it', () => {
		fc.assert(
			fc.property(fc.array(anyOuting, { maxLength: 4 }), (outings) => {
				const { bpm, lowBpm, highBpm, carefulBpm } = learn(...outings);
				expect(lowBpm).toBeLessThan(carefulBpm);
				expect(carefulBpm).toBeLessThan(highBpm);
				expect(bpm).toBeGreaterThan(lowBpm);
				expect(bpm).toBeLessThan(highBpm);
			}),
			{ numRuns: 15 }
		);
	});

	it('narrows as answers that fit each other come in', () => {
		const outing = told([132, 'comfortable'], [146, 'with-breaths']);
		const spreads = [0, 2, 4, 8].map(
			(n) => learn(...Array.from({ length: n }, () => outing)).spreadBpm
		);
		expect(spreads.toSorted((one, other) => other - one)).toEqual(spreads);
		expect(spreads.at(-1)).toBeLessThan((spreads[0] ?? 0) / 2);
	});

	it('forgets: an answer of long ago says less than the same of today, and in the end nothing', () => {
		const old = (daysAgo: number) => learn({ ...told([160, 'comfortable']), daysAgo }).bpm;
		expect(old(0)).toBeGreaterThan(old(56));
		expect(old(56)).toBeGreaterThan(old(112));
		expect(old(5000)).toBeCloseTo(learn().bpm, 5);
	});

	it('takes one slip for a slip', () => {
		const fits = Array.from({ length: 6 }, () => told([132, 'comfortable'], [150, 'with-breaths']));
		const withSlip = learn(...fits, told([110, 'broke-off']));
		expect(Math.abs(withSlip.bpm - learn(...fits).bpm)).toBeLessThan(6);
	});

	// Twelve answers over six outings, as `npm run bench -- proof` does for two thousand. Invented.
	it('is right about invented runners: half the error, and an interval that holds what it says', () => {
		const proof = prove(talkCeiling, 80, { daysApart: 0 });
		expect(proof.errorBpm).toBeLessThan(proof.priorErrorBpm / 2);
		// Three standard errors of a share of 0.8 in 80.
		expect(Math.abs(proof.held - 0.8)).toBeLessThan(0.135);
	}, 60_000);
});
