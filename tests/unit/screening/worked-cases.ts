import type { Answers, Ceiling, Status } from '$lib/screening/types.ts';

/*
 * Worked cases of the screening step, answers and expected outcome. They are this project's own
 * draft, written before the code by people who are not clinicians, on the topics and the logic of:
 *
 * - Riebe D and others. Updating ACSM's recommendations for exercise preparticipation health
 *   screening. Med Sci Sports Exerc 2015;47(11):2473-2479. Secondary.
 * - Warburton DER and others. Consensus Document 2011. Appl Physiol Nutr Metab
 *   2011;36(S1):S266-S298: the topics of the public form that came of it. Secondary.
 * - ACOG Committee Opinion 804, 2020 (pregnancy); Kanaley JA and others, ACSM 2022 (diabetes);
 *   Gluckman TJ and others, ACC 2022 (after an illness); American Heart Association and National
 *   Health Service lists of signs (urgent). Seen or secondary, as in the sources of the rules.
 * - Common practice, no source: time limits such as three months after an operation.
 *
 * Where two of them differ the stricter one is expected.
 */

export interface ExpectedOutcome {
	readonly status: Status;
	/** Outcome and start rules, in any order. */
	readonly reasons: readonly string[];
	readonly pulse: 'on' | 'off';
	readonly pulseReasons: readonly string[];
	/** Null where the status has no start effort. */
	readonly startEffort: Ceiling | null;
	readonly careNotes: readonly string[];
	readonly run: boolean;
	readonly urgent: boolean;
	readonly stopCurrent: boolean;
}

export interface WorkedCase {
	readonly title: string;
	/** Answers that differ from the person with nothing flagged. */
	readonly change: Answers;
	/** Questions that are not answered at all; 'the rest' means all but the changed ones. */
	readonly unanswered: readonly string[] | 'the rest';
	readonly expected: ExpectedOutcome;
}

/** Active, 34, nothing flagged, plans to walk and run: every question that is always asked. */
export const nothingFlagged: Answers = {
	'now.urgent': ['none'],
	'age.years': 34,
	'heart.told': 'no',
	'bp.told': 'no',
	'chest.pain': ['none'],
	'faint.year': 'no',
	'dizzy.balance': 'no',
	'signs.other': ['none'],
	'cond.list': ['none'],
	'meds.rate': 'no',
	'meds.long': 'no',
	'joint.sore': 'no',
	'limits.set': ['none'],
	'recent.event': ['none'],
	'preg.status': 'no',
	'ill.today': 'no',
	'ill.heart': 'no',
	'act.days': 4,
	'act.minutes': 40,
	'act.months': 'ge3',
	'act.hard': 'yes',
	'plan.effort': 'walkrun'
};

