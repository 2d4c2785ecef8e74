import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { percentOfReserve } from '$lib/components/outing-editor/drawn.ts';
import { expectedSentences } from '$lib/components/outing-editor/expected-sentences.ts';
import type { Course } from '$lib/guidance/expected/course.ts';
import { expectedOuting, type Expected } from '$lib/guidance/expected/expected-outing.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { outingPicture } from '$words/outing-picture.ts';
import { ownPicture } from '$words/own-picture.ts';
import { anyCourse, courseWith } from '../guidance/expected/any-course.ts';
import { anyOuting } from '../outing/any-outing.ts';

// Our own rules, no source, where no other is named.

const outing = (...lengths: readonly number[]): Outing => ({
	name: 'Outing 7',
	parts: lengths.map((seconds, nth) =>
		plainPhase(nth % 2 === 0 ? 'steady-run' : 'recovery-walk', seconds)
	)
});

function of(course: Course, one: Outing): Expected {
	const expected = expectedOuting(course, one, 5);
	if (expected.kind !== 'expected') throw new Error(expected.kind);
	return expected;
}

const toCoach = (expected: Expected) =>
	expectedSentences(expected, percentOfReserve, outingPicture.said);

describe('what is said of a runner', () => {
	// Capacity 24: a run of 5.0 km/h takes 81.3 % of the reserve, a walk of 4.5 km/h 36.6 % (ACSM).
	// From 10 % it passes 62 % after 57.6 ln(0.713 / 0.193) = 75.3 s (Hunt 2015; computed).
	test('holds peak, mean, longest run, shortest recovery and the time by intensity', () => {
		const said = toCoach(of(courseWith(24), outing(50, 110))).join('\n');
		expect(said).toMatch(/^Highest: about 51 % of reserve at 0:50, give or take \d+\.$/m);
		expect(said).toMatch(/^On the average: about \d\d % of reserve, give or take \d+\.$/m);
		expect(said).toMatch(/^By intensity: very light \d+ s, light .*, moderate .*\.$/m);
		expect(said).toMatch(/stay inside their band: 1 min 15 s\.$/m);
		expect(said).toMatch(/^Shortest walk that brings them back down|^They are back down/m);
	});

	test('says none, never and no limit where it is so', () => {
		const weak = toCoach(of(courseWith(21), outing(600, 5, 50, 5))).join('\n');
		expect(weak).toContain(outingPicture.said.longest.none);
		const walkTooFast: Outing = {
			name: 'One',
			parts: [
				plainPhase('steady-run', 60),
				{ ...plainPhase('recovery-walk', 60), speedKmh: 7, inclinePercent: 2 }
			]
		};
		const never = toCoach(of(courseWith(26), walkTooFast)).join('\n');
		expect(never).toContain(outingPicture.said.recovery.never);
		const strong = toCoach(of(courseWith(50), outing(600, 110))).join('\n');
		expect(strong).toContain(outingPicture.said.longest['no-limit']);
	});

	test('says in shares to a coach what it says in beats to the runner', () => {
		const expected = of(courseWith(24), outing(50, 110));
		const own = expectedSentences(expected, { rest: 70, maximum: 180 }, ownPicture.said);
		// 0.8130 - 0.7130 exp(-50 / 57.6) is 51.37 % of a reserve of 110, over 70 that is 126.51.
		expect(own[0]).toMatch(/^Highest: about 127 beats a minute at 0:50/);
		expect(own[2]).toBe(toCoach(expected)[2]);
		expect(toCoach(expected).join(' ')).not.toMatch(/beats|bpm|capacity|mL/);
	});

	test('has times by intensity that add up to the outing', () => {
		fc.assert(
			fc.property(anyCourse, anyOuting, (course, any) => {
				const expected = expectedOuting(course, any, 60);
				fc.pre(expected.kind === 'expected');
				const line = toCoach(expected).find((said) => said.startsWith('By intensity')) ?? '';
				const lengths = [...line.matchAll(/(?:(\d+) min)?(?: ?(\d+) s)?(?=[,.])/g)];
				const seconds = lengths.reduce(
					(sum, [, minutes, rest]) => sum + Number(minutes ?? 0) * 60 + Number(rest ?? 0),
					0
				);
				const whole = expected.points.at(-1)!.seconds;
				// Each of five classes is rounded to a second.
				expect(Math.abs(seconds - whole)).toBeLessThanOrEqual(2.5);
			})
		);
	});
});
