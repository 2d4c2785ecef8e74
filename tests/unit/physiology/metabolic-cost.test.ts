import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import {
	REST_UPTAKE,
	gradeForUptake,
	metsOf,
	oxygenUptake,
	speedForUptake,
	uptakePerSpeed,
	type Gait
} from '$lib/physiology/metabolic-cost.ts';

const gaits = fc.constantFrom<Gait>('walk', 'run');
const speeds = fc.double({ min: 0, max: 350, noNaN: true });
const grades = fc.double({ min: 0, max: 0.16, noNaN: true });

describe('uptake of walking and running', () => {
	it('is that of rest when nobody moves, on any grade', () => {
		for (const grade of [0, 0.05, 0.16]) {
			expect(oxygenUptake({ gait: 'walk', speedMetresPerMinute: 0, grade })).toBe(REST_UPTAKE);
			expect(oxygenUptake({ gait: 'run', speedMetresPerMinute: 0, grade })).toBe(REST_UPTAKE);
		}
	});

	it('refuses a speed below zero and one that is not a number', () => {
		for (const speedMetresPerMinute of [-1, NaN, Infinity]) {
			expect(() => oxygenUptake({ gait: 'walk', speedMetresPerMinute, grade: 0 })).toThrow(
				RangeError
			);
		}
	});

	it('does not know downhill, nor steeper than its tables', () => {
		for (const grade of [-0.01, 0.161, 2, NaN]) {
			expect(() => uptakePerSpeed('run', grade)).toThrow(RangeError);
		}
	});

	// Between 80 and 134 m/min the wrong equation would be off by three quarters.
	it('is chosen by gait, not by speed: running 6.4 km/h costs 75 % more than walking it', () => {
		const walked = oxygenUptake({ gait: 'walk', speedMetresPerMinute: 107.2, grade: 0 });
		const run = oxygenUptake({ gait: 'run', speedMetresPerMinute: 107.2, grade: 0 });
		expect(run / walked).toBeCloseTo(1.754, 3);
	});

	it('rises with speed and with grade', () => {
		fc.assert(
			fc.property(gaits, speeds, grades, (gait, speedMetresPerMinute, grade) => {
				const here = oxygenUptake({ gait, speedMetresPerMinute, grade });
				const faster = { gait, speedMetresPerMinute: speedMetresPerMinute + 1, grade };
				expect(oxygenUptake(faster)).toBeGreaterThan(here);
				const level = oxygenUptake({ gait, speedMetresPerMinute, grade: 0 });
				expect(here).toBeGreaterThanOrEqual(level);
			})
		);
	});

	it('costs a walker twice the extra of a runner for the same hill', () => {
		const extra = (gait: Gait) => uptakePerSpeed(gait, 0.1) - uptakePerSpeed(gait, 0);
		expect(extra('walk')).toBeCloseTo(2 * extra('run'), 12);
	});

	it('agrees with a general library on what 5 mph is', () => {
		const speedMetresPerMinute = Qty('5 mph').to('m/min').scalar;
		// Five miles an hour, run on the level, is 30.3 by the equation's own rounding of 26.8 m/min.
		const uptake = oxygenUptake({ gait: 'run', speedMetresPerMinute, grade: 0 });
		expect(uptake).toBeCloseTo(0.2 * 134.112 + 3.5, 9);
		expect(uptake).toBeCloseTo(30.3, 1);
	});
});

describe('speed for an uptake', () => {
	it('is zero at rest', () => {
		expect(speedForUptake({ gait: 'run', uptake: REST_UPTAKE, grade: 0.02 })).toBe(0);
	});

	it('refuses less than rest', () => {
		expect(() => speedForUptake({ gait: 'run', uptake: 3.4, grade: 0 })).toThrow(RangeError);
		expect(() => speedForUptake({ gait: 'run', uptake: NaN, grade: 0 })).toThrow(RangeError);
	});

	it('leads back to the speed it came from, walking and running', () => {
		fc.assert(
			fc.property(gaits, speeds, grades, (gait, speedMetresPerMinute, grade) => {
				const uptake = oxygenUptake({ gait, speedMetresPerMinute, grade });
				expect(speedForUptake({ gait, uptake, grade })).toBeCloseTo(speedMetresPerMinute, 9);
			})
		);
	});
});

describe('grade for an uptake', () => {
	it('refuses someone who stands still', () => {
		expect(() => gradeForUptake({ gait: 'walk', uptake: 10, speedMetresPerMinute: 0 })).toThrow(
			RangeError
		);
	});

	it('is below zero where even the level takes more', () => {
		expect(gradeForUptake({ gait: 'run', uptake: 10, speedMetresPerMinute: 100 })).toBeLessThan(0);
	});

	it('leads back to the grade it came from', () => {
		const walkingSpeeds = fc.double({ min: 20, max: 350, noNaN: true });
		fc.assert(
			fc.property(gaits, walkingSpeeds, grades, (gait, speedMetresPerMinute, grade) => {
				const uptake = oxygenUptake({ gait, speedMetresPerMinute, grade });
				expect(gradeForUptake({ gait, uptake, speedMetresPerMinute })).toBeCloseTo(grade, 9);
			})
		);
	});
});

describe('METs', () => {
	it('are one at rest', () => {
		expect(metsOf(REST_UPTAKE)).toBe(1);
	});
});
