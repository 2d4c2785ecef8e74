import fc from 'fast-check';
import { expect, test } from 'vitest';
import { effortOff, effortOfTalk, gettingCloser } from '$lib/guidance/guess.ts';
import { efforts, talkLevels } from '$lib/physiology/effort-scale.ts';

test('every number of the scale goes with some way of talking, and harder talk with no lower one', () => {
	for (const effort of efforts) {
		expect(talkLevels.some((talk) => effortOff(effort, talk) === 0)).toBe(true);
	}
	for (const [at, talk] of talkLevels.slice(1).entries()) {
		const before = effortOfTalk[talkLevels[at] ?? 'comfortable'];
		expect(effortOfTalk[talk].low).toBeGreaterThan(before.low);
		expect(effortOfTalk[talk].high).toBeGreaterThan(before.high);
	}
});

test('a guess that is one further from what talk said is one further off', () => {
	expect(efforts.map((effort) => effortOff(effort, 'comfortable'))).toEqual([
		...Array<number>(7).fill(0),
		...[1, 2, 3, 4]
	]);
	expect(effortOff(0, 'broke-off')).toBe(-7);
	expect(effortOff(6, 'with-breaths')).toBe(0);
});

test('getting closer compares three with three, and says nothing before', () => {
	expect(gettingCloser([])).toBeNull();
	expect(gettingCloser([1, 2, 3, 4, 5])).toBeNull();
	expect(gettingCloser([10, -20, 30, 1, -2, 3])).toEqual({ first: 20, last: 2 });
});

test('guesses between the first and the last three change nothing, nor does a sign', () => {
	const off = fc.array(fc.integer({ min: -60, max: 60 }), { minLength: 6, maxLength: 20 });
	fc.assert(
		fc.property(off, fc.integer({ min: -60, max: 60 }), (all, extra) => {
			const longer = [...all.slice(0, 3), extra, ...all.slice(3)];
			expect(gettingCloser(longer)).toEqual(gettingCloser(all));
			expect(gettingCloser(all.map((one) => -one))).toEqual(gettingCloser(all));
		})
	);
});
