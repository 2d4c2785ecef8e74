import { deepFreeze } from '../deep-freeze.ts';
import type { ChoiceQuestion, Condition, IntegerQuestion, Option, Ruleset } from '../ruleset.ts';
import type { OutcomeRule, PulseRule } from '../ruleset.ts';
import type { SourceId } from '../sources.ts';
import type { ReasonKind } from '../types.ts';

// A draft by people who are not clinicians. A clinician has to review it before runners use it.
// Published sets never change: a new fact is a new file with a new id.

const form: SourceId = 'warburton2011';

function choices(...ids: readonly string[]): readonly Option[] {
	return ids.map((id) => ({ id, exclusive: false }));
}

function pickOne(
	id: string,
	options: readonly string[],
	safe: readonly string[],
	basis: readonly SourceId[],
	showIf: Condition | null = null
): ChoiceQuestion {
	return { id, kind: 'single', options: choices(...options), safe, showIf, basis };
}

/** "Not sure" counts as the careful answer: it is never among the safe ones. */
function yesOrNo(
	id: string,
	safe: 'yes' | 'no',
	basis: readonly SourceId[],
	showIf: Condition | null = null
): ChoiceQuestion {
	return pickOne(id, ['yes', 'no', 'not_sure'], [safe], basis, showIf);
}

function tickAll(
	id: string,
	signs: readonly string[],
	basis: readonly SourceId[],
	showIf: Condition | null = null
): ChoiceQuestion {
	const options = [...choices(...signs), { id: 'none', exclusive: true }];
	return { id, kind: 'multi', options, safe: ['none'], showIf, basis };
}

function whole(
	id: string,
	lowest: number,
	highest: number,
	basis: readonly SourceId[]
): IntegerQuestion {
	return { id, kind: 'integer', lowest, highest, showIf: null, basis };
}

const perhaps = ['yes', 'not_sure'] as const;
const perhapsYes = (question: string): Condition => ({ question, is: perhaps });
const condition = (...has: readonly string[]): Condition => ({ question: 'cond.list', has });

const conditions = [
	'stroke',
	'legartery',
	'diabetes',
	'kidney',
	'lung',
	'cancer',
	'bone',
	'spine',
	'nerve',
	'mental',
	'other'
] as const;

const heartKnown = perhapsYes('heart.told');
const pressureKnown = perhapsYes('bp.told');
const plansToRun: Condition = { not: { question: 'plan.effort', is: ['walk'] } };

const questions: Ruleset['questions'] = [
	tickAll('now.urgent', ['chest', 'breath', 'faint', 'stroke', 'heart'], ['ahaSigns', 'nhs999']),
	whole('age.years', 0, 120, [form, 'pssYp2021']),
	pickOne('plan.effort', ['walk', 'walkrun', 'hard'], ['walk'], ['riebe2015']),
	whole('act.days', 0, 7, ['riebe2015']),
	whole('act.minutes', 0, 600, ['riebe2015']),
	pickOne('act.months', ['lt3', 'ge3'], ['ge3'], ['riebe2015']),
	yesOrNo('act.hard', 'yes', [form]),
	yesOrNo('ill.today', 'no', [form]),
	yesOrNo('ill.heart', 'no', ['gluckman2022']),
	// Signs 2 and 4 to 9 of the nine; 1 and 3 have questions of their own.
	tickAll(
		'signs.other',
		['breathless', 'lying', 'ankles', 'palpitations', 'legpain', 'murmur', 'tired'],
		['acsmGuidelines', 'riebe2015']
	),
	tickAll('chest.pain', ['rest', 'daily', 'exercise'], [form, 'acsmGuidelines']),
	yesOrNo('dizzy.balance', 'no', [form, 'acsmGuidelines']),
	yesOrNo('dizzy.breathing', 'yes', [form], perhapsYes('dizzy.balance')),
	yesOrNo('faint.year', 'no', [form, 'acsmGuidelines']),
	yesOrNo('joint.sore', 'no', [form]),
	tickAll(
		'joint.now',
		['limits', 'weight', 'break', 'nerves'],
		[form, 'commonPractice'],
		perhapsYes('joint.sore')
	),
	// The time limits are common practice.
	tickAll(
		'recent.event',
		['surgery', 'hospital', 'head'],
		[form, 'csep', 'apss2019', 'commonPractice']
	),
	tickAll('limits.set', ['watched', 'avoid'], [form, 'csep']),
	tickAll('cond.list', conditions, [form, 'riebe2015']),
	tickAll('cond.stroke', ['six', 'walk', 'hard'], [form, 'burr2012'], condition('stroke')),
	tickAll('cond.diabetes', ['control', 'low', 'harm'], [form, 'apss2019'], condition('diabetes')),
	tickAll(
		'cond.lung',
		['hard', 'oxygen', 'often', 'attack', 'lungbp'],
		[form, 'apss2019'],
		condition('lung')
	),
	tickAll('cond.cancer', ['now', 'type'], [form], condition('cancer')),
	tickAll('cond.bone', ['hard', 'break', 'steroid'], [form], condition('bone')),
	tickAll('cond.spine', ['hard', 'lowbp', 'spikes'], [form, 'burr2012'], condition('spine')),
	tickAll('cond.mental', ['hard', 'neck'], [form], condition('mental')),
	yesOrNo('heart.told', 'no', [form, 'riebe2015']),
	yesOrNo('heart.hard', 'no', [form], heartKnown),
	yesOrNo('heart.rhythm', 'no', [form], heartKnown),
	yesOrNo('heart.failure', 'no', [form], heartKnown),
	yesOrNo('heart.quiet2m', 'no', [form], heartKnown),
	yesOrNo('bp.told', 'no', [form], null),
	yesOrNo('bp.hard', 'no', [form], pressureKnown),
	pickOne('bp.last', ['under', 'over', 'dont_know'], ['under'], [form], pressureKnown),
	yesOrNo('meds.rate', 'no', [form, 'acsmGuidelines', 'diazBuschmann2014', 'keteyian2023']),
	yesOrNo('meds.long', 'no', [form]),
	// Asked also of whoever ticked a condition: hiding it would make an admission loosen the result.
	pickOne(
		'meds.why',
		['told', 'minor', 'untold', 'not_sure'],
		['told', 'minor'],
		['commonPractice'],
		{ any: [perhapsYes('meds.rate'), perhapsYes('meds.long')] }
	),
	yesOrNo('meds.sugar', 'no', ['kanaley2022'], condition('diabetes')),
	pickOne(
		'preg.status',
		['no', 'pregnant', 'baby', 'private'],
		['no'],
		[form, 'acog2020', 'mottola2018', 'davenport2025']
	),
	pickOne('preg.ok', ['run', 'walk', 'no', 'not_sure', 'private'], ['run'], [form, 'acog2020'], {
		question: 'preg.status',
		is: ['pregnant', 'baby', 'private']
	})
];

