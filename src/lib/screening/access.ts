import { refusals, type Reason } from './advice-in-force.ts';
import { localDate } from './calendar.ts';
import { closed, closedFor, type ClosedAccess } from './closed-access.ts';
import { openAccess, type OpenAccess } from './open-access.ts';
import * as now from './reasons-now.ts';
import { standingOf, type Standing } from './result-standing.ts';
import type { Ruleset } from './ruleset.ts';
import { strictestStatus } from './strictness.ts';
import type { Advice, HealthEvent, LocalDate, ScreeningResult } from './types.ts';

export { looserThan } from './looser-than.ts';
export { pickNewest } from './newest-result.ts';

export interface AccessInput extends now.SaidByRunner {
	/** The newest result, as `pickNewest` gives it. */
	readonly result: ScreeningResult | null;
	readonly consentGiven: boolean;
	readonly events: readonly HealthEvent[];
	readonly advice: readonly Advice[];
	/** The day of the second morning with a resting pulse out of range. */
	readonly restingAskFirstSince: LocalDate | null;
	/** True when the runner said today that they feel ill. It counts for today only. */
	readonly illToday?: boolean;
	/** True while new or growing pain stands that the runner has not said to be gone: no running. */
	readonly painStands?: boolean;
	/** Epoch milliseconds. */
	readonly now: number;
	/** IANA name of the zone where the runner is. */
	readonly timeZone: string;
	readonly currentRuleset: Ruleset;
}

export type Access = OpenAccess | ClosedAccess;

/**
 * The gate: what a runner may do at this moment. Everything that does not fit together closes it,
 * and nothing throws. Advice lifts only reasons; it never lifts an ended result, an emergency,
 * "not today" or a missing result.
 */
export function access(input: AccessInput): Access {
	try {
		return decide(input);
	} catch {
		return closed('RESCREEN');
	}
}

function decide(input: AccessInput): Access {
	const { result, currentRuleset } = input;
	if (input.consentGiven !== true) return closed('NO_RESULT');
	const today = localDate(input.now, input.timeZone);
	const standing = standingNow(result, currentRuleset, today);
	if (result === null || !standing.counts) {
		// The urgent sign is what matters first, whatever became of the result.
		const events = now.eventReasons(input.events, currentRuleset);
		const left = now.reasonsNow(events, input.advice, today);
		if (left.remaining.length > 0) return closedFor('SEEK_ADVICE', left, []);
		return closed(standing.counts ? 'NO_RESULT' : standing.code);
	}
	const { ruleset, lastDay } = standing;
	const reasons = [
		...now.eventReasons(input.events, ruleset),
		...now.resultReasons(result, ruleset, input, today),
		...(input.illToday ? now.illnessReasons(ruleset, today) : []),
		...restingReasonsOf(input, ruleset, today)
	];
	const left = now.reasonsNow(inRuleOrder(reasons, ruleset), input.advice, today);
	const refusing = refusals(input.advice, today);
	const status = strictestStatus([
		...left.remaining.flatMap(({ rule }) => (rule.does === 'outcome' ? [rule.outcome] : [])),
		...(refusing.length > 0 ? (['SEEK_ADVICE'] as const) : [])
	]);
	return status === 'CLEARED_ALL' || status === 'CLEARED_WALK'
		? openAccess({
				status,
				left,
				result,
				ruleset,
				lastDay,
				advice: input.advice,
				today,
				painStands: input.painStands ?? false
			})
		: closedFor(status, left, refusing);
}

/** What is not known, a date that was lost included, counts as out of range. */
function restingReasonsOf(
	{ restingAskFirstSince }: AccessInput,
	ruleset: Ruleset,
	today: LocalDate
): readonly Reason[] {
	if (restingAskFirstSince === null) return [];
	return now.restingReasons(ruleset, restingAskFirstSince ?? today);
}

type StandingNow = Standing | { readonly counts: false; readonly code: 'NO_RESULT' };

/** A rule set that was never published means: answer again. */
function standingNow(
	result: ScreeningResult | null,
	current: Ruleset,
	today: LocalDate
): StandingNow {
	if (result === null) return { counts: false, code: 'NO_RESULT' };
	try {
		return standingOf(result, current, today);
	} catch {
		return { counts: false, code: 'RESCREEN' };
	}
}

function inRuleOrder(reasons: readonly Reason[], { rules }: Ruleset): readonly Reason[] {
	return rules.flatMap(({ id }) => reasons.filter(({ rule }) => rule.id === id));
}
