import { concluded } from '../screening/concluded.ts';
import { evaluate } from '../screening/evaluate.ts';
import { rulesetById } from '../screening/rulesets/index.ts';
import type { Answers } from '../screening/types.ts';
import type { Decision } from './screenings.ts';

/** What the rules make of a form, worked out here and never taken from the browser. */
export function decide(answers: Answers, rulesetId: string): Decision {
	const ruleset = rulesetById(rulesetId);
	const evaluation = evaluate(ruleset, answers);
	if (evaluation.status === 'NOT_ELIGIBLE') return { kind: 'not-eligible' };
	const result = concluded(ruleset, answers);
	if (evaluation.status === 'INCOMPLETE' || result === null) return { kind: 'incomplete' };
	const pulseOff = evaluation.status === 'EMERGENCY' || evaluation.pulse === 'off';
	return { kind: 'result', result, pulseOff };
}