function askFirst(
	id: string,
	kind: ReasonKind,
	when: Condition,
	basis: readonly SourceId[],
	more: Partial<Pick<OutcomeRule, 'outcome' | 'urgent' | 'stopCurrent' | 'isNew'>> = {}
): OutcomeRule {
	const mildest = { outcome: 'SEEK_ADVICE', urgent: false, stopCurrent: false } as const;
	// A sign of illness or an injury may be another one than the one that was once looked at.
	const isNew = kind === 'symptom' || kind === 'injury';
	return { id, does: 'outcome', when, kind, basis, ...mildest, isNew, ...more };
}

function sign(
	id: string,
	when: Condition,
	basis: readonly SourceId[],
	urgent = false
): OutcomeRule {
	return askFirst(id, 'symptom', when, basis, { urgent, stopCurrent: true });
}

function pulseOff(
	id: string,
	kind: ReasonKind,
	when: Condition,
	basis: readonly SourceId[],
	untilAdvice = false
): PulseRule {
	return { id, does: 'pulse-off', when, kind, basis, untilAdvice };
}

const signs = (...has: readonly string[]): Condition => ({ question: 'signs.other', has });
const anyOf = (question: string, ...has: readonly string[]): Condition => ({ question, has });
const walkOnly = { outcome: 'CLEARED_WALK' } as const;
const acsm: readonly SourceId[] = ['acsmGuidelines', 'riebe2015'];

