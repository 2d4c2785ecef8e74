import type { ConditionFault } from './check-condition.ts';
import { sources } from './sources.ts';

/** Something that makes a rule set unsafe to use. */
export interface RulesetFault {
	/** The question, rule, fact, gate, conflict or rule set that is at fault. */
	readonly id: string;
	readonly fault:
		| ConditionFault
		| 'duplicate-id'
		| 'later-question'
		| 'missing-kind'
		| 'missing-outcome'
		| 'missing-basis'
		| 'unknown-source'
		| 'no-way-to-say-none'
		| 'unknown-safe-answer'
		| 'empty-range'
		| 'bad-version'
		/** No rule stands for an urgent event, or for a resting pulse out of range. */
		| 'nothing-outside';
}

/** Every question and rule says what it rests on. */
export function basisFaults(id: string, basis: readonly string[]): readonly RulesetFault[] {
	if (basis.length === 0) return [{ id, fault: 'missing-basis' }];
	const known = basis.every((source) => Object.hasOwn(sources, source));
	return known ? [] : [{ id, fault: 'unknown-source' }];
}
