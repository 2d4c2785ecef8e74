import { rulesetById } from './rulesets/index.ts';
import { plansStrictestFirst, severityOf } from './strictness.ts';
import type { ScreeningResult } from './types.ts';

const DAY_MS = 86_400_000;

type Compared = Pick<ScreeningResult, 'status' | 'reasons' | 'rulesetId' | 'plan'>;

/**
 * Whether one result opens more than another: a milder status, or the same status with a reason
 * gone or a harder plan. Care notes are no reasons. A rule set that is not known counts as looser, so it is asked.
 */
export function looserThan(one: Compared, other: Compared): boolean {
	const difference = severityOf(one.status) - severityOf(other.status);
	if (difference !== 0) return difference < 0;
	const isHarder = plansStrictestFirst.indexOf(one.plan) > plansStrictestFirst.indexOf(other.plan);
	return isHarder || reasonsOf(other).some((id) => !one.reasons.includes(id));
}

/** Whether the runner is asked what changed: a looser result within 24 hours of a stricter one. */
export function asksWhatChanged(
	newer: Compared & Pick<ScreeningResult, 'completedAt'>,
	older: Compared & Pick<ScreeningResult, 'completedAt'>
): boolean {
	return newer.completedAt - older.completedAt <= DAY_MS && looserThan(newer, older);
}

function reasonsOf(result: Compared): readonly string[] {
	try {
		const { rules } = rulesetById(result.rulesetId);
		const notes = rules.filter((rule) => rule.does === 'advice').map(({ id }) => id);
		return result.reasons.filter((id) => !notes.includes(id));
	} catch {
		return ['unknown rule set'];
	}
}
