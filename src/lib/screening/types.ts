import type { LocalDate } from '../calendar/local-date.ts';

export type { LocalDate } from '../calendar/local-date.ts';

/** What the rules can say about a set of answers, mildest clinical outcome first. */
export type ClinicalStatus = 'CLEARED_ALL' | 'CLEARED_WALK' | 'WAIT' | 'SEEK_ADVICE' | 'EMERGENCY';

/** What an evaluation can end in. */
export type Status = ClinicalStatus | 'INCOMPLETE' | 'NOT_ELIGIBLE';

/** What stands between a person and a number today: a status, or the lack of a valid one. */
export type AccessCode = Status | 'NO_RESULT' | 'EXPIRED' | 'RESCREEN';

/** The most effort that is open. */
export type Ceiling = 'none' | 'moderate' | 'vigorous';

export type Plan = 'walk' | 'walkrun' | 'hard';

/** What kind of reason it is decides who may lift it. */
export type ReasonKind =
	'symptom' | 'condition' | 'injury' | 'pregnancy' | 'age' | 'medicine' | 'wait';

export type Answer = string | number | readonly string[];

/** Answers by question id. A question that is not there was not answered; that is never a "no". */
export type Answers = Readonly<Record<string, Answer | undefined>>;

/** What is kept of a finished form. The answers themselves are deleted. */
export interface ScreeningResult {
	readonly id: string;
	readonly rulesetId: string;
	readonly rulesetVersion: string;
	readonly status: ClinicalStatus;
	/** Every rule that fired, outcome or not, in the order of the rule set. */
	readonly reasons: readonly string[];
	readonly plan: Plan;
	readonly ageYears: number;
	readonly activity: {
		readonly days: number;
		readonly minutes: number;
		readonly months: 'lt3' | 'ge3';
		readonly hard: 'yes' | 'no' | 'not_sure';
	};
	/** Epoch milliseconds. */
	readonly completedAt: number;
	/** The runner's own calendar date at completion. */
	readonly completedOn: LocalDate;
	/** IANA name, such as Europe/Dublin. */
	readonly timeZone: string;
	/** Set when the runner said that their health changed, or their plan did. Epoch milliseconds. */
	readonly invalidatedAt: number | null;
}

/** An urgent sign that outlives the form it was ticked on (rule R-EVENT). */
export interface HealthEvent {
	readonly id: string;
	readonly happenedAt: number;
	readonly happenedOn: LocalDate;
	/** Set when the runner said, twice and within ten minutes, that it was ticked by mistake. */
	readonly withdrawnAt: number | null;
}

export type AdviceRole =
	'doctor' | 'nurse' | 'physiotherapist' | 'midwife' | 'pharmacist' | 'exercise-professional';

export type AdviceScope = 'none' | 'walk' | 'walkrun' | 'all';

/** What a professional said, as the runner wrote it down. */
export interface Advice {
	readonly id: string;
	readonly givenOn: LocalDate;
	readonly role: AdviceRole;
	readonly scope: AdviceScope;
	/** Rule ids that the runner ticked as covered. */
	readonly covers: readonly string[];
	/** A limit in beats a minute that the care team set, if any. */
	readonly limitBpm: number | null;
	readonly recordedAt: number;
}
