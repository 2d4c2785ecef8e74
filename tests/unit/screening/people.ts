import { concluded } from '$lib/screening/concluded.ts';
import { evaluate } from '$lib/screening/evaluate.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { Advice, Answers, HealthEvent, ScreeningResult } from '$lib/screening/types.ts';
import type { AccessInput } from '$lib/screening/access.ts';
import { nothingFlagged } from './worked-cases.ts';

/** The person with nothing flagged, but for these answers. */
export function person(change: Answers = {}): Answers {
	return { ...nothingFlagged, ...change };
}

/** New to exercise. */
export const inactive: Answers = {
	'act.days': 1,
	'act.minutes': 20,
	'act.months': 'lt3',
	'act.hard': 'no'
};

export const steadyHeart: Answers = {
	'heart.told': 'yes',
	'heart.hard': 'no',
	'heart.rhythm': 'no',
	'heart.failure': 'no',
	'heart.quiet2m': 'no'
};

export function outcomeOf(change: Answers) {
	return evaluate(currentRuleset, person(change));
}

/** A stored result of this person, completed at noon in Dublin on 24 November 2026. */
export function resultOf(
	change: Answers = {},
	more: Partial<ScreeningResult> = {}
): ScreeningResult {
	const kept = concluded(currentRuleset, person(change));
	if (kept === null) throw new RangeError('resultOf requires answers that lead to a result');
	return {
		...kept,
		id: 'result',
		completedAt: Date.parse('2026-11-24T12:00:00Z'),
		completedOn: '2026-11-24',
		timeZone: 'Europe/Dublin',
		invalidatedAt: null,
		...more
	};
}

export function adviceOf(covers: readonly string[], more: Partial<Advice> = {}): Advice {
	return {
		id: 'advice',
		givenOn: '2026-11-28',
		role: 'doctor',
		scope: 'all',
		covers,
		limitBpm: null,
		recordedAt: Date.parse('2026-11-28T12:00:00Z'),
		...more
	};
}

export function eventOn(happenedOn: string, more: Partial<HealthEvent> = {}): HealthEvent {
	const happenedAt = Date.parse(`${happenedOn}T12:00:00Z`);
	return { id: `event ${happenedOn}`, happenedAt, happenedOn, withdrawnAt: null, ...more };
}

/** Everything in order, on 1 December 2026 in Dublin, a week after the result. */
export function asked(
	result: ScreeningResult | null,
	more: Partial<AccessInput> = {}
): AccessInput {
	return {
		result,
		consentGiven: true,
		events: [],
		advice: [],
		wellAgainOn: null,
		restingAskFirstSince: null,
		changedOn: null,
		now: Date.parse('2026-12-01T12:00:00Z'),
		timeZone: 'Europe/Dublin',
		currentRuleset,
		...more
	};
}
