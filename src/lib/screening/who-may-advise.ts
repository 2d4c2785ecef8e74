import type { OutcomeRule, PulseRule } from './ruleset.ts';
import type { AdviceRole, ReasonKind } from './types.ts';

/**
 * Who may cover which kind of reason. Our own rule, common practice: a sign of illness needs a
 * doctor; the rest goes to those who treat it. Nobody can cover "not today": it ends by itself.
 */
export const whoMayAdvise: Readonly<Record<ReasonKind, readonly AdviceRole[]>> = {
	symptom: ['doctor'],
	condition: ['doctor', 'nurse'],
	injury: ['doctor', 'physiotherapist'],
	pregnancy: ['doctor', 'midwife'],
	age: ['doctor', 'nurse', 'physiotherapist', 'midwife', 'exercise-professional'],
	medicine: ['doctor', 'nurse', 'pharmacist'],
	wait: []
};

/** Who may set a limit in beats a minute. */
export const whoMaySetPulseLimit: readonly AdviceRole[] = ['doctor', 'nurse'];

/**
 * @example mayCover('nurse', 'condition') // true
 * @example mayCover('nurse', 'symptom') // false
 */
export function mayCover(role: AdviceRole, kind: ReasonKind): boolean {
	return whoMayAdvise[kind].includes(role);
}

/** An emergency never, and pulse numbers only where the rule says so. */
export function canBeLifted(rule: OutcomeRule | PulseRule): boolean {
	return rule.does === 'pulse-off' ? rule.untilAdvice : rule.outcome !== 'EMERGENCY';
}
