import type { DayIssue } from '$lib/outing/programme/days.ts';
import type { RefusalReason } from '$lib/outing/programme/week-amounts.ts';
import type { ProgrammeGoal, WishIssue } from '$lib/outing/programme/wishes.ts';
import { minutesAndSeconds } from './dates.ts';
import { plural } from './plural.ts';

/** What can be wrong with days before they are looked at together. */
type DaySlip = 'missing' | 'ends-before' | 'unknown-option' | 'too-long';

/** Programmes: their wishes, weeks and days. Times come in as they are shown, such as 2:30. */
export const programme = {
	/** Outings are called by their number and longest run; a longest run of 0 is a walk. */
	outingName: (number: number, longestRunSeconds: number) =>
		longestRunSeconds === 0
			? `Outing ${number}, walking`
			: `Outing ${number}, longest run ${minutesAndSeconds(longestRunSeconds)}`,
	intro:
		'It begins where your group is and grows at a steady rate. Change whatever you know better.',
	wishes: {
		weeks: 'Weeks, settling in included',
		outingsAWeek: 'Outings a week',
		firstRun: 'Longest run of the first week with runs',
		firstRunFrom: (runners: number) =>
			runners === 0
				? 'Nobody has done a walk check yet, so runs begin at 30 seconds.'
				: `From the middle runner of the ${runners} whose fitness is known.`,
		goal: 'Goal of the last outing',
		settlingIn: 'Begin with walking: at least six walks over two weeks',
		settlingInWhy: 'Somebody here is new to exercise or has a condition.'
	},
	goalKinds: {
		minutes: 'Minutes of running without a stop',
		distance: 'Kilometres without a stop',
		'walk-and-run': 'Walk and run, with runs of up to'
	} satisfies Record<ProgrammeGoal['kind'], string>,
	walkAndRun: 'Walking and running in turn is a full goal of its own.',
	issues: {
		weeks: 'A programme has 10 to 20 weeks.',
		outingsAWeek: 'Choose 2, 3 or 4 outings a week.',
		firstRunSeconds: 'The first longest run can be from 20 seconds to 20 minutes.',
		goal: 'Choose 5 to 60 minutes, 1 to 10 kilometres in 60 minutes at most, or runs of up to 30 seconds to 15 minutes.'
	} satisfies Record<WishIssue['field'], string>,
	refused: {
		title: 'This cannot be met as wished',
		'goal-already-reached': 'The first week would be at the goal already.',
		'first-week-too-far': 'The first week would have 3 km of running or more.',
		'not-in-band':
			'Running without a stop is not expected to stay inside the band of the middle runner. Walk and run is a full goal.',
		'longest-run-grows-too-fast':
			'The longest run would have to grow by more than half from one week to the next.',
		'week-grows-too-fast': 'The running of a week would have to grow by more than 14 %.',
		'too-hard-at-first':
			'In the first eight weeks a run would lift the pulse above 80 % of the reserve.'
	} satisfies Record<RefusalReason | 'title', string>,
	nearest: {
		title: 'What would work',
		weeks: (weeks: number) => `The same in ${weeks} weeks`,
		minutes: (minutes: number) => `${minutes} minutes without a stop`,
		distance: (kilometres: string) => `${kilometres} km without a stop`,
		'walk-and-run': (time: string) => `Walk and run, with runs of up to ${time}`,
		firstRun: (time: string) => `First runs of up to ${time}`,
		none: 'Begin with runs of 20 to 30 seconds, and look again after some weeks.'
	},
	table: {
		caption: 'Week by week',
		week: 'Week',
		running: 'Running, minutes',
		longest: 'Longest run',
		growth: 'More running than the week before',
		mean: 'Expected mean',
		peak: 'Expected highest',
		settlingIn: 'settling in, walking',
		percent: (percent: number) => `${percent} %`,
		share: (percent: number) => `${percent} % of reserve`,
		none: 'none',
		firstRuns: 'the first runs',
		illustration: (runners: number) =>
			`Mean and highest are an illustration, for the middle of ${plural(runners, { one: 'one runner', other: `${runners} runners` })}.`,
		noEstimate: 'no estimate',
		ofRunners: 'Of how many',
		someOf: (runners: number, all: number) => `${runners} of ${all}`,
		ofSome: (runners: number, all: number) => `(middle of ${runners} of ${all} runners)`,
		illustrationOfSome:
			'Mean and highest are an illustration. In some weeks a run asks more of some runners than can be reckoned with. They have no estimate there, so the middle is that of the others: it looks easier than the week is for the whole group.'
	},
	evidence: {
		title: 'What is known about growing slowly',
		fastGrowth: (of: {
			runners: number;
			overPercentInTwoWeeks: number;
			hazardRatio: number;
			low: number;
			high: number;
		}) =>
			`Among ${of.runners} new runners, those whose distance grew by more than ${of.overPercentInTwoWeeks} % in two weeks had more injuries of the kind that distance brings: ${of.hazardRatio} times as many. Chance was not ruled out, as the true number may lie between ${of.low} and ${of.high}. For injuries of all kinds there was no difference.`,
		tenPercent: (of: { runners: number; injuredPercent: number; injuredPercentUsual: number }) =>
			`Among ${of.runners} new runners, a programme that grew by 10 % a week brought no fewer injuries than a faster one: ${of.injuredPercent} and ${of.injuredPercentUsual} in a hundred.`,
		ours: 'So 14 % a week is a careful choice of ours, not a proven limit. It counts the minutes of running in a week; the longest run may grow by half. A sore shin or knee is the commonest harm: ask about pain after each outing.'
	},
	days: {
		startsOn: 'First day',
		weekdays: 'Days of the week',
		holidays: 'Days without an outing',
		dayOff: 'There is always a day off after an outing.',
		fourAWeek:
			'Four outings a week with a day off after each do not fit into seven days. The programme takes a little longer than its weeks.',
		missed:
			'A week of which less than half was done comes again. After two weeks without an outing the week before comes again.',
		issues: {
			missing: 'Choose a day.',
			'not-a-date': 'Give a day that exists.',
			'ends-before': 'The last day comes before the first. Turn them round.',
			'unknown-option': 'Choose days from Monday to Sunday.',
			'too-long': 'Give a day that exists.',
			'in-the-past': 'Choose today or a later day.',
			'too-far': 'Choose a day within a year from today.',
			'weekday-unknown': 'Choose days from Monday to Sunday.',
			'weekday-twice': 'Choose each day of the week once.',
			'weekdays-not-as-many': 'Choose as many days as there are outings a week.',
			'weekdays-in-a-row': 'Leave a day off between two outings. Sunday and Monday count too.',
			'too-many-holidays': 'That is more days without an outing than a programme can hold.'
		} satisfies Record<DayIssue['code'] | DaySlip, string> as Record<string, string>
	}
};
