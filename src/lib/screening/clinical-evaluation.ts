import type { Rule, Ruleset } from './ruleset.ts';
import { strictestCeiling, strictestStatus } from './strictness.ts';
import type { Ceiling, ClinicalStatus, Plan } from './types.ts';

export interface ClinicalEvaluation {
	readonly status: Exclude<ClinicalStatus, 'EMERGENCY'>;
	/** Every rule that fired, outcome or not, in the order of the rule set. */
	readonly reasons: readonly string[];
	/** Whether numbers in beats could be shown, if the gate opens. */
	readonly pulse: 'on' | 'off';
	readonly pulseReasons: readonly string[];
	readonly startEffort: Ceiling;
	/** Ids of care notes. */
	readonly advice: readonly string[];
	readonly run: boolean;
	readonly ceiling: Ceiling;
	/** Advice is needed on the same day. */
	readonly urgent: boolean;
	readonly stopCurrent: boolean;
}

/**
 * What the rules that fired lead to together: the strictest decides, and every id is kept.
 *
 * @throws RangeError for an emergency, which is settled before anything else is looked at
 */
export function clinicalEvaluation(
	ruleset: Ruleset,
	fired: readonly Rule[],
	plan: Plan
): ClinicalEvaluation {
	const outcomes = fired.filter((rule) => rule.does === 'outcome');
	const status = strictestStatus(outcomes.map((rule) => rule.outcome));
	if (status === 'EMERGENCY') {
		throw new RangeError('clinicalEvaluation requires that emergencies are settled before');
	}
	const [byStatus, byPlan] = [ruleset.outcomes[status], ruleset.planLimits[plan]];
	const ceiling = strictestCeiling([byStatus.ceiling, byPlan.ceiling]);
	const starts = fired.filter((rule) => rule.does === 'start').map((rule) => rule.startEffort);
	const pulseReasons = idsOf(fired.filter((rule) => rule.does === 'pulse-off'));
	return {
		status,
		reasons: idsOf(fired),
		pulse: pulseReasons.length > 0 ? 'off' : 'on',
		pulseReasons,
		startEffort: strictestCeiling([ceiling, ...starts]),
		advice: idsOf(fired.filter((rule) => rule.does === 'advice')),
		run: byStatus.run && byPlan.run,
		ceiling,
		urgent: outcomes.some((rule) => rule.urgent),
		stopCurrent: outcomes.some((rule) => rule.stopCurrent)
	};
}

export function idsOf(rules: readonly { readonly id: string }[]): readonly string[] {
	return rules.map(({ id }) => id);
}
