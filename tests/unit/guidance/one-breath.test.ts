import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { breathAnswer } from '$lib/guidance/one-breath.ts';

const counts = fc.integer({ min: 3, max: 80 });

// Under 25 at rest 40 to 50 %, others 30 to 40 %, moderate to vigorous effort (Loose 2012, abstract).
describe('a count on one breath while moving', () => {
	test.each([
		[20, 11, 'easier'],
		[20, 10, 'there'],
		[20, 8, 'there'],
		[20, 7, 'harder'],
		[30, 13, 'easier'],
		[30, 12, 'there'],
		[30, 9, 'there'],
		[30, 8, 'harder'],
		[30, 0, 'harder']
	] as const)('%i at rest and %i while moving is %s', (rest, moving, effort) => {
		expect(breathAnswer(moving, rest, false).effort).toBe(effort);
	});

	test('whoever stays comfortable is told to ease off where others are', () => {
		fc.assert(
			fc.property(counts, counts, (rest, moving) => {
				const free = breathAnswer(moving, rest, false);
				const careful = breathAnswer(moving, rest, true);
				if (free.effort === 'harder') expect(careful.effort).toBe('harder');
				if (careful.effort !== 'harder') expect(free.effort).toBe(careful.effort);
				expect(careful.aim.low).toBeGreaterThanOrEqual(free.aim.low);
				expect(careful.aim.high).toBeNull();
			})
		);
	});

	test('counting less is never easier', () => {
		const order = ['harder', 'there', 'easier'];
		fc.assert(
			fc.property(counts, counts, fc.boolean(), (rest, moving, careful) => {
				const rank = (counted: number) =>
					order.indexOf(breathAnswer(counted, rest, careful).effort);
				expect(rank(moving - 1)).toBeLessThanOrEqual(rank(moving));
			})
		);
	});
});
