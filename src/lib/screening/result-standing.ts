import { addDays, addMonths, compareDates, isLocalDate, localDate } from './calendar.ts';
import { holds, questionsIn } from './conditions.ts';
import type { Ruleset } from './ruleset.ts';
import { rulesetById } from './rulesets/index.ts';
import { strictestStatus } from './strictness.ts';
import type { Answers, LocalDate, ScreeningResult } from './types.ts';
import { answerIssue } from './validate-answer.ts';

/** Whether a stored result still counts on a day, and under which rules it was made. */
export type Standing =
	| { readonly counts: true; readonly ruleset: Ruleset; readonly lastDay: LocalDate }
	| { readonly counts: false; readonly code: 'EXPIRED' | 'RESCREEN' };

/**
 * A result counts from its own date for so many calendar months, as long as nobody said that
 * something changed, its rule set is published and of the current major version, and what it holds
 * agrees with itself. A day before its date means that a clock was set back, and closes too.
 *
 * @throws RangeError for a rule set that was never published
 */
export function standingOf(result: ScreeningResult, current: Ruleset, today: LocalDate): Standing {
	const ruleset = result.rulesetId === current.id ? current : rulesetById(result.rulesetId);
	const again: Standing = { counts: false, code: 'RESCREEN' };
	if (majorOf(result.rulesetVersion) !== majorOf(current.version)) return again;
	if (result.invalidatedAt !== null || !isLocalDate(result.completedOn)) return again;
	const lastDay = addDays(addMonths(result.completedOn, ruleset.validMonths), -1);
	if (compareDates(today, result.completedOn) < 0 || compareDates(today, lastDay) > 0) {
		return { counts: false, code: 'EXPIRED' };
	}
	return agrees(result, ruleset) ? { counts: true, ruleset, lastDay } : again;
}

function majorOf(version: string): number {
	const major = /^(\d+)\.\d+\.\d+/.exec(version)?.[1];
	if (major === undefined) throw new RangeError(`a version requires three numbers, not ${version}`);
	return Number(major);
}

/** A result that could not have come out of its own rules was changed by somebody else. */
function agrees(result: ScreeningResult, ruleset: Ruleset): boolean {
	const known = new Set(ruleset.rules.map(({ id }) => id));
	const fired = ruleset.rules.filter(({ id }) => result.reasons.includes(id));
	const outcomes = fired.filter((rule) => rule.does === 'outcome').map((rule) => rule.outcome);
	return (
		localDate(result.completedAt, result.timeZone) === result.completedOn &&
		result.reasons.every((id) => known.has(id)) &&
		!fired.some(({ when }) => 'outside' in when) &&
		strictestStatus(outcomes) === result.status &&
		(result.status === 'EMERGENCY' || keptFactsAgree(result, ruleset))
	);
}

/** Runs again the rules and gates that need nothing but the facts that were kept. */
function keptFactsAgree(result: ScreeningResult, ruleset: Ruleset): boolean {
	const { kept } = ruleset;
	const { days, minutes, months, hard } = result.activity;
	const facts: Answers = {
		[kept.ageYears]: result.ageYears,
		[kept.plan]: result.plan,
		[kept.days]: days,
		[kept.minutes]: minutes,
		[kept.months]: months,
		[kept.hard]: hard
	};
	const decided = ruleset.rules.filter(({ when }) =>
		[...questionsIn(when, ruleset)].every((question) => Object.hasOwn(facts, question))
	);
	const isAnswered = ([id, fact]: readonly [string, unknown]) => {
		const question = ruleset.questions.find((one) => one.id === id);
		return question !== undefined && answerIssue(question, fact) === null;
	};
	return (
		Object.entries(facts).every(isAnswered) &&
		ruleset.gates.every(({ when }) => !holds(when, ruleset, facts)) &&
		decided.every(({ id, when }) => holds(when, ruleset, facts) === result.reasons.includes(id))
	);
}
