import type { Answers } from '$lib/screening/types.ts';
import { inactive, steadyHeart } from './people.ts';

/**
 * Every answer that must set off a rule, given by the person with nothing flagged. Written from the
 * topics of the published sources that the rules name, not from the rules. Where a topic has several
 * answers each has a row. Common practice, no source: time limits, and "not sure" counts as the
 * careful answer (the Canadian Society for Exercise Physiology tells people to tick yes if unsure).
 */
export const firingAnswers: readonly (readonly [rule: string, change: Answers])[] = [
	...['chest', 'breath', 'faint', 'stroke', 'heart'].map(
		(sign) => ['R-NOW', { 'now.urgent': [sign] }] as const
	),
	['R-CHEST-REST', { 'chest.pain': ['rest'] }],
	['R-CHEST-DAILY', { 'chest.pain': ['daily'] }],
	['R-CHEST-EXERCISE', { 'chest.pain': ['exercise'] }],
	['R-CHEST-EXERCISE', { 'chest.pain': ['rest', 'exercise'] }],
	['R-FAINT', { 'faint.year': 'yes' }],
	['R-FAINT', { 'faint.year': 'not_sure' }],
	['R-DIZZY', { 'dizzy.balance': 'yes', 'dizzy.breathing': 'no' }],
	['R-DIZZY', { 'dizzy.balance': 'yes', 'dizzy.breathing': 'not_sure' }],
	['R-DIZZY', { 'dizzy.balance': 'not_sure', 'dizzy.breathing': 'no' }],
	['R-SIGN-BREATH', { 'signs.other': ['breathless'] }],
	['R-SIGN-BREATH', { 'signs.other': ['lying'] }],
	['R-SIGN-ANKLES', { 'signs.other': ['ankles'] }],
	['R-SIGN-BEAT', { 'signs.other': ['palpitations'] }],
	['R-SIGN-LEG', { 'signs.other': ['legpain'] }],
	['R-SIGN-MURMUR', { 'signs.other': ['murmur'] }],
	['R-SIGN-TIRED', { 'signs.other': ['tired'] }],
	...['heart.hard', 'heart.rhythm', 'heart.failure', 'heart.quiet2m'].flatMap((question) =>
		['yes', 'not_sure'].map(
			(answer) => ['R-HEART-FU', { ...steadyHeart, [question]: answer }] as const
		)
	),
	['R-CMR-INACTIVE', { ...steadyHeart, ...inactive }],
	['R-CMR-INACTIVE', { 'cond.list': ['legartery'], 'act.days': 2 }],
	['R-CMR-INACTIVE', { 'cond.list': ['legartery'], 'act.minutes': 29 }],
	['R-CMR-INACTIVE', { 'cond.list': ['legartery'], 'act.months': 'lt3' }],
	['R-CMR-ACTIVE', steadyHeart],
	['R-CMR-ACTIVE', { ...steadyHeart, 'heart.told': 'not_sure' }],
	['R-CMR-ACTIVE', { 'cond.list': ['legartery'], 'act.days': 3, 'act.minutes': 30 }],
	['R-BP-HIGH', { 'bp.told': 'yes', 'bp.hard': 'yes', 'bp.last': 'under' }],
	['R-BP-HIGH', { 'bp.told': 'yes', 'bp.hard': 'not_sure', 'bp.last': 'under' }],
	['R-BP-HIGH', { 'bp.told': 'yes', 'bp.hard': 'no', 'bp.last': 'over' }],
	['R-BP-HIGH', { 'bp.told': 'not_sure', 'bp.hard': 'no', 'bp.last': 'dont_know' }],
	...['six', 'walk', 'hard'].map(
		(tick) => ['R-STROKE', { 'cond.list': ['stroke'], 'cond.stroke': [tick] }] as const
	),
	...['control', 'low', 'harm'].map(
		(tick) =>
			[
				'R-DIABETES',
				{ 'cond.list': ['diabetes'], 'cond.diabetes': [tick], 'meds.sugar': 'no' }
			] as const
	),
	...['hard', 'oxygen', 'often', 'attack', 'lungbp'].map(
		(tick) => ['R-LUNG', { 'cond.list': ['lung'], 'cond.lung': [tick] }] as const
	),
	...['now', 'type'].map(
		(tick) => ['R-CANCER', { 'cond.list': ['cancer'], 'cond.cancer': [tick] }] as const
	),
	...['hard', 'break', 'steroid'].map(
		(tick) => ['R-BONE', { 'cond.list': ['bone'], 'cond.bone': [tick] }] as const
	),
	...['hard', 'lowbp', 'spikes'].map(
		(tick) => ['R-SPINE', { 'cond.list': ['spine'], 'cond.spine': [tick] }] as const
	),
	...['hard', 'neck'].map(
		(tick) => ['R-MENTAL', { 'cond.list': ['mental'], 'cond.mental': [tick] }] as const
	),
	...['kidney', 'nerve', 'other'].map(
		(condition) => ['R-COND-OTHER', { 'cond.list': [condition] }] as const
	),
	['R-COND-MULTI', { 'cond.list': ['lung', 'bone'], 'cond.lung': ['none'], 'cond.bone': ['none'] }],
	['R-COND-MULTI', { ...steadyHeart, 'bp.told': 'yes', 'bp.hard': 'no', 'bp.last': 'under' }],
	['R-COND-MULTI', { ...steadyHeart, 'cond.list': ['cancer'], 'cond.cancer': ['none'] }],
	['R-MED-UNTOLD', { 'meds.long': 'yes', 'meds.why': 'untold' }],
	['R-MED-UNTOLD', { 'meds.long': 'not_sure', 'meds.why': 'not_sure' }],
	['R-MED-UNTOLD', { 'meds.rate': 'yes', 'meds.why': 'untold' }],
	['R-JOINT-NERVES', { 'joint.sore': 'yes', 'joint.now': ['nerves'] }],
	...['limits', 'weight', 'break'].map(
		(tick) => ['R-JOINT', { 'joint.sore': 'not_sure', 'joint.now': [tick] }] as const
	),
	['R-SUPERVISED', { 'limits.set': ['watched'] }],
	['R-TOLD-LIMIT', { 'limits.set': ['avoid'] }],
	...['surgery', 'hospital', 'head'].map(
		(tick) => ['R-RECENT', { 'recent.event': [tick] }] as const
	),
	['R-PREG-ASK', { 'preg.status': 'pregnant', 'preg.ok': 'no' }],
	['R-PREG-ASK', { 'preg.status': 'baby', 'preg.ok': 'not_sure' }],
	['R-PREG-WALK', { 'preg.status': 'pregnant', 'preg.ok': 'walk' }],
	['R-PREG-WALK', { 'preg.status': 'private', 'preg.ok': 'private' }],
	['R-ILL-HEART', { 'ill.heart': 'yes' }],
	['R-ILL-HEART', { 'ill.heart': 'not_sure' }],
	['R-ILL', { 'ill.today': 'yes' }],
	['R-ILL', { 'ill.today': 'not_sure' }],
	['R-AGE-45', { 'age.years': 46, 'act.hard': 'no' }],
	['R-AGE-45', { 'age.years': 46, 'act.hard': 'not_sure', 'plan.effort': 'hard' }],
	['R-AGE-70', { 'age.years': 70, ...inactive, 'act.hard': 'yes' }],
	['H-MEDS', { 'meds.rate': 'yes', 'meds.why': 'minor' }],
	['H-MEDS', { 'meds.rate': 'not_sure', 'meds.why': 'minor' }],
	['H-HEART', steadyHeart],
	['H-PREG', { 'preg.status': 'pregnant', 'preg.ok': 'run' }],
	['H-PREG', { 'preg.status': 'private', 'preg.ok': 'run' }],
	['H-DIABETES', { 'cond.list': ['diabetes'], 'cond.diabetes': ['harm'], 'meds.sugar': 'no' }],
	['S-INACTIVE', { 'act.days': 2 }],
	['S-INACTIVE', { 'act.minutes': 29 }],
	['S-INACTIVE', { 'act.months': 'lt3' }],
	['S-COND', { 'bp.told': 'yes', 'bp.hard': 'no', 'bp.last': 'under' }],
	['S-COND', { 'cond.list': ['lung'], 'cond.lung': ['none'] }],
	['S-PREG', { 'preg.status': 'baby', 'preg.ok': 'run' }],
	['A-INHALER', { 'cond.list': ['lung'], 'cond.lung': ['none'] }],
	['A-SUGAR', { 'cond.list': ['diabetes'], 'cond.diabetes': ['none'], 'meds.sugar': 'not_sure' }],
	['A-HEAT', { 'meds.long': 'yes', 'meds.why': 'minor' }],
	['A-HEAT', { 'age.years': 65 }],
	['A-HEAT', { 'preg.status': 'pregnant', 'preg.ok': 'run' }],
	['A-PREG', { 'preg.status': 'pregnant', 'preg.ok': 'run' }],
	['A-POSTNATAL', { 'preg.status': 'baby', 'preg.ok': 'run' }]
];

