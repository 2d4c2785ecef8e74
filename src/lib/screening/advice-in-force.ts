import { addDays, addMonths, compareDates, isLocalDate } from './calendar.ts';
import type { OutcomeRule, PulseRule } from './ruleset.ts';
import type { Advice, LocalDate, Plan } from './types.ts';
import { canBeLifted, mayCover, whoMaySetPulseLimit } from './who-may-advise.ts';

const ADVICE_MONTHS = 12;

/** Something that stands in the way, and the day from which advice about it counts; null: any. */
export interface Reason {
	readonly rule: OutcomeRule | PulseRule;
	readonly since: LocalDate | null;
}

/** The last day on which an advice counts. */
export function lastDayOf(advice: Advice): LocalDate {
	return addDays(addMonths(advice.givenOn, ADVICE_MONTHS), -1);
}

/** From the day it was given, for twelve calendar months. Advice with a future date waits. */
export function inForce(advice: Advice, today: LocalDate): boolean {
	return (
		isLocalDate(advice.givenOn) &&
		compareDates(advice.givenOn, today) <= 0 &&
		compareDates(today, lastDayOf(advice)) <= 0
	);
}

/**
 * Whether an advice takes a reason away: in force, a scope that opens something, the reason ticked
 * as covered, a role that may speak about it, and not older than what it has to be newer than.
 * An emergency and "not today" are never lifted, and pulse numbers only where the rule says so.
 */
export function lifts(advice: Advice, { rule, since }: Reason, today: LocalDate): boolean {
	return (
		canBeLifted(rule) &&
		inForce(advice, today) &&
		scopePlan(advice) !== null &&
		advice.covers.includes(rule.id) &&
		mayCover(advice.role, rule.kind) &&
		(since === null || isOnOrAfter(advice.givenOn, since))
	);
}

/** The most that an advice opens, or null where it opens nothing. */
export function scopePlan(advice: Advice): Plan | null {
	switch (advice.scope) {
		case 'walk':
		case 'walkrun':
			return advice.scope;
		case 'all':
			return 'hard';
		default:
			return null;
	}
}

/** Advice that says "walking only", whatever it was about. It holds until it is removed or runs out. */
export function walkOnlyAdvice(advices: readonly Advice[], today: LocalDate): readonly Advice[] {
	return advices.filter((advice) => advice.scope === 'walk' && inForce(advice, today));
}

/**
 * Ids of the advices that say "nothing yet". Each closes until it is removed or twelve months old,
 * whoever gave it; one with a date that cannot be read closes too.
 */
export function refusals(advices: readonly Advice[], today: LocalDate): readonly string[] {
	return advices
		.filter((advice) => scopePlan(advice) === null)
		.filter((advice) => !isLocalDate(advice.givenOn) || compareDates(today, lastDayOf(advice)) <= 0)
		.map(({ id }) => id);
}

/**
 * The limit in beats of the newest advice in force that names one, from somebody who may set it.
 * Of two on the same day the lower. Null where there is none.
 */
export function careTeamLimit(advices: readonly Advice[], today: LocalDate): number | null {
	let newest: Advice | null = null;
	for (const advice of advices) {
		if (!setsLimit(advice) || !inForce(advice, today)) continue;
		if (newest === null || isStricterLimit(advice, newest)) newest = advice;
	}
	return newest?.limitBpm ?? null;
}

function setsLimit(advice: Advice): boolean {
	return whoMaySetPulseLimit.includes(advice.role) && Number.isFinite(advice.limitBpm);
}

function isStricterLimit(advice: Advice, than: Advice): boolean {
	const order = compareDates(advice.givenOn, than.givenOn);
	return order > 0 || (order === 0 && Number(advice.limitBpm) < Number(than.limitBpm));
}

function isOnOrAfter(date: LocalDate, since: LocalDate): boolean {
	return isLocalDate(since) && compareDates(date, since) >= 0;
}
