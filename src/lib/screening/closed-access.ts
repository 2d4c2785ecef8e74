import type { ReasonsNow } from './reasons-now.ts';
import type { AccessCode } from './types.ts';
import { liftableBy, type Liftable } from './liftable.ts';

/** Nothing may be shown. A closed gate carries no number. */
export interface ClosedAccess {
	readonly allowed: false;
	readonly code: Exclude<AccessCode, 'CLEARED_ALL' | 'CLEARED_WALK'>;
	/** Ids of the outcome rules that remain, in the order of the rule set. For the runner only. */
	readonly reasons: readonly string[];
	readonly coveredReasons: readonly string[];
	readonly urgent: boolean;
	readonly stopCurrent: boolean;
	/** For each remaining reason the roles that may cover it; none where only time helps. */
	readonly liftable: readonly Liftable[];
	/** Ids of advices that say "nothing yet". They close until they are removed or run out. */
	readonly closedByAdvice: readonly string[];
}

/** Closed with nothing to say but the code. */
export function closed(code: ClosedAccess['code']): ClosedAccess {
	return closedFor(code, { remaining: [], covered: [], lifting: [] }, []);
}

/** Closed by reasons, or by advice that says "nothing yet". */
export function closedFor(
	code: ClosedAccess['code'],
	{ remaining, covered }: ReasonsNow,
	closedByAdvice: readonly string[]
): ClosedAccess {
	const rules = remaining.flatMap(({ rule }) => (rule.does === 'outcome' ? [rule] : []));
	return {
		allowed: false,
		code,
		reasons: [...new Set(rules.map(({ id }) => id))],
		coveredReasons: [...new Set(covered.map(({ rule }) => rule.id))],
		urgent: rules.some(({ urgent }) => urgent),
		stopCurrent: rules.some(({ stopCurrent }) => stopCurrent),
		liftable: liftableBy(remaining.filter(({ rule }) => rule.does === 'outcome')),
		closedByAdvice
	};
}
