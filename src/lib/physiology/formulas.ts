import { MEASURED_ERROR_FRACTION } from './capacity.ts';
import type { LimitName } from './limits.ts';
import { AGE_MAXIMUM_SPREAD_BPM, TESTED_MAXIMUM_SPREAD_BPM } from './maximum.ts';
import { UPTAKE_ERROR_FRACTION } from './metabolic-cost.ts';
import { MILE_WALK_SPREAD } from './mile-walk.ts';
import { JACKSON_SPREAD } from './questions-capacity.ts';
import { MORNING_SPREAD_BPM } from './resting.ts';
import type { SourceId } from './sources.ts';

/** What an amount is counted in; the words for each live with the other words. */
export type AmountUnit =
	| 'bpm'
	| 'ml-kg-min'
	| 'percent'
	| 'points'
	| 'share'
	| 'mets'
	| 'm-min'
	| 'km-h'
	| 'pace'
	| 'litres'
	| 'seconds'
	| 'beats'
	| 'rating'
	| 'counts'
	| 'answer';

/** What a formula is for, in the order in which a reader meets them. */
export const formulaUses = [
	'band',
	'speed',
	'expected',
	'learned',
	'reading',
	'comparison',
	'tool'
] as const;

export type FormulaUse = (typeof formulaUses)[number];

/** What is known of a formula, as data. Its name and sentences live with the other words. */
export interface Formula {
	readonly use: FormulaUse;
	/** Names of the exported functions and tables that it is, the main one first. */
	readonly code: readonly string[];
	/** Empty where it is arithmetic, a definition or our own derivation: the words say which. */
	readonly sources: readonly SourceId[];
	/**
	 * One standard deviation of one person, and where it was found: null for our own working out or from
	 * memory. Null as a whole where none is known.
	 */
	readonly error: {
		readonly amount: number;
		readonly unit: AmountUnit;
		readonly source: SourceId | null;
	} | null;
	/** Whose studied range it keeps to, or else whose plausible one. */
	readonly limits: readonly LimitName[];
}

function formula(
	use: FormulaUse,
	code: string,
	sources: readonly SourceId[],
	error: readonly [number, AmountUnit, SourceId?] | null = null,
	limits: readonly LimitName[] = []
): Formula {
	return {
		use,
		code: code.split(' '),
		sources,
		error: error && { amount: error[0], unit: error[1], source: error[2] ?? null },
		limits
	};
}

/**
 * Every formula of this folder, in the order in which a reader meets them. The page about methods and
 * the table of published values both read it; a test holds that no exported function is left out, and
 * that a record says what the docstring says.
 */
