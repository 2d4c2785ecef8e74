import { withinPlausible } from './limits.ts';
import { AGE_MAXIMUM_SPREAD_BPM, tanakaMaximum } from './maximum.ts';
import type { Seen, SourceId } from './sources.ts';

/** Other predictions of maximum pulse, shown beside Tanaka's on the methods page and used nowhere. */

/**
 * The oldest and best known: 220 less the age. Source fox1971; a line drawn by eye through about ten
 * reports, most on men under 55 (robergs2002). Reads high before 40 and low after. Error 12.4 bpm in
 * sedentary adults (sarzynski2013).
 * @throws RangeError for an age that nobody has
 * @example foxMaximum(40) // 180
 */
export function foxMaximum(ageYears: number): number {
	return 220 - plausibleAge(ageYears, 'foxMaximum');
}

/**
 * 211 less 0.64 of the age. Source nes2013: 3,320 healthy adults with a verified maximum, no
 * difference by sex or body mass. Error 10.8 bpm.
 * @throws RangeError for an age that nobody has
 * @example nesMaximum(40) // 185.4
 */
export function nesMaximum(ageYears: number): number {
	return 211 - 0.64 * plausibleAge(ageYears, 'nesMaximum');
}

/**
 * 206.9 less 0.67 of the age, the unrounded line printed in jackson2007. Source gellish2007: 132
 * people of 27 to 78 years followed through 908 tests. The small spread quoted with it is that of
 * the line, not of a person.
 * @throws RangeError for an age that nobody has
 * @example gellishMaximum(40) // 180.1
 */
export function gellishMaximum(ageYears: number): number {
	return 206.9 - 0.67 * plausibleAge(ageYears, 'gellishMaximum');
}

/**
 * 207 less 0.7 of the age, the same line as rounded in the abstract of gellish2007.
 * @throws RangeError for an age that nobody has
 * @example gellishRoundedMaximum(40) // 179
 */
export function gellishRoundedMaximum(ageYears: number): number {
	return 207 - 0.7 * plausibleAge(ageYears, 'gellishRoundedMaximum');
}

/**
 * 191.5 less 0.007 of the age squared, the curved form of gellish2007 as quoted second-hand. Same
 * people.
 * @throws RangeError for an age that nobody has
 * @example gellishCurvedMaximum(40) // 180.3
 */
export function gellishCurvedMaximum(ageYears: number): number {
	return 191.5 - 0.007 * plausibleAge(ageYears, 'gellishCurvedMaximum') ** 2;
}

/**
 * 206 less 0.88 of the age, for women. Source gulati2010: 5,437 women without symptoms, 35 and
 * older, in tests that stopped at symptoms, so it lies below a true maximum: nine beats at 40.
 * @throws RangeError for an age that nobody has
 * @example gulatiMaximum(40) // 170.8
 */
export function gulatiMaximum(ageYears: number): number {
	return 206 - 0.88 * plausibleAge(ageYears, 'gulatiMaximum');
}

export interface MaximumPrediction {
	readonly id: string;
	readonly predict: (ageYears: number) => number;
	/** Standard error for one person, or null where none is known. */
	readonly spreadBpm: number | null;
	readonly people: number | null;
	readonly source: SourceId;
	readonly seen: Seen;
}

/** All predictions in the order in which they were published, the one in use among them. */
export const maximumPredictions: readonly MaximumPrediction[] = [
	prediction('fox', foxMaximum, 12.4, null, 'fox1971', 'secondary'),
	prediction('tanaka', tanakaMaximum, AGE_MAXIMUM_SPREAD_BPM, 18712, 'tanaka2001', 'seen'),
	prediction('gellish', gellishMaximum, null, 132, 'gellish2007', 'seen'),
	prediction('gulati', gulatiMaximum, null, 5437, 'gulati2010', 'seen'),
	prediction('nes', nesMaximum, 10.8, 3320, 'nes2013', 'seen')
];

function prediction(
	id: string,
	predict: (ageYears: number) => number,
	spreadBpm: number | null,
	people: number | null,
	source: SourceId,
	seen: Seen
): MaximumPrediction {
	return { id, predict, spreadBpm, people, source, seen };
}

function plausibleAge(ageYears: number, caller: string): number {
	if (!withinPlausible('ageYears', ageYears)) {
		throw new RangeError(`${caller} requires an age from 0 to 120 years`);
	}
	return ageYears;
}
