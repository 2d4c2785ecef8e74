import { daysSince, hurt, isLongAgo, mayRaise, type Asked } from './asked.ts';
import type { Fact } from './fact.ts';
import {
	aBitMuch,
	effortFact,
	isEasy,
	shortfalls,
	talkFact,
	timesItWentWell,
	tooMuch
} from './how-it-went.ts';

export const nextAdvices = [
	'questions',
	'walk-only',
	'ease-back',
	'longer-recovery',
	'next-step',
	'notch-up',
	'step-back',
	'same'
] as const;
export type NextAdvice = (typeof nextAdvices)[number];

interface Row {
	readonly advice: NextAdvice;
	readonly when: (asked: Asked) => boolean;
	/** The first two of them are said. */
	readonly because: (asked: Asked) => readonly Fact[];
}

/** So often an outing goes well before the next step. Our own rule, no source. */
export const TIMES_OF_A_STEP = 3;

/** The first row that fits decides, and the last one always fits. */
export const rows: readonly Row[] = [
	{
		advice: 'questions',
		when: ({ seen, rules }) => seen.feltWrong && rules.signStands,
		because: ({ seen }) => [{ kind: 'felt-wrong' }, talkFact(seen)]
	},
	{
		advice: 'walk-only',
		when: ({ rules }) => rules.painStands,
		because: ({ seen, newest }) => [{ kind: hurt(newest) ? 'pain' : 'pain-stands' }, talkFact(seen)]
	},
	{
		advice: 'ease-back',
		when: ({ seen }) => tooMuch(seen).length > 0,
		because: ({ seen }) => [...tooMuch(seen), talkFact(seen), effortFact(seen)]
	},
	{
		advice: 'longer-recovery',
		when: ({ seen }) => aBitMuch(seen).length > 0,
		because: ({ seen }) => [...aBitMuch(seen), talkFact(seen), effortFact(seen)]
	},
	{
		advice: 'next-step',
		when: (asked) => mayRaise(asked) && timesItWentWell(asked) >= TIMES_OF_A_STEP,
		because: (asked) => [{ kind: 'times', times: timesItWentWell(asked) }, talkFact(asked.seen)]
	},
	{
		advice: 'notch-up',
		when: (asked) => mayRaise(asked) && isEasy(asked.seen),
		because: ({ seen }) => [talkFact(seen), effortFact(seen)]
	},
	{
		advice: 'step-back',
		when: (asked) => isLongAgo(asked) || asked.seen.feltWrong,
		because: (asked) => [
			isLongAgo(asked) ? { kind: 'gap', days: daysSince(asked) } : { kind: 'felt-wrong' },
			talkFact(asked.seen)
		]
	},
	{ advice: 'same', when: () => true, because: shortfalls }
];
