import type { AdviceRole, AdviceScope } from '$lib/screening/types.ts';
import { plural } from './plural.ts';

export const advice = {
	title: 'Advice that you had',
	lead: 'Write down what a doctor or another professional said. It lifts exactly the reasons that it covers. We take your word for it and upload nothing.',
	date: 'When was it?',
	dateHint: 'The day you talked with them.',
	role: 'Who was it?',
	roles: {
		doctor: 'A doctor',
		nurse: 'A nurse',
		physiotherapist: 'A physiotherapist',
		midwife: 'A midwife',
		pharmacist: 'A pharmacist',
		'exercise-professional': 'A qualified exercise professional'
	} as Record<AdviceRole, string>,
	scope: 'What did they say that you may do?',
	scopes: {
		none: 'Nothing yet: not before I am seen again',
		walk: 'Walking only',
		walkrun: 'Walking and easy running',
		all: 'No limits for this programme'
	} as Record<AdviceScope, string>,
	covers: 'Which of these did they talk about with you?',
	coversHint: 'Tick only what was really covered.',
	whoMay: (who: string) => `can be covered by ${who}`,
	limit: 'A pulse that you should not go over, if they named one (bpm)',
	limitHint: 'Leave it empty if they named none.',
	save: 'Keep this advice',
	remove: 'Remove',
	removeOf: (date: string) => `Remove the advice of ${date}`,
	list: 'Advice on file',
	none: 'None yet.',
	nothingToCover:
		'Your result has no reason that advice could lift. You can still write down a limit: walking only, nothing yet, or a pulse.',
	coveredBy: (reasons: string) => `It covers: ${reasons}`,
	limitOf: (bpm: number) => `Limit: ${bpm} beats a minute.`,
	stricter:
		'If they said “supervised exercise only” or set another limit, pick the choice that is never looser. Until you know, pick “nothing yet”.',
	professional:
		'A qualified exercise professional has a degree and a certificate in this. Ask to see it: a coach of a group is not one by that alone.',
	confirmedBy: (name: string, qualification: string, date: string) =>
		`Confirmed by ${name}, ${qualification}, on ${date}.`,
	confirmedByBare: (name: string, date: string) =>
		`Confirmed by ${name}, no qualification given, on ${date}.`,
	notYet: 'Kept. It does not lift every reason: the result page says what is left.',
	issues: {
		missing: 'Please answer this.',
		'not-a-date': 'Pick a day that exists, such as 2026-11-25.',
		'in-the-future': 'That day has not come yet.',
		'too-long-ago': 'Advice counts for twelve months. This one is older.',
		'unknown-option': 'Pick one of the choices.',
		'nothing-covered': 'Tick at least one reason.',
		'wrong-role': 'This person cannot cover that reason. See who can, beside each one.',
		'before-the-sign':
			'For a sign like this, the advice has to be from the day of your answers or later.',
		'limit-role':
			'Only a doctor or a nurse can set a pulse limit here. Ask one of them, and leave this empty until then.',
		'not-a-number': 'Type a number, or leave it empty.',
		'not-whole': 'Type a whole number, or leave it empty.',
		'too-low': 'That is lower than a walking pulse. Please look at it again.',
		'too-high': 'That is higher than we can believe. Please look at it again.'
	} as Record<string, string>
};

/** Beside a reason that age gives, and beside advice that covers it. */
export const ownCoaches = {
	title: 'Your coaches',
	row: (name: string, qualification: string) => `${name}: ${qualification}.`,
	bare: (name: string) => `${name}: no qualification given.`,
	said: 'This is what they say of themselves. Nobody here has checked it.',
	byNobody: 'No coach has confirmed this advice.'
};

export const doctor = {
	title: 'For your doctor',
	lead: 'Print this page or save it, and take it with you. Breathmark sends it to nobody.',
	header: 'Not a medical document. Made from the person’s own answers.',
	name: 'Name, for the print only (not stored)',
	person: (age: number, date: string) => `Age ${age}. Answered on ${date}.`,
	noAge: 'Age not kept.',
	urgent: 'These answers may need a same-day call.',
	planTitle: 'What is planned',
	plan: [
		'A beginners’ walking and running programme of 10 to 20 weeks, 2 to 4 outings a week, never on two days in a row.',
		'An outing lasts 25 to 45 minutes. First a warm-up walk of 6 to 8 minutes. Then walking, later with short runs between. Last a cool-down walk of 6 minutes or more.',
		'Led by a coach who is not a clinician, or alone with this app. On a treadmill or outdoors.'
	],
	plans: {
		walk: 'The person plans to walk only.',
		walkrun: 'The person plans to walk with bits of easy running.',
		hard: 'The person plans to run, with some hard efforts.'
	} as Record<string, string>,
	tableCaption: 'The load of each part, for an average adult on level ground',
	columns: {
		part: 'Part',
		speed: 'Usual speed',
		mets: 'METs',
		reserve: 'Aimed at, % of heart-rate reserve',
		rpe: 'RPE 6–20, about',
		talk: 'Talk'
	},
	talk: {
		comfortable: 'full sentences',
		'comfortable-then-with-breaths': 'full sentences; with breaths towards the end',
		'comfortable-by-the-end': 'full sentences again by the end'
	} as Record<string, string>,
	tableNote:
		'METs from the ACSM walking and running equations (level). Short runs do not reach a steady state. In people who are not fit even slow running can be above 60 % of reserve.',
	reasonsTitle: 'Why this page was made',
	reasonsHint: 'Untick what you do not want on the print.',
	activityTitle: 'Active now',
	activity: (days: number, minutes: number, months: string, hard: string) =>
		`${days} ${plural(days, { one: 'day', other: 'days' })} a week, ${minutes} minutes each, ${months}. Used to hard effort: ${hard}.`,
	months: { lt3: 'for less than 3 months', ge3: 'for 3 months or more' } as Record<string, string>,
	hard: { yes: 'yes', no: 'no', not_sure: 'not sure' } as Record<string, string>,
	questionsTitle: 'Questions for you',
	questions: [
		'Is this programme right for me? Walking only, walking with easy running, or all of it?',
		'Is there an effort or a pulse that I should not go over?',
		'Does any of my medicine change my pulse, or how I cope with heat?',
		'Which signs mean that I should stop or call for help?',
		'Do I need a test first, or exercise that is supervised?',
		'When should I be seen again?'
	],
	replyTitle: 'Reply',
	reply: [
		'no limits for the plan above',
		'walking only',
		'walking and easy running',
		'limits: ______________________________',
		'not until seen again on ______________',
		'a supervised programme instead'
	],
	replyPulse: 'Upper pulse, if any: ______ bpm.  From a test: yes / no',
	replySign: 'Date ______________   Role ____________________',
	replyNote: 'The app needs no signature. Local rules may differ.',
	basis: (version: string) =>
		`Question set ${version}: a draft in the app’s own words on the topics of published screening guidance, not yet reviewed by a clinician. It is not the form of any organisation.`,
	paper: 'Fits one sheet of A4 or Letter.',
	none: 'There is no reason on file that needs advice.',
	covered: 'Advice already covers:',
	remains: {
		none: 'Nothing else is left that needs advice.',
		'walking-only': 'What remains: advice on file says walking only.',
		'nothing-yet': 'What remains: advice on file says nothing yet, not before being seen again.'
	},
	tableHint: 'On a narrow screen, move the table sideways to see all of it. On paper it fits.'
};
