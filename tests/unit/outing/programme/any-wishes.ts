import fc from 'fast-check';
import { generateProgramme } from '$lib/outing/programme/generate.ts';
import { programmeLimits } from '$lib/outing/programme/programme-limits.ts';
import type { ProgrammeWeek } from '$lib/outing/programme/programme.ts';
import {
	unknownPulse,
	type ProgrammeGoal,
	type ProgrammePulse,
	type ProgrammeWishes
} from '$lib/outing/programme/wishes.ts';

const whole = ({ low, high }: { low: number; high: number }) => fc.integer({ min: low, max: high });
const {
	weeks,
	outingsAWeek,
	firstRunSeconds,
	goalMinutes,
	goalKilometres,
	goalKmh,
	goalRunSeconds
} = programmeLimits;

export const anyGoal: fc.Arbitrary<ProgrammeGoal> = fc.oneof(
	fc.record({ kind: fc.constant('minutes' as const), minutes: whole(goalMinutes) }),
	fc.record({
		kind: fc.constant('distance' as const),
		kilometres: fc.double({ min: goalKilometres.low, max: goalKilometres.high, noNaN: true }),
		speedKmh: fc.double({ min: goalKmh.low, max: goalKmh.high, noNaN: true })
	}),
	fc.record({
		kind: fc.constant('walk-and-run' as const),
		longestRunSeconds: whole(goalRunSeconds)
	})
);

const anyPulse: fc.Arbitrary<ProgrammePulse> = fc.record({
	runShare: fc.double({ min: 0.4, max: 1, noNaN: true }),
	walkShare: fc.double({ min: 0.2, max: 0.7, noNaN: true }),
	staysInBand: fc.constantFrom('yes' as const, 'no' as const, 'not-known' as const)
});

/** All that can be wished for. First runs are mostly short, as most are. */
export const anyWishes: fc.Arbitrary<ProgrammeWishes> = fc.record({
	weeks: whole(weeks),
	outingsAWeek: whole(outingsAWeek),
	firstRunSeconds: fc.oneof(
		{ weight: 4, arbitrary: fc.integer({ min: firstRunSeconds.low, max: 180 }) },
		{ weight: 1, arbitrary: whole(firstRunSeconds) }
	),
	goal: anyGoal,
	settlingIn: fc.boolean(),
	pulse: anyPulse
});

export const plainWishes: ProgrammeWishes = {
	weeks: 16,
	outingsAWeek: 3,
	firstRunSeconds: 50,
	goal: { kind: 'minutes', minutes: 30 },
	settlingIn: true,
	pulse: unknownPulse
};

export const named = (number: number, longestRunSeconds: number) =>
	`Outing ${number}, ${longestRunSeconds} s`;

export function weeksOf(wishes: ProgrammeWishes): readonly ProgrammeWeek[] {
	const answer = generateProgramme(wishes, named);
	if (answer.kind !== 'programme') throw new Error(JSON.stringify(answer));
	return answer.weeks;
}

/** Every programme that there can be, with what was wished. */
export const anyProgramme = anyWishes
	.map((wishes) => ({ wishes, answer: generateProgramme(wishes, named) }))
	.filter(({ answer }) => answer.kind === 'programme')
	.map(({ wishes }) => ({ wishes, weeks: weeksOf(wishes) }));
