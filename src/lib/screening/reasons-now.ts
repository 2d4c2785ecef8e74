import { lifts, type Reason } from './advice-in-force.ts';
import { compareDates } from './calendar.ts';
import { eventStands } from './event-stands.ts';
import type { OutcomeRule, PulseRule, Rule, Ruleset } from './ruleset.ts';
import type { Advice, HealthEvent, LocalDate, ScreeningResult } from './types.ts';

/** What stands in the way today, what advice took away, and which advices did. */
export interface ReasonsNow {
	readonly remaining: readonly Reason[];
	readonly covered: readonly Reason[];
	readonly lifting: readonly Advice[];
}

/** Takes away what advice covers. What remains is decided by the strictest. */
export function reasonsNow(
	reasons: readonly Reason[],
	advices: readonly Advice[],
	today: LocalDate
): ReasonsNow {
	const isLifted = (reason: Reason) => advices.some((advice) => lifts(advice, reason, today));
	const remaining = reasons.filter((reason) => !isLifted(reason));
	const stillThere = new Set(remaining.map(({ rule }) => rule));
	// Two events are one reason: it is covered when each of them is.
	const covered = reasons.filter((reason) => isLifted(reason) && !stillThere.has(reason.rule));
	const lifting = advices.filter((advice) =>
		reasons.some((reason) => lifts(advice, reason, today))
	);
	return { remaining, covered, lifting };
}

/** What the runner said after a form was finished. */
export interface SaidByRunner {
	/** The last day on which they said that they feel well again. */
	readonly wellAgainOn: LocalDate | null;
	/** The last day on which they said that their health or plan changed. */
	readonly changedOn: LocalDate | null;
}

/**
 * The reasons of a result. "Not today" ends once the runner said, on a later day, that it did. Advice
 * about something new has to be from the screening on; about anything else, but age, from the last
 * time on which the runner said that their health changed.
 */
export function resultReasons(
	result: ScreeningResult,
	ruleset: Ruleset,
	{ wellAgainOn, changedOn }: SaidByRunner,
	today: LocalDate
): readonly Reason[] {
	const since = result.completedOn;
	const isWellAgain =
		wellAgainOn !== null &&
		compareDates(wellAgainOn, since) > 0 &&
		compareDates(wellAgainOn, today) <= 0;
	return ruleset.rules
		.filter(isReason)
		.filter(({ id }) => result.reasons.includes(id))
		.filter(({ kind }) => kind !== 'wait' || !isWellAgain)
		.map((rule) => ({ rule, since: isNew(rule) ? since : rule.kind === 'age' ? null : changedOn }));
}

/** An urgent sign adds its reason to whatever the newest result says, until a doctor's advice. */
export function eventReasons(events: readonly HealthEvent[], ruleset: Ruleset): readonly Reason[] {
	const rules = rulesFor('urgent-event', ruleset);
	return events
		.filter(eventStands)
		.flatMap(({ happenedOn }) => rules.map((rule) => ({ rule, since: happenedOn })));
}

/** Two mornings with a resting pulse out of range, the second of them on this day. */
export function restingReasons(ruleset: Ruleset, since: LocalDate): readonly Reason[] {
	return rulesFor('resting-pulse', ruleset).map((rule) => ({ rule, since }));
}

/** What the runner said about today, before an outing. */
export function illnessReasons(ruleset: Ruleset, today: LocalDate): readonly Reason[] {
	return ruleset.rules
		.filter(isReason)
		.filter(({ kind }) => kind === 'wait')
		.map((rule) => ({ rule, since: today }));
}

const isNew = (rule: OutcomeRule | PulseRule) => rule.does === 'outcome' && rule.isNew;

function rulesFor(outside: string, ruleset: Ruleset): readonly (OutcomeRule | PulseRule)[] {
	return ruleset.rules
		.filter(isReason)
		.filter(({ when }) => 'outside' in when && when.outside === outside);
}

function isReason(rule: Rule): rule is OutcomeRule | PulseRule {
	return rule.does === 'outcome' || rule.does === 'pulse-off';
}