const outcomeRules: readonly OutcomeRule[] = [
	askFirst(
		'R-NOW',
		'symptom',
		anyOf('now.urgent', 'chest', 'breath', 'faint', 'stroke', 'heart'),
		['ahaSigns', 'nhs999', 'acsmGuidelines'],
		{ outcome: 'EMERGENCY', urgent: true, stopCurrent: true }
	),
	// An urgent sign outlives the form it was ticked on.
	sign('R-EVENT', { outside: 'urgent-event' }, ['riebe2015', 'commonPractice'], true),
	sign('R-CHEST-REST', anyOf('chest.pain', 'rest'), [form, ...acsm], true),
	sign('R-CHEST-DAILY', anyOf('chest.pain', 'daily'), [form, ...acsm], true),
	sign('R-CHEST-EXERCISE', anyOf('chest.pain', 'exercise'), [form, ...acsm], true),
	sign('R-FAINT', perhapsYes('faint.year'), [form, ...acsm]),
	// Dizziness from breathing very hard is exempt.
	sign(
		'R-DIZZY',
		{
			all: [perhapsYes('dizzy.balance'), { not: { question: 'dizzy.breathing', is: ['yes'] } }]
		},
		[form, ...acsm]
	),
	sign('R-SIGN-BREATH', signs('breathless', 'lying'), acsm),
	sign('R-SIGN-ANKLES', signs('ankles'), acsm),
	sign('R-SIGN-BEAT', signs('palpitations'), acsm),
	sign('R-SIGN-LEG', signs('legpain'), acsm),
	sign('R-SIGN-MURMUR', signs('murmur'), acsm),
	sign('R-SIGN-TIRED', signs('tired'), acsm),
	askFirst(
		'R-HEART-FU',
		'condition',
		{
			any: ['heart.hard', 'heart.rhythm', 'heart.failure', 'heart.quiet2m'].map(perhapsYes)
		},
		[form]
	),
	askFirst(
		'R-CMR-INACTIVE',
		'condition',
		{ all: [{ fact: 'disease_cmr' }, { not: { fact: 'regular' } }] },
		['riebe2015', 'franklin2020']
	),
	askFirst(
		'R-CMR-ACTIVE',
		'condition',
		{ all: [{ fact: 'disease_cmr' }, { fact: 'regular' }] },
		['riebe2015', 'franklin2020', form],
		walkOnly
	),
	// A reading that is not known counts as a high one.
	askFirst(
		'R-BP-HIGH',
		'condition',
		{ any: [perhapsYes('bp.hard'), { question: 'bp.last', is: ['over', 'dont_know'] }] },
		[form, 'csep']
	),
	askFirst('R-STROKE', 'condition', anyOf('cond.stroke', 'six', 'walk', 'hard'), [
		form,
		'burr2012'
	]),
	askFirst('R-DIABETES', 'condition', anyOf('cond.diabetes', 'control', 'low', 'harm'), [
		form,
		'apss2019'
	]),
	askFirst(
		'R-LUNG',
		'condition',
		anyOf('cond.lung', 'hard', 'oxygen', 'often', 'attack', 'lungbp'),
		[form, 'apss2019']
	),
	askFirst('R-CANCER', 'condition', anyOf('cond.cancer', 'now', 'type'), [form]),
	askFirst('R-BONE', 'condition', anyOf('cond.bone', 'hard', 'break', 'steroid'), [form]),
	askFirst('R-SPINE', 'condition', anyOf('cond.spine', 'hard', 'lowbp', 'spikes'), [
		form,
		'burr2012'
	]),
	askFirst('R-MENTAL', 'condition', anyOf('cond.mental', 'hard', 'neck'), [form]),
	askFirst('R-COND-OTHER', 'condition', condition('kidney', 'nerve', 'other'), [form]),
	askFirst('R-COND-MULTI', 'condition', { fact: 'two_conditions' }, [form]),
	// The medicine stands for a problem that nobody asked about, so this is a condition.
	askFirst('R-MED-UNTOLD', 'condition', { question: 'meds.why', is: ['untold', 'not_sure'] }, [
		form,
		'commonPractice'
	]),
	sign('R-JOINT-NERVES', anyOf('joint.now', 'nerves'), ['commonPractice'], true),
	askFirst('R-JOINT', 'injury', anyOf('joint.now', 'limits', 'weight', 'break'), [form, 'csep']),
	askFirst('R-SUPERVISED', 'condition', anyOf('limits.set', 'watched'), [form]),
	askFirst('R-TOLD-LIMIT', 'condition', anyOf('limits.set', 'avoid'), ['csep']),
	askFirst(
		'R-RECENT',
		'condition',
		anyOf('recent.event', 'surgery', 'hospital', 'head'),
		[form, 'csep', 'commonPractice'],
		{ isNew: true }
	),
	askFirst('R-PREG-ASK', 'pregnancy', { question: 'preg.ok', is: ['no', 'not_sure'] }, [
		form,
		'acog2020',
		'mottola2018',
		'davenport2025'
	]),
	askFirst(
		'R-PREG-WALK',
		'pregnancy',
		{ question: 'preg.ok', is: ['walk', 'private'] },
		['commonPractice'],
		walkOnly
	),
	sign('R-ILL-HEART', perhapsYes('ill.heart'), ['gluckman2022']),
	askFirst('R-ILL', 'wait', perhapsYes('ill.today'), [form, 'dick2014'], { outcome: 'WAIT' }),
	askFirst(
		'R-AGE-45',
		'age',
		{
			all: [
				{ question: 'age.years', over: 45 },
				{ not: { question: 'act.hard', is: ['yes'] } },
				plansToRun
			]
		},
		[form],
		walkOnly
	),
	// The older form's limit; the newer one dropped it. Kept as a caution.
	askFirst(
		'R-AGE-70',
		'age',
		{ all: [{ question: 'age.years', over: 69 }, { not: { fact: 'regular' } }, plansToRun] },
		['bredin2013'],
		walkOnly
	)
];