export const formulas = {
	maximumByAge: formula(
		'band',
		'tanakaMaximum ageMaximum',
		['tanaka2001', 'sarzynski2013'],
		[AGE_MAXIMUM_SPREAD_BPM, 'bpm', 'sarzynski2013'],
		['ageYears']
	),
	maximumTested: formula(
		'band',
		'testedMaximum',
		[],
		[TESTED_MAXIMUM_SPREAD_BPM, 'bpm'],
		['maximumBpm']
	),
	maximumSeen: formula('band', 'withHighestSeen truncatedBelow', ['johnsonKotz1994'], null, [
		'pulseBpm'
	]),
	resting: formula(
		'band',
		'restingFromMornings meanOfMornings',
		['restingEcg2025', 'speed2023'],
		[MORNING_SPREAD_BPM, 'bpm', 'restingEcg2025'],
		['restingBpm']
	),
	reserve: formula(
		'band',
		'targetAtFraction reserveFractionOf reserveFractionAtMaximumFraction chanceOfAtLeast pulseAtReserve',
		['karvonen1957'],
		[7, 'bpm'],
		['reserveBpm']
	),
	talk: formula('band', 'sedentaryTalkStages usualTalkLevel', ['foster2009', 'quinn2011']),
	classes: formula('band', 'intensityOf intensityAmong intensityRange', ['garber2011', 'pag2018']),
	pulseCount: formula(
		'band',
		'pulseFromCount beatsIn pulseCountStep pulseCountSpread largestPulseCountSpread countedAs',
		[],
		null,
		['pulseCountSeconds']
	),
	countDelay: formula('band', 'countDelayError', ['barak2011', 'deVan2005']),
	uptake: formula(
		'speed',
		'oxygenUptake uptakePerSpeed speedForUptake gradeForUptake metsOf',
		['acsmMetabolic'],
		[UPTAKE_ERROR_FRACTION, 'share'],
		['walkingSpeedKmPerHour', 'runningSpeedKmPerHour', 'inclinePercent']
	),
	uptakeReserve: formula(
		'speed',
		'uptakeAtReserve reserveFractionOfUptake',
		['swain1998', 'swain1997'],
		[5, 'points'],
		['capacity']
	),
	reserveRelations: formula(
		'speed',
		'percentAlong relations',
		['swain1994', 'swain1997', 'swain1998', 'dalleck2006'],
		[5, 'points']
	),
	speed: formula('speed', 'speedForReserve', ['acsmMetabolic', 'swain1998'], null, [
		'walkingSpeedKmPerHour',
		'runningSpeedKmPerHour'
	]),
	capacityMeasured: formula(
		'speed',
		'measuredCapacity',
		['katch1982'],
		[MEASURED_ERROR_FRACTION, 'share', 'katch1982'],
		['capacity']
	),
	walkCheck: formula(
		'speed',
		'walkCheck leastSquaresLine lineStandardError',
		['acsmMetabolic', 'submaximalTextbooks', 'wang2021', 'jackson1990'],
		null,
		['walkingSpeedKmPerHour', 'inclinePercent', 'pulseBpm']
	),
	mileWalk: formula(
		'speed',
		'mileWalk',
		['kline1987', 'kellerThesis'],
		[MILE_WALK_SPREAD, 'ml-kg-min'],
		['weightKilograms', 'mileWalkMinutes', 'pulseBpm']
	),
	capacityFromQuestions: formula(
		'speed',
		'jacksonCapacity',
		['jackson1990'],
		[JACKSON_SPREAD, 'ml-kg-min', 'jackson1990'],
		['ageYears', 'bodyMassIndex', 'activityLevel']
	),
	steadyPulse: formula('expected', 'steadyPulse pulseSteps doubtfulSteadyPulse', [
		'karvonen1957',
		'acsmMetabolic',
		'swain1998'
	]),
	pulseCourse: formula(
		'expected',
		'pulseAfter secondsUntil pulseArea',
		['hunt2015', 'barak2011', 'wang2021', 'coyle2001'],
		[2.3, 'bpm', 'wang2021']
	),
	expectedPulse: formula(
		'expected',
		'pulseForecast pulseEdges expectedCurve expectedPeak expectedMean secondsBelow secondsByIntensity spreadOfDoubt doubtfulPulseAfter doubtfulPulseArea joinedAreas',
		['hunt2015', 'barak2011', 'karvonen1957', 'acsmMetabolic', 'garber2011']
	),
	steadyCycle: formula('expected', 'steadyCycle', ['hunt2015', 'barak2011']),
	longestRun: formula('expected', 'longestRun longestRunInCycle', ['hunt2015', 'barak2011']),
	shortestRecovery: formula('expected', 'shortestRecovery shortestRecoveryInCycle', [
		'hunt2015',
		'barak2011'
	]),
	oneBreath: formula(
		'reading',
		'countingShare countsToAimAt',
		['norman2001', 'norman2008', 'loose2012'],
		null,
		['speechCount']
	),
	growth: formula('reading', 'growthEvidence', ['nielsen2014', 'buist2008']),
	ratings: formula('reading', 'perceivedFromCategoryRatio categoryRatioFromPerceived', [
		'borgE2001'
	]),
	uptakeByCapacity: formula('reading', 'uptakePercentAt', ['swain1997', 'garber2011']),
	metsByAge: formula('reading', 'intensityOfMetsAtAge', ['garber2011'], null, ['ageYears']),
	maximumFox: formula(
		'comparison',
		'foxMaximum',
		['fox1971', 'robergs2002', 'sarzynski2013'],
		[12.4, 'bpm', 'sarzynski2013'],
		['ageYears']
	),
	maximumGellish: formula(
		'comparison',
		'gellishMaximum gellishRoundedMaximum gellishCurvedMaximum',
		['gellish2007', 'jackson2007'],
		null,
		['ageYears']
	),
	maximumGulati: formula('comparison', 'gulatiMaximum', ['gulati2010'], null, ['ageYears']),
	maximumNes: formula(
		'comparison',
		'nesMaximum',
		['nes2013'],
		[10.8, 'bpm', 'nes2013'],
		['ageYears']
	),
	bellCurve: formula(
		'tool',
		'standardNormalCdf standardNormalPdf standardNormalQuantile excessOfHazard',
		['abramowitzStegun1964', 'west2005', 'wichura1988']
	),
	units: formula(
		'tool',
		'metresPerMinuteFromKmPerHour kmPerHourFromMetresPerMinute metresPerMinuteFromMilesPerHour milesPerHourFromMetresPerMinute minutesPerKm minutesPerMile kilogramsFromPounds centimetresFromInches',
		['nistSp811']
	),
	rounding: formula('tool', 'roundHalfUp roundToStep', [])
} as const satisfies Record<string, Formula>;

export type FormulaId = keyof typeof formulas;

export const formulaIds = Object.keys(formulas) as readonly FormulaId[];
