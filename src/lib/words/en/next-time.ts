import type { Hold } from '$lib/guidance/next-time/asked.ts';
import type { Fact } from '$lib/guidance/next-time/fact.ts';
import type { TalkHeard } from '$lib/guidance/next-time/outing-facts.ts';
import { wholePercent } from './numbers.ts';
import { plural } from './plural.ts';

const talk: Record<TalkHeard, string> = {
	comfortable: 'talk was comfortable throughout',
	'late-breaths': 'talk was comfortable, with breaths only in the last third of a run',
	'early-breaths': 'talk was with breaths early, or in a walk',
	'broke-off': 'talk broke off'
};

const happened = {
	'felt-wrong': 'something felt wrong',
	pain: 'you told about pain',
	'pain-stands': 'you have not said that the pain is gone',
	hot: 'it was a hot day',
	'ended-early': 'the outing ended early',
	'no-end': 'no end of the outing was written down'
};

type Happened = Extract<Fact, { kind: keyof typeof happened }>;
const justHappened = (fact: Fact): fact is Happened => fact.kind in happened;

const brokeOff = (phases: number) =>
	plural(phases, { one: 'talk broke off once', other: `talk broke off in ${phases} parts` });
const effort = (highest: number | null) =>
	highest === null ? 'no effort was told' : `the highest effort was ${highest} of 10`;
const answered = (parts: number, of: number) =>
	parts === 0
		? 'nothing was said about talk'
		: `you said how talk was in ${parts} of ${of} main parts`;

const held: Record<Hold, string> = {
	'settling-in': 'nothing is raised while you are settling in',
	'care-limit': 'with a limit from your care team nothing is raised here',
	'no-runs': 'your result has walks and no runs'
};

/** What to do next time, and why. */
export const nextTimeWords = {
	title: 'Next time',
	advice: {
		questions: 'Stop, and answer the first questions again.',
		walkOnly:
			'Walk only, until the pain is gone. If it is not better in a few days, see a physiotherapist or a doctor.',
		easeBack: {
			speed: (speed: string) => `Ease back: one notch slower, at ${speed}.`,
			shorter: 'Ease back: shorter runs, at the same slow speed.',
			run: 'Ease back: run a little slower, or make the runs shorter.',
			walk: 'Ease back: walk a little slower, or not as long.'
		},
		longerRecovery: {
			run: 'The same speed, with 30 seconds more walking after each run.',
			walk: 'The same again, with half a minute of easy walking when talk gets hard.'
		},
		nextStep: {
			run: 'The next step of your programme, at the same speed. Without a programme: runs that are a little longer.',
			walk: 'The next step of your programme, at the same speed. Without a programme: a walk that is a little longer.'
		},
		notchUp: {
			run: {
				last: 'One notch faster in the last run, and only there.',
				all: 'One notch faster in all runs.'
			},
			walk: {
				last: 'One notch faster in the last brisk walk.',
				all: 'One notch faster in the brisk walks.'
			},
			to: (speed: string) => `That is ${speed}.`,
			incline: 'No faster walking: half a per cent more incline instead.'
		},
		stepBack: {
			run: 'One step back: the outing before this one, or shorter runs.',
			walk: 'One step back: the outing before this one, or a shorter walk.'
		},
		same: 'The same again.'
	},
	because: (one: string, other: string) => `Because ${one}, and ${other}.`,
	talkFirst: 'Whatever is planned: how you can talk comes first.',
	factOf(fact: Fact): string {
		if (justHappened(fact)) return happened[fact.kind];
		switch (fact.kind) {
			case 'held':
				return held[fact.why];
			case 'unfinished':
				return `${fact.count} of ${fact.of} main parts were not done to their end`;
			case 'broke-off':
				return brokeOff(fact.phases);
			case 'effort':
				return effort(fact.effort);
			case 'over-band':
				return `your pulse was over your band in ${wholePercent(fact.share)} % of the measured time`;
			case 'talk':
				return talk[fact.talk];
			case 'answered':
				return answered(fact.answered, fact.of);
			case 'times':
				return `this outing went well ${fact.times} times`;
			case 'gap':
				return `your last outing was ${fact.days} days ago`;
		}
	}
};

/** A runner's own talking pulse. */
export const talkPulse = {
	title: 'Your talking pulse',
	tooFew: (answers: number, needed: number) =>
		`${answers} of ${needed} answers so far. From ${needed} on, this shows at which pulse comfortable talking ends for you.`,
	howToAnswer:
		'An answer counts after you read the passage aloud, two minutes or more into a part, with your pulse measured. Until your runs last that long, that means brisk walks.',
	learned: (bpm: number, low: number, high: number) =>
		`Comfortable talking ends at about ${bpm} bpm for you: four times in five between ${low} and ${high}.`,
	from: (answers: number) =>
		`From your age and ${answers} talk answers. Newer answers weigh more than older ones.`,
	heard: {
		both: null,
		'only-comfortable': 'Talk was always comfortable so far, so the upper end is hardly known.',
		'never-comfortable': 'Talk was never comfortable so far, so the lower end is hardly known.'
	},
	stayUnder: (bpm: number) =>
		`Your band goes higher than that. Stay under about ${bpm} bpm until you know more.`,
	aboveBand: (answers: number) =>
		`From ${answers} talk answers: comfortable talking goes on above your band. Your band stays as it is.`,
	noTarget: 'It is not a number to aim at, and it raises no band. How you can talk comes first.',
	notTested: 'The sums were checked on invented runners only, not on people.'
};
