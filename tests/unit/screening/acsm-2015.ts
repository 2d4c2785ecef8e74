import type { Answers, Ceiling } from '$lib/screening/types.ts';
import { steadyHeart } from './people.ts';

/*
 * The preparticipation logic of the American College of Sports Medicine, restated row by row.
 *
 * Riebe D, Franklin BA, Thompson PD, Garber CE, Whitfield GP, Magal M, Pescatello LS. Updating
 * ACSM's recommendations for exercise preparticipation health screening. Med Sci Sports Exerc
 * 2015;47(11):2473-2479, the figure with six leaves. Secondary: abstract seen, the leaves read in
 * several pages that restate them, and again in Franklin BA and others, Circulation
 * 2020;141:e705-e736. Here each leaf is opened out over the wanted effort, so that each row can be
 * a check.
 *
 * Regular exercise: planned, at least moderate, 30 minutes or more, 3 days a week or more, for 3
 * months or more. Disease: of heart or blood vessels, metabolic (diabetes type 1 or 2), or kidney.
 */

export interface AcsmRow {
	readonly row: string;
	readonly regular: boolean;
	readonly disease: boolean;
	readonly signs: boolean;
	readonly wanted: 'light' | 'moderate' | 'vigorous';
	/** Clearance in the last 12 months and no change since. */
	readonly clearedBefore: boolean;
	/** The most effort before further clearance. */
	readonly most: Ceiling;
}

function rows(
	first: number,
	regular: boolean,
	disease: boolean,
	signs: boolean,
	most: Ceiling
): readonly AcsmRow[] {
	return (['light', 'moderate', 'vigorous'] as const).map((wanted, place) => ({
		row: String(first + place),
		regular,
		disease,
		signs,
		wanted,
		clearedBefore: false,
		most
	}));
}

export const acsmTable: readonly AcsmRow[] = [
	// Not needed; begin light to moderate, may progress.
	...rows(1, false, false, false, 'moderate'),
	// Clearance before any exercise.
	...rows(4, false, false, true, 'none'),
	...rows(7, false, true, false, 'none'),
	...rows(10, false, true, true, 'none'),
	// Not needed; carry on, may progress.
	...rows(13, true, false, false, 'vigorous'),
	// Stop, and clearance first.
	...rows(16, true, false, true, 'none'),
	// Not needed for light to moderate; before vigorous, clearance in the last 12 months.
	...rows(19, true, true, false, 'moderate'),
	...rows(22, true, true, true, 'none'),
	{
		row: '24b',
		regular: true,
		disease: true,
		signs: false,
		wanted: 'vigorous',
		clearedBefore: true,
		most: 'vigorous'
	}
];

/** One person is regular; each of the others misses it by one part of the definition. */
export const regularPeople: readonly Answers[] = [
	{ 'act.days': 3, 'act.minutes': 30, 'act.months': 'ge3' }
];

export const notRegularPeople: readonly Answers[] = [
	{ 'act.days': 2, 'act.minutes': 60, 'act.months': 'ge3' },
	{ 'act.days': 7, 'act.minutes': 29, 'act.months': 'ge3' },
	{ 'act.days': 7, 'act.minutes': 60, 'act.months': 'lt3' }
];

/** Each disease of the definition, at its mildest: known, steady, every further answer reassuring. */
export const diseases: Readonly<Record<string, Answers>> = {
	heart: steadyHeart,
	'vessels of the brain': { 'cond.list': ['stroke'], 'cond.stroke': ['none'] },
	'vessels of the legs': { 'cond.list': ['legartery'] },
	'metabolic: diabetes': {
		'cond.list': ['diabetes'],
		'cond.diabetes': ['none'],
		'meds.sugar': 'no'
	},
	kidney: { 'cond.list': ['kidney'] }
};

/**
 * The nine signs and symptoms, and the answers that stand for each.
 *
 * ACSM's guidelines for exercise testing and prescription, 10th edition, chapter 2, table of major
 * signs and symptoms. Seen as an extract.
 */
export const nineSigns: Readonly<Record<string, readonly Answers[]>> = {
	'1 pain or discomfort in the chest that may be from the heart': [
		{ 'chest.pain': ['rest'] },
		{ 'chest.pain': ['daily'] },
		{ 'chest.pain': ['exercise'] }
	],
	'2 short of breath at rest or with mild effort': [{ 'signs.other': ['breathless'] }],
	'3 dizziness or fainting': [
		{ 'faint.year': 'yes' },
		{ 'dizzy.balance': 'yes', 'dizzy.breathing': 'no' }
	],
	'4 short of breath lying flat, or waking from it': [{ 'signs.other': ['lying'] }],
	'5 swelling of the ankles': [{ 'signs.other': ['ankles'] }],
	'6 palpitations or a fast beat': [{ 'signs.other': ['palpitations'] }],
	'7 leg pain when walking that eases at rest': [{ 'signs.other': ['legpain'] }],
	'8 known heart murmur': [{ 'signs.other': ['murmur'] }],
	'9 unusual fatigue or breathlessness with usual tasks': [{ 'signs.other': ['tired'] }]
};

/** Light and moderate are walking; vigorous is any running, which for a beginner is 6 METs or more. */
export const plansFor: Readonly<Record<AcsmRow['wanted'], readonly string[]>> = {
	light: ['walk'],
	moderate: ['walk'],
	vigorous: ['walkrun', 'hard']
};
