import type { AmountUnit, FormulaUse } from '$lib/physiology/formulas.ts';
import type { LimitName } from '$lib/physiology/limits.ts';
import type { Tag } from '$lib/published/published-value.ts';
import { twoDigits, upToDecimals } from './numbers.ts';
import { plural } from './plural.ts';

const counted: Readonly<Record<AmountUnit, (amount: string) => string>> = {
	bpm: (amount) => `${amount} bpm`,
	'ml-kg-min': (amount) => `${amount} mL/kg/min`,
	percent: (amount) => `${amount} %`,
	points: (amount) => `${amount} points of 100`,
	share: (amount) => `${amount} %`,
	mets: (amount) => `${amount} METs`,
	'm-min': (amount) => `${amount} m/min`,
	'km-h': (amount) => `${amount} km/h`,
	pace: (amount) => `${amount}, each in its unit`,
	litres: (amount) => `${amount} L/min`,
	seconds: (amount) => `${amount} s`,
	beats: (amount) => `${amount} beats`,
	rating: (amount) => `${amount} of a step`,
	counts: (amount) => `${amount} counts`,
	answer: (amount) => amount
};

/** A share is shown as per cent. */
const inUnit = (amount: number, unit: AmountUnit) => (unit === 'share' ? 100 * amount : amount);

/** An error or a difference as a reader sees it: "11.4 bpm", "0.0048 %". */
export const amountText = (amount: number, unit: AmountUnit) =>
	counted[unit](twoDigits(inUnit(amount, unit)));

/** The error of a formula, with the digits that its source gives. */
export const errorText = (amount: number, unit: AmountUnit) =>
	counted[unit](upToDecimals(inUnit(amount, unit), 3));

export const checks = {
	title: 'How far our checks agree',
	lead: (values: number, sources: number) =>
		`The code is held beside ${values} values from ${sources} sources. This page works out each difference anew.`,
	seen: (values: number) => `${values} of them are printed in a source that we read.`,
	computed: (values: number) =>
		`${values} were worked out from the source’s own sum, outside of this code. They show that the code does what the sum says. They do not show that the sum is right for you.`,
	memory: (values: number) =>
		`${values} are quoted by others, or known by heart, and still to be looked up.`,
	all: 'All lie within what is allowed.',
	notAll: (rows: number) =>
		`In ${rows} rows one goes beyond what is allowed. Please tell whoever runs this app.`,
	caption: 'By formula, each row one source',
	columns: { source: 'Source', count: 'Values', difference: 'Largest difference' },
	allowed: (amount: string) => `of ${amount} allowed`,
	exactly: 'none allowed',
	allowedWhy:
		'Allowed is half of the last digit that the source prints. It is more only where two measured things are held side by side.',
	exact: 'none',
	how: {
		seen: 'printed there',
		secondary: 'quoted by others',
		memory: 'from memory',
		computed: 'worked out from its sum'
	} satisfies Readonly<Record<Tag, string>>,
	rest: (names: readonly string[]) =>
		`No published value is there for: ${names.join(', ').toLowerCase()}. They are checked beside another library, by rules that must hold, or by hand.`
};

export const formulasPage = {
	title: 'Every formula',
	lead: 'Each sum that the app works with: whom it was measured on, where it ends, and how far off it is.',
	uses: {
		band: 'For your bands',
		speed: 'For speed and fitness',
		expected: 'For the expected pulse',
		learned: 'Learned from your own outings',
		reading: 'For lessons and for reading studies',
		comparison: 'Only for comparison',
		tool: 'Tools'
	} satisfies Record<FormulaUse, string>,
	labels: {
		sum: 'In words',
		people: 'Measured on',
		holds: 'Holds',
		error: 'Typical error',
		range: 'Range',
		sources: 'Sources',
		checks: 'Checked by'
	},
	noSource: 'none: arithmetic or our own',
	checked: (values: number) => plural(values, { one: 'one value', other: `${values} values` }),
	notChecked: 'no published value',
	range: (low: number, high: number, unit: string) => `${low} to ${high} ${unit}`,
	rangeNames: {
		ageYears: 'age',
		restingBpm: 'resting pulse',
		maximumBpm: 'maximum',
		reserveBpm: 'reserve',
		pulseBpm: 'pulse',
		heightCentimetres: 'height',
		weightKilograms: 'weight',
		bodyMassIndex: 'body mass index',
		activityLevel: 'step of activity',
		capacity: 'fitness',
		walkingSpeedKmPerHour: 'walking',
		runningSpeedKmPerHour: 'running',
		inclinePercent: 'incline',
		pulseCountSeconds: 'length of a count',
		pulseCount: 'count',
		mileWalkMinutes: 'time for the mile',
		effort: 'effort',
		speechCount: 'count at rest'
	} satisfies Record<LimitName, string>,
	rangeUnits: {
		ageYears: 'years',
		restingBpm: 'bpm',
		maximumBpm: 'bpm',
		reserveBpm: 'bpm',
		pulseBpm: 'bpm',
		heightCentimetres: 'cm',
		weightKilograms: 'kg',
		bodyMassIndex: 'kg/m²',
		activityLevel: '',
		capacity: 'mL/kg/min',
		walkingSpeedKmPerHour: 'km/h',
		runningSpeedKmPerHour: 'km/h',
		inclinePercent: '%',
		pulseCountSeconds: 'seconds',
		pulseCount: 'beats',
		mileWalkMinutes: 'minutes',
		effort: '',
		speechCount: ''
	} satisfies Record<LimitName, string>
};
