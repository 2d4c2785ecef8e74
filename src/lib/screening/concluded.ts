import { holds } from './conditions.ts';
import { evaluate } from './evaluate.ts';
import type { Ruleset } from './ruleset.ts';
import type { Answers, Plan, ScreeningResult } from './types.ts';
import { answerIssue } from './validate-answer.ts';

/** The part of a result that comes from the answers. The rest is who, when and where. */
export type Concluded = Omit<
	ScreeningResult,
	'id' | 'completedAt' | 'completedOn' | 'timeZone' | 'invalidatedAt'
>;

/**
 * What is kept of a finished form, before its answers are deleted.
 *
 * @returns null where there is nothing to keep: not finished, not for adults, or an emergency on a
 *   form whose kept facts were not all answered. An emergency always leaves an event as well.
 */
export function concluded(ruleset: Ruleset, answers: Answers): Concluded | null {
	const evaluation = evaluate(ruleset, answers);
	if (evaluation.status === 'INCOMPLETE' || evaluation.status === 'NOT_ELIGIBLE') return null;
	const { kept } = ruleset;
	const isKnown = Object.values(kept).every((id) => {
		const question = ruleset.questions.find((one) => one.id === id);
		return question !== undefined && answerIssue(question, answers[id]) === null;
	});
	const isShut = ruleset.gates.some(({ when }) => holds(when, ruleset, answers));
	if (!isKnown || isShut) return null;
	return {
		rulesetId: ruleset.id,
		rulesetVersion: ruleset.version,
		status: evaluation.status,
		reasons: evaluation.reasons,
		plan: answers[kept.plan] as Plan,
		ageYears: Number(answers[kept.ageYears]),
		activity: {
			days: Number(answers[kept.days]),
			minutes: Number(answers[kept.minutes]),
			months: answers[kept.months] as ScreeningResult['activity']['months'],
			hard: answers[kept.hard] as ScreeningResult['activity']['hard']
		}
	};
}