export const ruleset202611: Ruleset = deepFreeze({
	id: '2026-11',
	version: '1.0.0-draft',
	reviewedByClinician: false,
	validMonths: 12,
	kept: {
		ageYears: 'age.years',
		plan: 'plan.effort',
		days: 'act.days',
		minutes: 'act.minutes',
		months: 'act.months',
		hard: 'act.hard'
	},
	questions,
	facts: {
		// Planned activity, moderate or more: 30 minutes, 3 days a week, for 3 months (riebe2015).
		regular: {
			all: [
				{ question: 'act.days', atLeast: 3 },
				{ question: 'act.minutes', atLeast: 30 },
				{ question: 'act.months', is: ['ge3'] }
			]
		},
		// Heart, blood vessel, metabolic or kidney disease (riebe2015).
		disease_cmr: { any: [heartKnown, condition('stroke', 'legartery', 'diabetes', 'kidney')] },
		any_condition: { any: [heartKnown, pressureKnown, condition(...conditions)] },
		two_conditions: {
			count: [heartKnown, pressureKnown, ...conditions.map((id) => condition(id))],
			reaches: 2
		}
	},
	gates: [
		{
			id: 'G-MINOR',
			when: { question: 'age.years', under: 18 },
			status: 'NOT_ELIGIBLE',
			basis: ['pssYp2021', form, 'gdpr']
		}
	],
	conflicts: [
		{
			id: 'C-MED-TOLD',
			when: {
				all: [{ question: 'meds.why', is: ['told'] }, { not: { fact: 'any_condition' } }]
			},
			fix: ['meds.why', 'heart.told', 'bp.told', 'cond.list']
		},
		{
			id: 'C-HARD-NONE',
			when: {
				all: [
					{ question: 'act.hard', is: ['yes'] },
					{ question: 'act.days', under: 1 }
				]
			},
			fix: ['act.hard', 'act.days']
		}
	],
	rules: [
		...outcomeRules,
		pulseOff('H-MEDS', 'medicine', perhapsYes('meds.rate'), [
			'acsmGuidelines',
			'diazBuschmann2014',
			'keteyian2023'
		]),
		pulseOff('H-HEART', 'condition', heartKnown, ['keteyian2023', 'commonPractice']),
		pulseOff('H-PREG', 'pregnancy', { question: 'preg.status', is: ['pregnant', 'private'] }, [
			'acog2020'
		]),
		pulseOff('H-DIABETES', 'condition', anyOf('cond.diabetes', 'harm'), ['colberg2016']),
		// Twice under 40 or over 100 at rest.
		pulseOff('H-REST', 'condition', { outside: 'resting-pulse' }, ['commonPractice'], true),
		{
			id: 'S-INACTIVE',
			does: 'start',
			when: { not: { fact: 'regular' } },
			startEffort: 'moderate',
			basis: ['riebe2015', 'franklin2020', 'usGuidelines2018']
		},
		{
			id: 'S-COND',
			does: 'start',
			when: { fact: 'any_condition' },
			startEffort: 'moderate',
			basis: [form]
		},
		{
			id: 'S-PREG',
			does: 'start',
			when: { question: 'preg.status', is: ['pregnant', 'baby', 'private'] },
			startEffort: 'moderate',
			basis: ['mottola2018', 'davenport2025']
		},
		{
			id: 'A-INHALER',
			does: 'advice',
			when: condition('lung'),
			basis: ['epaAir', 'commonPractice']
		},
		{ id: 'A-SUGAR', does: 'advice', when: perhapsYes('meds.sugar'), basis: ['kanaley2022'] },
		{
			id: 'A-HEAT',
			does: 'advice',
			when: {
				any: [
					perhapsYes('meds.rate'),
					perhapsYes('meds.long'),
					pressureKnown,
					{ fact: 'disease_cmr' },
					{ question: 'preg.status', is: ['pregnant'] },
					{ question: 'age.years', over: 64 }
				]
			},
			basis: ['heatMedicines', 'roberts2021']
		},
		{
			id: 'A-PREG',
			does: 'advice',
			when: { question: 'preg.status', is: ['pregnant'] },
			basis: ['acog2020']
		},
		{
			id: 'A-POSTNATAL',
			does: 'advice',
			when: { question: 'preg.status', is: ['baby'] },
			basis: ['davenport2025']
		}
	],
	outcomes: {
		CLEARED_ALL: { run: true, ceiling: 'vigorous' },
		CLEARED_WALK: { run: false, ceiling: 'moderate' },
		WAIT: { run: false, ceiling: 'none' },
		SEEK_ADVICE: { run: false, ceiling: 'none' },
		EMERGENCY: { run: false, ceiling: 'none' }
	},
	planLimits: {
		walk: { run: false, ceiling: 'moderate' },
		walkrun: { run: true, ceiling: 'vigorous' },
		hard: { run: true, ceiling: 'vigorous' }
	}
} satisfies Ruleset);
