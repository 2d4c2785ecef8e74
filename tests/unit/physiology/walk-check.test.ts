import fc from 'fast-check';
import { linearRegression, linearRegressionLine } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { oxygenUptake } from '$lib/physiology/metabolic-cost.ts';
import { walkCheck, type WalkStage } from '$lib/physiology/walk-check.ts';

const maximum = { bpm: 180, spreadBpm: 11.4 };
const stage = (speedMetresPerMinute: number, pulseBpm: number, grade = 0): WalkStage => ({
	speedMetresPerMinute,
	grade,
	pulseBpm
});
const good = [stage(80.4, 98), stage(93.8, 106), stage(107.2, 115)];

const codesOf = (stages: readonly WalkStage[]) => {
	const answer = walkCheck(stages, maximum);
	return answer.kind === 'refused'
		? answer.reasons.map(({ code, field }) => `${code} ${field}`)
		: [];
};

describe('walk check', () => {
	it('needs three stages', () => {
		expect(codesOf([])).toEqual(['not-enough-stages stages']);
		expect(codesOf(good.slice(0, 2))).toEqual(['not-enough-stages stages']);
	});

	it('names each mistyped field by stage', () => {
		expect(codesOf([stage(9, 98), stage(93.8, 1060), stage(107.2, 115, 2)])).toEqual([
			'out-of-limits stages.0.speedMetresPerMinute',
			'out-of-limits stages.1.pulseBpm',
			'out-of-limits stages.2.grade'
		]);
		expect(codesOf([stage(80, NaN), ...good.slice(1)])).toEqual([
			'out-of-limits stages.0.pulseBpm'
		]);
	});

	it('refuses a pulse at or above the maximum: one of the two is wrong', () => {
		expect(codesOf([...good.slice(0, 2), stage(107.2, 180)])).toEqual([
			'pulse-above-maximum stages.2.pulseBpm'
		]);
	});

	it('refuses a pulse that does not rise with effort', () => {
		expect(codesOf([stage(80.4, 115), stage(93.8, 106), stage(107.2, 98)])).toEqual([
			'pulse-does-not-rise stages'
		]);
		expect(codesOf([stage(80.4, 98), stage(80.4, 106), stage(80.4, 115)])).toEqual([
			'pulse-does-not-rise stages'
		]);
	});

	it('refuses a pulse that rises by less than its own scatter is worth', () => {
		expect(codesOf([stage(80.4, 98), stage(93.8, 102), stage(107.2, 107)])).toEqual([
			'pulse-rises-too-little stages'
		]);
		expect(codesOf([stage(80.4, 98), stage(93.8, 98), stage(107.2, 98)])).toEqual([
			'pulse-rises-too-little stages'
		]);
	});

	it('refuses a line that is less sure than four questions', () => {
		expect(codesOf([stage(80.4, 98), stage(93.8, 114), stage(107.2, 108)])).toEqual([
			'too-unsure stages'
		]);
	});

	it('does not mind the order of the stages', () => {
		expect(walkCheck([good[2]!, good[0]!, good[1]!], maximum)).toEqual(walkCheck(good, maximum));
	});

	it('carries the line of a general statistics library to the maximum', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 85, max: 105 }),
				fc.integer({ min: 8, max: 20 }),
				fc.integer({ min: 8, max: 20 }),
				fc.double({ min: 0, max: 0.04, noNaN: true }),
				(first, rise, nextRise, grade) => {
					const stages = [
						stage(75, first),
						stage(90, first + rise),
						stage(100, first + rise + nextRise, grade)
					];
					const answer = walkCheck(stages, maximum);
					if (answer.kind === 'refused') return;
					const pairs = stages.map(({ pulseBpm, ...effort }) => [
						pulseBpm,
						oxygenUptake({ gait: 'walk', ...effort })
					]);
					const expected = linearRegressionLine(linearRegression(pairs))(180);
					expect(answer.capacity.mlPerKgPerMinute).toBeCloseTo(expected, 6);
				}
			)
		);
	});

	it('is less sure with an unsure maximum, and the line never counts as perfect', () => {
		const spreadFor = (spreadBpm: number, stages = good) => {
			const answer = walkCheck(stages, { bpm: 180, spreadBpm });
			return answer.kind === 'capacity' ? answer.capacity.spread : NaN;
		};
		expect(spreadFor(11.4)).toBeGreaterThan(spreadFor(3));
		// Three points exactly on a line: 2.27 bpm of scatter is assumed nevertheless.
		const lucky = [stage(80, 100), stage(90, 110), stage(100, 120)];
		const fromLine = 0.1 * 2.27 * Math.sqrt(1 / 3 + (180 - 110) ** 2 / 200);
		expect(spreadFor(0, lucky)).toBeCloseTo(fromLine, 9);
		expect(spreadFor(11.4, lucky)).toBeCloseTo(Math.hypot(fromLine, 1.14), 9);
	});

	it('has a spread of 10 to 20 % for a usual check, as textbooks say of such tests', () => {
		const answer = walkCheck(good, maximum);
		if (answer.kind === 'refused') throw new Error('refused');
		const share = answer.capacity.spread / answer.capacity.mlPerKgPerMinute;
		expect(share).toBeGreaterThan(0.1);
		expect(share).toBeLessThan(0.2);
	});
});
