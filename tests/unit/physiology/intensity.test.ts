import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { talkLevels } from '../../../src/lib/physiology/effort-scale.ts';
import {
	uptakeCutPointsByCapacity,
	uptakePercentAt
} from '../../../src/lib/physiology/intensity-by-capacity.ts';
import {
	axes,
	intensities,
	intensityAmong,
	intensityOf,
	intensityRange,
	usualTalkLevel,
	type IntensityAxis
} from '../../../src/lib/physiology/intensity.ts';
import { intensityOfMetsAtAge, metsByAge } from '../../../src/lib/physiology/mets-by-age.ts';
import { roundHalfUp } from '../../../src/lib/physiology/units.ts';

const axisNames = Object.keys(axes) as IntensityAxis[];
const axis = fc.constantFrom(...axisNames);

describe('classes of intensity', () => {
	it('cover every number once, and the look-up agrees with the ranges', () => {
		const anything = fc.double({ noNaN: true, min: -200, max: 300 });
		fc.assert(
			fc.property(axis, anything, (name, number) => {
				const value = Number(number.toPrecision(12));
				const holding = intensities.filter((intensity) => {
					const { from, below } = intensityRange(name, intensity);
					return value >= (from ?? -Infinity) && value < (below ?? Infinity);
				});
				expect(holding).toEqual([intensityOf(name, value)]);
			}),
			{ numRuns: 500 }
		);
	});

	it.each(axisNames)('on %s: a cut point belongs to the class above it', (name) => {
		axes[name].cutPoints.forEach((cutPoint, place) => {
			expect(intensityOf(name, cutPoint)).toBe(intensities[place + 1]);
			expect(intensityOf(name, cutPoint - 0.001)).toBe(intensities[place]);
		});
	});

	it.each(axisNames)('on %s: cut points rise', (name) => {
		const { cutPoints } = axes[name];
		expect([...cutPoints].sort((a, b) => a - b)).toEqual([...cutPoints]);
		expect(new Set(cutPoints).size).toBe(4);
	});

	it('join without a gap and are open at both ends', () => {
		for (const name of axisNames) {
			const ranges = intensities.map((intensity) => intensityRange(name, intensity));
			expect(ranges[0]?.from).toBeNull();
			expect(ranges.at(-1)?.below).toBeNull();
			ranges.slice(1).forEach((range, place) => expect(range.from).toBe(ranges[place]?.below));
		}
	});

	it('are not moved by binary noise', () => {
		expect(0.57 * 100).toBeLessThan(57);
		expect(intensityOf('maximumPercent', 0.57 * 100)).toBe('light');
	});

	it('end in the gentlest and the hardest', () => {
		expect(intensityOf('reservePercent', -Infinity)).toBe('very-light');
		expect(intensityOf('reservePercent', Infinity)).toBe('near-maximal');
	});

	it('have nothing to say about what is not a number', () => {
		expect(() => intensityOf('reservePercent', NaN)).toThrow('requires a number');
	});

	it('may differ between axes for one person at one pulse', () => {
		// Rest 70, maximum 180, pulse 137: 60.9 % of reserve, 76.1 % of maximum.
		expect(intensityOf('reservePercent', (100 * (137 - 70)) / 110)).toBe('vigorous');
		expect(intensityOf('maximumPercent', (100 * 137) / 180)).toBe('moderate');
	});

	it('never make talking easier as they rise', () => {
		const ranks = intensities.map((intensity) => talkLevels.indexOf(usualTalkLevel[intensity]));
		expect([...ranks].sort((a, b) => a - b)).toEqual(ranks);
	});
});

describe('per cent of the highest uptake', () => {
	it.each(uptakeCutPointsByCapacity)(
		'at $capacityMets METs is printed as reckoned',
		({ capacityMets, cutPoints }) => {
			const reckoned = axes.reservePercent.cutPoints.map((percent) =>
				roundHalfUp(uptakePercentAt(percent, capacityMets))
			);
			expect(reckoned).toEqual([...cutPoints]);
		}
	);

	it('in the table of classes is that of ten METs', () => {
		expect(axes.uptakePercent.cutPoints).toEqual(uptakeCutPointsByCapacity[1]?.cutPoints);
	});

	it('lies above per cent of reserve, the more so the less fit, and meets it at 100', () => {
		const percent = fc.double({ min: 0, max: 99, noNaN: true });
		const mets = fc.double({ min: 2, max: 24, noNaN: true });
		fc.assert(
			fc.property(percent, mets, (reserve, capacity) => {
				expect(uptakePercentAt(reserve, capacity)).toBeGreaterThan(reserve);
				expect(uptakePercentAt(reserve, capacity + 1)).toBeLessThan(
					uptakePercentAt(reserve, capacity)
				);
				expect(uptakePercentAt(100, capacity)).toBeCloseTo(100, 9);
			})
		);
	});

	it('has no meaning for someone who cannot do more than rest', () => {
		expect(() => uptakePercentAt(50, 1)).toThrow('uptakePercentAt requires');
		expect(() => uptakePercentAt(101, 10)).toThrow('uptakePercentAt requires');
		expect(() => uptakePercentAt(50, NaN)).toThrow('uptakePercentAt requires');
	});
});

describe('METs by age', () => {
	it.each([
		[0, 12],
		[1, 10],
		[2, 8]
	])('of group %d are 20, 40, 60 and 85 %% of %d METs', (place, capacity) => {
		const reckoned = [0.2, 0.4, 0.6, 0.85].map((share) => roundHalfUp(share * capacity, 1));
		expect(metsByAge[place]?.cutPoints).toEqual(reckoned);
	});

	it('join from group to group', () => {
		expect(metsByAge.map(({ fromYears }) => fromYears)).toEqual([18, 40, 65]);
		expect(metsByAge.map(({ belowYears }) => belowYears)).toEqual([40, 65, null]);
	});

	it('make the same load harder with age', () => {
		const ages = fc.integer({ min: 18, max: 90 });
		fc.assert(
			fc.property(ages, ages, fc.double({ min: 0, max: 14, noNaN: true }), (one, other, mets) => {
				const rank = (age: number) => intensities.indexOf(intensityOfMetsAtAge(age, mets));
				expect(rank(Math.max(one, other))).toBeGreaterThanOrEqual(rank(Math.min(one, other)));
			})
		);
	});

	it('are for adults', () => {
		expect(() => intensityOfMetsAtAge(17, 5)).toThrow('intensityOfMetsAtAge requires');
		expect(() => intensityOfMetsAtAge(NaN, 5)).toThrow('intensityOfMetsAtAge requires');
	});

	it('answer with the same look-up', () => {
		expect(intensityOfMetsAtAge(70, 5)).toBe(intensityAmong(metsByAge[2].cutPoints, 5));
	});
});
