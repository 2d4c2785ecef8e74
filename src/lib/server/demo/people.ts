import type { AdviceRole, Answers } from '../../screening/types.ts';

/** The made-up runners, each with an id that stands in their e-mail and in a form. */
export const demoRunnerIds = [
	'dagny',
	'gwen',
	'ines',
	'mei-lin',
	'pavel',
	'rashid',
	'tobias'
] as const;

export type DemoRunnerId = (typeof demoRunnerIds)[number];

export const DEMO_COACH = 'odile';
export type DemoPerson = DemoRunnerId | typeof DEMO_COACH;

/** Everybody, the coach first. */
export const demoPeople: readonly DemoPerson[] = [DEMO_COACH, ...demoRunnerIds];

export const isDemoPerson = (id: string): id is DemoPerson =>
	demoPeople.some((person) => person === id);

/** What is made up about a runner, in days before today. Nothing of it is about anybody real. */
export interface DemoRunner {
	readonly answers: Answers;
	/** The screening: so many days ago, or so that it ends so many days from now. */
	readonly screened: { readonly daysAgo: number } | { readonly endsInDays: number };
	readonly joinedDaysAgo: number;
	/** Resting pulses of the mornings since, newest first. */
	readonly mornings: readonly number[];
	/** Advice to start walking and running, which the coach confirmed the day after. */
	readonly advice: { readonly role: AdviceRole; readonly daysAgo: number } | null;
	/** Which of the group's twelve days they missed, the first being 0; null for who never came. */
	readonly missed: readonly number[] | null;
}

/** A runner who walks most days, is well and takes nothing. */
const well: Answers = {
	'now.urgent': ['none'],
	'plan.effort': 'walkrun',
	'act.days': 4,
	'act.minutes': 35,
	'act.months': 'ge3',
	'act.hard': 'no',
	'ill.today': 'no',
	'ill.heart': 'no',
	'signs.other': ['none'],
	'chest.pain': ['none'],
	'dizzy.balance': 'no',
	'faint.year': 'no',
	'joint.sore': 'no',
	'recent.event': ['none'],
	'limits.set': ['none'],
	'cond.list': ['none'],
	'heart.told': 'no',
	'bp.told': 'no',
	'meds.rate': 'no',
	'meds.long': 'no',
	'preg.status': 'no'
};

const newToExercise: Answers = {
	...well,
	'act.days': 1,
	'act.minutes': 20,
	'act.months': 'lt3'
};

export const demoRunners: Readonly<Record<DemoRunnerId, DemoRunner>> = {
	dagny: {
		answers: { ...well, 'age.years': 72, 'plan.effort': 'walk' },
		screened: { daysAgo: 28 },
		joinedDaysAgo: 28,
		mornings: [69, 70],
		advice: null,
		missed: [3, 4]
	},
	gwen: {
		answers: { ...well, 'age.years': 51, 'signs.other': ['ankles'] },
		screened: { daysAgo: 4 },
		joinedDaysAgo: 4,
		mornings: [],
		advice: null,
		missed: null
	},
	ines: {
		answers: { ...newToExercise, 'age.years': 46 },
		screened: { daysAgo: 28 },
		joinedDaysAgo: 28,
		mornings: [70, 69, 72],
		advice: { role: 'doctor', daysAgo: 21 },
		missed: [5]
	},
	'mei-lin': {
		answers: { ...well, 'age.years': 29 },
		screened: { daysAgo: 28 },
		joinedDaysAgo: 28,
		mornings: [63, 62, 64],
		advice: null,
		missed: []
	},
	pavel: {
		answers: { ...well, 'age.years': 37, 'act.hard': 'yes' },
		screened: { endsInDays: 9 },
		joinedDaysAgo: 27,
		mornings: [60],
		advice: null,
		missed: [0, 1, 6, 10]
	},
	rashid: {
		answers: {
			...well,
			'age.years': 58,
			'bp.told': 'yes',
			'bp.hard': 'no',
			'bp.last': 'under',
			'meds.rate': 'yes',
			'meds.long': 'yes',
			'meds.why': 'told'
		},
		screened: { daysAgo: 28 },
		joinedDaysAgo: 28,
		mornings: [],
		advice: { role: 'doctor', daysAgo: 24 },
		missed: [2, 9]
	},
	tobias: {
		answers: { ...newToExercise, 'age.years': 64 },
		screened: { daysAgo: 28 },
		joinedDaysAgo: 28,
		mornings: [74, 73],
		advice: null,
		missed: [7]
	}
};
