import { careTeamLimit, lastDayOf, scopePlan, walkOnlyAdvice } from './advice-in-force.ts';
import { compareDates } from './calendar.ts';
import type { ReasonsNow } from './reasons-now.ts';
import type { Ruleset } from './ruleset.ts';
import { strictestCeiling, strictestPlan, strictestStatus } from './strictness.ts';
import type { Advice, Ceiling, LocalDate, Plan, ScreeningResult } from './types.ts';
import { liftableBy, type Liftable } from './liftable.ts';

export interface OpenAccess {
	readonly allowed: true;
	readonly status: 'CLEARED_ALL' | 'CLEARED_WALK';
	/** False for may walk, and for whoever plans to walk only. */
	readonly run: boolean;
	readonly ceiling: Ceiling;
	readonly startEffort: Ceiling;
	readonly pulse:
		| { readonly on: true; readonly careTeamLimitBpm: number | null }
		| {
				readonly on: false;
				readonly reasons: readonly string[];
				/** The only pulse that may be shown while pulse is off. */
				readonly careTeamLimitBpm: number | null;
		  };
	/** Every rule that still stands, outcome or not, in the order of the rule set. */
	readonly reasons: readonly string[];
	readonly coveredReasons: readonly string[];
	/** For each outcome and pulse reason that remains, the roles that may cover it. */
	readonly liftable: readonly Liftable[];
	/** Ids of care notes. */
	readonly advice: readonly string[];
	/** The last day on which all this holds: the result's last, or an earlier end of advice. */
	readonly validUntil: LocalDate;
	/** The last day of the result itself. */
	readonly resultUntil: LocalDate;
	readonly startedOn: LocalDate;
	readonly ageYears: number;
	/** What the runner planned, cut to what advice allowed. */
	readonly plan: Plan;
	/** True where advice on file, and not the answers, says walking only. */
	readonly walkOnlyByAdvice: boolean;
	/** True where new or growing pain, and nothing else, stops the runs until it is gone. */
	readonly walkOnlyByPain: boolean;
}

interface Opened {
	readonly status: OpenAccess['status'];
	readonly left: ReasonsNow;
	readonly result: ScreeningResult;
	readonly ruleset: Ruleset;
	readonly lastDay: LocalDate;
	readonly advice: readonly Advice[];
	readonly today: LocalDate;
	readonly painStands: boolean;
}

/** How far the gate opens: the strictest of result, plan, and the advices that lifted something. */
export function openAccess(opened: Opened): OpenAccess {
	const { left, result, ruleset, lastDay } = opened;
	const scopes = left.lifting.flatMap((advice) => scopePlan(advice) ?? []);
	const plan = strictestPlan(result.plan, scopes);
	const walkOnly = walkOnlyAdvice(opened.advice, opened.today);
	const withoutPain =
		walkOnly.length > 0 ? strictestStatus([opened.status, 'CLEARED_WALK']) : opened.status;
	const status = opened.painStands ? strictestStatus([withoutPain, 'CLEARED_WALK']) : withoutPain;
	const byStatus = ruleset.outcomes[status];
	const byPlan = ruleset.planLimits[plan];
	const ceiling = strictestCeiling([byStatus.ceiling, byPlan.ceiling]);
	const standing = standingRules(opened);
	const runsWithoutPain = ruleset.outcomes[withoutPain].run && byPlan.run;
	return {
		allowed: true,
		status: status === 'CLEARED_WALK' ? 'CLEARED_WALK' : 'CLEARED_ALL',
		run: byStatus.run && byPlan.run,
		ceiling,
		startEffort: strictestCeiling([ceiling, ...startsOf(opened)]),
		pulse: pulseOf(opened),
		reasons: standing.map(({ id }) => id),
		coveredReasons: [...new Set(left.covered.map(({ rule }) => rule.id))],
		liftable: liftableBy(left.remaining),
		advice: standing.filter((rule) => rule.does === 'advice').map(({ id }) => id),
		validUntil: [...left.lifting, ...walkOnly].map(lastDayOf).reduce(earlier, lastDay),
		resultUntil: lastDay,
		walkOnlyByAdvice: walkOnly.length > 0 && opened.status === 'CLEARED_ALL',
		walkOnlyByPain: opened.painStands && runsWithoutPain,
		startedOn: result.completedOn,
		ageYears: result.ageYears,
		plan
	};
}

function pulseOf({ left, advice, today }: Opened): OpenAccess['pulse'] {
	const reasons = left.remaining
		.filter(({ rule }) => rule.does === 'pulse-off')
		.map(({ rule }) => rule.id);
	const careTeamLimitBpm = careTeamLimit(advice, today);
	return reasons.length > 0
		? { on: false, reasons, careTeamLimitBpm }
		: { on: true, careTeamLimitBpm };
}

function standingRules({ left, result, ruleset }: Opened) {
	const remaining = new Set(left.remaining.map(({ rule }) => rule.id));
	return ruleset.rules.filter(({ id, does }) =>
		does === 'start' || does === 'advice' ? result.reasons.includes(id) : remaining.has(id)
	);
}

/** Whoever was told to stop begins at moderate, whatever advice then allowed. Our own caution. */
function startsOf({ left, result, ruleset }: Opened): readonly Ceiling[] {
	const wereStopped = left.covered.some(({ rule }) => rule.does === 'outcome' && rule.stopCurrent);
	const starts = ruleset.rules.flatMap((rule) =>
		rule.does === 'start' && result.reasons.includes(rule.id) ? [rule.startEffort] : []
	);
	return wereStopped ? [...starts, 'moderate'] : starts;
}

function earlier(one: LocalDate, other: LocalDate): LocalDate {
	return compareDates(one, other) <= 0 ? one : other;
}