export const workedCases: readonly WorkedCase[] = [
	{
		title: 'Active adult, 34, nothing flagged',
		change: {},
		unanswered: [],
		expected: {
			status: 'CLEARED_ALL',
			reasons: [],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'vigorous',
			careNotes: [],
			run: true,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Inactive adult, 34, nothing flagged, walk and run',
		change: { 'act.days': 1, 'act.minutes': 20, 'act.months': 'lt3', 'act.hard': 'no' },
		unanswered: [],
		expected: {
			status: 'CLEARED_ALL',
			reasons: ['S-INACTIVE'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'moderate',
			careNotes: [],
			run: true,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Inactive adult, 52, nothing flagged, wants to run',
		change: {
			'act.days': 1,
			'act.minutes': 20,
			'act.months': 'lt3',
			'act.hard': 'no',
			'age.years': 52
		},
		unanswered: [],
		expected: {
			status: 'CLEARED_WALK',
			reasons: ['R-AGE-45', 'S-INACTIVE'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'moderate',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Same person, 52, but walk only',
		change: {
			'act.days': 1,
			'act.minutes': 20,
			'act.months': 'lt3',
			'act.hard': 'no',
			'age.years': 52,
			'plan.effort': 'walk'
		},
		unanswered: [],
		expected: {
			status: 'CLEARED_ALL',
			reasons: ['S-INACTIVE'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'moderate',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Chest pain right now',
		change: { 'now.urgent': ['chest'] },
		unanswered: [],
		expected: {
			status: 'EMERGENCY',
			reasons: ['R-NOW'],
			pulse: 'off',
			pulseReasons: [],
			startEffort: null,
			careNotes: [],
			run: false,
			urgent: true,
			stopCurrent: true
		}
	},
	{
		title: 'Chest pain right now and nothing else answered',
		change: { 'now.urgent': ['chest'] },
		unanswered: 'the rest',
		expected: {
			status: 'EMERGENCY',
			reasons: ['R-NOW'],
			pulse: 'off',
			pulseReasons: [],
			startEffort: null,
			careNotes: [],
			run: false,
			urgent: true,
			stopCurrent: true
		}
	},
	{
		title: 'Chest pain on exercise in the past, active runner',
		change: { 'chest.pain': ['exercise'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-CHEST-EXERCISE'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: true,
			stopCurrent: true
		}
	},
	{
		title: 'Dizzy only when over-breathing',
		change: { 'dizzy.balance': 'yes', 'dizzy.breathing': 'yes' },
		unanswered: [],
		expected: {
			status: 'CLEARED_ALL',
			reasons: [],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'vigorous',
			careNotes: [],
			run: true,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Well-controlled high blood pressure on a beta blocker, active, 50',
		change: {
			'age.years': 50,
			'bp.told': 'yes',
			'bp.hard': 'no',
			'bp.last': 'under',
			'meds.rate': 'yes',
			'meds.why': 'told'
		},
		unanswered: [],
		expected: {
			status: 'CLEARED_ALL',
			reasons: ['S-COND'],
			pulse: 'off',
			pulseReasons: ['H-MEDS'],
			startEffort: 'moderate',
			careNotes: ['A-HEAT'],
			run: true,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'High blood pressure, last reading not known',
		change: { 'bp.told': 'yes', 'bp.hard': 'no', 'bp.last': 'dont_know' },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-BP-HIGH', 'S-COND'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: ['A-HEAT'],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Old heart attack, stable, active for a year, walk and run',
		change: {
			'heart.told': 'yes',
			'heart.hard': 'no',
			'heart.rhythm': 'no',
			'heart.failure': 'no',
			'heart.quiet2m': 'no'
		},
		unanswered: [],
		expected: {
			status: 'CLEARED_WALK',
			reasons: ['R-CMR-ACTIVE', 'S-COND'],
			pulse: 'off',
			pulseReasons: ['H-HEART'],
			startEffort: 'moderate',
			careNotes: ['A-HEAT'],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Diabetes, steady, on insulin, inactive',
		change: {
			'act.days': 1,
			'act.minutes': 20,
			'act.months': 'lt3',
			'act.hard': 'no',
			'cond.list': ['diabetes'],
			'cond.diabetes': ['none'],
			'meds.sugar': 'yes'
		},
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-CMR-INACTIVE', 'S-COND', 'S-INACTIVE'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: ['A-HEAT', 'A-SUGAR'],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Mild asthma, well controlled, active',
		change: { 'cond.list': ['lung'], 'cond.lung': ['none'] },
		unanswered: [],
		expected: {
			status: 'CLEARED_ALL',
			reasons: ['S-COND'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'moderate',
			careNotes: ['A-INHALER'],
			run: true,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Long-term medicine, but no problem named',
		change: { 'meds.long': 'yes', 'meds.why': 'untold' },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-MED-UNTOLD'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: ['A-HEAT'],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Pregnant, midwife said walking and running are fine',
		change: { 'preg.status': 'pregnant', 'preg.ok': 'run' },
		unanswered: [],
		expected: {
			status: 'CLEARED_ALL',
			reasons: ['S-PREG'],
			pulse: 'off',
			pulseReasons: ['H-PREG'],
			startEffort: 'moderate',
			careNotes: ['A-HEAT', 'A-PREG'],
			run: true,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Cold and fever today, all else clear',
		change: { 'ill.today': 'yes' },
		unanswered: [],
		expected: {
			status: 'WAIT',
			reasons: ['R-ILL'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Told to exercise only with medical staff',
		change: { 'limits.set': ['watched'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-SUPERVISED'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Age 17',
		change: { 'age.years': 17 },
		unanswered: [],
		expected: {
			status: 'NOT_ELIGIBLE',
			reasons: ['G-MINOR'],
			pulse: 'off',
			pulseReasons: [],
			startEffort: null,
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Chest question left blank',
		change: {},
		unanswered: ['chest.pain'],
		expected: {
			status: 'INCOMPLETE',
			reasons: [],
			pulse: 'off',
			pulseReasons: [],
			startEffort: null,
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Invalid mix: None of these plus a sign',
		change: { 'signs.other': ['none', 'ankles'] },
		unanswered: [],
		expected: {
			status: 'INCOMPLETE',
			reasons: [],
			pulse: 'off',
			pulseReasons: [],
			startEffort: null,
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: "Medicine for 'a problem I told you about', but nothing ticked",
		change: { 'meds.long': 'yes', 'meds.why': 'told' },
		unanswered: [],
		expected: {
			status: 'INCOMPLETE',
			reasons: [],
			pulse: 'off',
			pulseReasons: [],
			startEffort: null,
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Alone: R-CHEST-REST',
		change: { 'chest.pain': ['rest'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-CHEST-REST'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: true,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-CHEST-DAILY',
		change: { 'chest.pain': ['daily'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-CHEST-DAILY'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: true,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-FAINT',
		change: { 'faint.year': 'yes' },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-FAINT'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-SIGN-BREATH',
		change: { 'signs.other': ['breathless'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-SIGN-BREATH'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-SIGN-ANKLES',
		change: { 'signs.other': ['ankles'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-SIGN-ANKLES'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-SIGN-BEAT',
		change: { 'signs.other': ['palpitations'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-SIGN-BEAT'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-SIGN-LEG',
		change: { 'signs.other': ['legpain'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-SIGN-LEG'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-SIGN-MURMUR',
		change: { 'signs.other': ['murmur'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-SIGN-MURMUR'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-SIGN-TIRED',
		change: { 'signs.other': ['tired'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-SIGN-TIRED'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-LUNG',
		change: { 'cond.list': ['lung'], 'cond.lung': ['often'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-LUNG', 'S-COND'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: ['A-INHALER'],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Alone: R-BONE',
		change: { 'cond.list': ['bone'], 'cond.bone': ['steroid'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-BONE', 'S-COND'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Alone: R-SPINE',
		change: { 'cond.list': ['spine'], 'cond.spine': ['lowbp'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-SPINE', 'S-COND'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Alone: R-MENTAL',
		change: { 'cond.list': ['mental'], 'cond.mental': ['hard'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-MENTAL', 'S-COND'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Alone: R-COND-OTHER',
		change: { 'cond.list': ['other'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-COND-OTHER', 'S-COND'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Alone: R-TOLD-LIMIT',
		change: { 'limits.set': ['avoid'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-TOLD-LIMIT'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Alone: R-RECENT',
		change: { 'recent.event': ['surgery'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-RECENT'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Alone: R-ILL-HEART',
		change: { 'ill.heart': 'yes' },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-ILL-HEART'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: true
		}
	},
	{
		title: 'Alone: R-STROKE',
		change: { 'cond.list': ['stroke'], 'cond.stroke': ['six'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-CMR-ACTIVE', 'R-STROKE', 'S-COND'],
			pulse: 'on',
			pulseReasons: [],
			startEffort: 'none',
			careNotes: ['A-HEAT'],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Alone: R-DIABETES',
		change: { 'cond.list': ['diabetes'], 'meds.sugar': 'no', 'cond.diabetes': ['harm'] },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-CMR-ACTIVE', 'R-DIABETES', 'S-COND'],
			pulse: 'off',
			pulseReasons: ['H-DIABETES'],
			startEffort: 'none',
			careNotes: ['A-HEAT'],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Hard exercise on no day of the week: check both',
		change: { 'act.hard': 'yes', 'act.days': 0, 'act.minutes': 0 },
		unanswered: [],
		expected: {
			status: 'INCOMPLETE',
			reasons: [],
			pulse: 'off',
			pulseReasons: [],
			startEffort: null,
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Rate medicine, purpose not sure',
		change: { 'meds.rate': 'yes', 'meds.why': 'not_sure' },
		unanswered: [],
		expected: {
			status: 'SEEK_ADVICE',
			reasons: ['R-MED-UNTOLD'],
			pulse: 'off',
			pulseReasons: ['H-MEDS'],
			startEffort: 'none',
			careNotes: ['A-HEAT'],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	},
	{
		title: 'Would rather not say, twice: walking only',
		change: { 'preg.status': 'private', 'preg.ok': 'private' },
		unanswered: [],
		expected: {
			status: 'CLEARED_WALK',
			reasons: ['R-PREG-WALK', 'S-PREG'],
			pulse: 'off',
			pulseReasons: ['H-PREG'],
			startEffort: 'moderate',
			careNotes: [],
			run: false,
			urgent: false,
			stopCurrent: false
		}
	}
];
