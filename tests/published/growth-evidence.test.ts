import { describe, expect, it } from 'vitest';
import { growthEvidence } from '../../src/lib/physiology/growth-evidence.ts';
import { WEEKLY_GROWTH } from '../../src/lib/outing/programme/programme-limits.ts';
import { sources } from '../../src/lib/physiology/sources.ts';
import { programme } from '../../src/lib/words/en/programme.ts';

/*
 * What a page says of growing slowly, against what the papers print (their abstracts, seen): Nielsen
 * 2014, J Orthop Sports Phys Ther 44(10):739-747; Buist 2008, Am J Sports Med 36(1):33-39.
 */
describe('what is known about growing slowly', () => {
	const { fastGrowth, tenPercent } = growthEvidence;

	it('874 new runners, 202 injured; over 30 % in two weeks 1.59, 0.96 to 2.66 (Nielsen 2014, seen)', () => {
		expect(fastGrowth).toMatchObject({ runners: 874, injured: 202, overPercentInTwoWeeks: 30 });
		expect([fastGrowth.low, fastGrowth.hazardRatio, fastGrowth.high]).toEqual([0.96, 1.59, 2.66]);
		const said = programme.evidence.fastGrowth(fastGrowth);
		for (const figure of ['874', '30 %', '1.59', '0.96', '2.66']) expect(said).toContain(figure);
	});

	it('532 new runners, injured 20.8 and 20.3 in a hundred (Buist 2008, seen)', () => {
		expect(tenPercent).toMatchObject({
			runners: 532,
			injuredPercent: 20.8,
			injuredPercentUsual: 20.3
		});
		const said = programme.evidence.tenPercent(tenPercent);
		for (const figure of ['532', '20.8', '20.3']) expect(said).toContain(figure);
	});

	it('two weeks of the growth that a programme allows stay under what was looked at', () => {
		expect(WEEKLY_GROWTH ** 2 - 1).toBeLessThan(fastGrowth.overPercentInTwoWeeks / 100);
	});

	it('calls them seen as their sources are', () => {
		for (const { source, seen } of Object.values(growthEvidence)) {
			expect(sources[source].seen).toBe(seen);
		}
	});
});