/** Answers close by that must not set the rule off. */
export const quietAnswers: readonly (readonly [rule: string, change: Answers])[] = [
	['R-DIZZY', { 'dizzy.balance': 'yes', 'dizzy.breathing': 'yes' }],
	['R-CMR-INACTIVE', { 'cond.list': ['legartery'], 'act.days': 3, 'act.minutes': 30 }],
	['R-CMR-ACTIVE', { 'cond.list': ['legartery'], 'act.minutes': 29 }],
	['R-CMR-INACTIVE', { ...inactive, 'cond.list': ['lung'], 'cond.lung': ['none'] }],
	['R-BP-HIGH', { 'bp.told': 'yes', 'bp.hard': 'no', 'bp.last': 'under' }],
	['R-COND-OTHER', { 'cond.list': ['cancer'], 'cond.cancer': ['none'] }],
	['R-COND-MULTI', { 'cond.list': ['cancer'], 'cond.cancer': ['none'] }],
	['R-MED-UNTOLD', { 'meds.long': 'yes', 'meds.why': 'minor' }],
	['R-JOINT', { 'joint.sore': 'yes', 'joint.now': ['none'] }],
	['R-JOINT', { 'joint.sore': 'yes', 'joint.now': ['nerves'] }],
	['R-PREG-ASK', { 'preg.status': 'pregnant', 'preg.ok': 'run' }],
	['R-PREG-WALK', { 'preg.status': 'pregnant', 'preg.ok': 'run' }],
	['R-AGE-45', { 'age.years': 45, 'act.hard': 'no' }],
	['R-AGE-45', { 'age.years': 46, 'act.hard': 'yes' }],
	['R-AGE-45', { 'age.years': 80, 'act.hard': 'no', 'plan.effort': 'walk' }],
	['R-AGE-70', { ...inactive, 'age.years': 69 }],
	['R-AGE-70', { 'age.years': 70 }],
	['R-AGE-70', { ...inactive, 'age.years': 90, 'plan.effort': 'walk' }],
	['H-PREG', { 'preg.status': 'baby', 'preg.ok': 'run' }],
	['H-DIABETES', { 'cond.list': ['diabetes'], 'cond.diabetes': ['low'], 'meds.sugar': 'yes' }],
	['S-INACTIVE', { 'act.days': 3, 'act.minutes': 30 }],
	['A-HEAT', { 'age.years': 64 }],
	['A-HEAT', { 'preg.status': 'baby', 'preg.ok': 'run' }],
	['A-SUGAR', { 'cond.list': ['diabetes'], 'cond.diabetes': ['low'], 'meds.sugar': 'no' }]
];
