import type { Condition } from './condition.ts';
import type { SourceId } from './sources.ts';
import type { Ceiling, ClinicalStatus, Plan, ReasonKind } from './types.ts';

export type { Condition } from './condition.ts';

export interface Option {
	readonly id: string;
	/** "None of these": never together with another tick. */
	readonly exclusive: boolean;
}

interface QuestionBase {
	readonly id: string;
	/** Asked only when this holds; null means always. May look at earlier questions only. */
	readonly showIf: Condition | null;
	readonly basis: readonly SourceId[];
}

export interface ChoiceQuestion extends QuestionBase {
	readonly kind: 'single' | 'multi';
	readonly options: readonly Option[];
	/** Option ids that never lead to a stricter result. Everything else is the careful side. */
	readonly safe: readonly string[];
}

export interface IntegerQuestion extends QuestionBase {
	readonly kind: 'integer';
	readonly lowest: number;
	readonly highest: number;
}

export type Question = ChoiceQuestion | IntegerQuestion;

interface RuleBase {
	readonly id: string;
	readonly when: Condition;
	readonly basis: readonly SourceId[];
}

/** Sets how far the gate opens. */
export interface OutcomeRule extends RuleBase {
	readonly does: 'outcome';
	readonly outcome: Exclude<ClinicalStatus, 'CLEARED_ALL'>;
	/** Decides who may cover the reason. */
	readonly kind: ReasonKind;
	/** Advice is needed on the same day. */
	readonly urgent: boolean;
	/** Exercise that is going on should stop. */
	readonly stopCurrent: boolean;
	/** Advice from before the screening that named it says nothing about it. */
	readonly isNew: boolean;
}

/** Takes every number in beats away. */
export interface PulseRule extends RuleBase {
	readonly does: 'pulse-off';
	readonly kind: ReasonKind;
	/** True where advice may give the numbers back. */
	readonly untilAdvice: boolean;
}

/** Lowers the effort to start with. */
export interface StartRule extends RuleBase {
	readonly does: 'start';
	readonly startEffort: Exclude<Ceiling, 'none'>;
}

/** Shows a care note under its own id. */
export interface AdviceRule extends RuleBase {
	readonly does: 'advice';
}

export type Rule = OutcomeRule | PulseRule | StartRule | AdviceRule;

export interface Gate {
	readonly id: string;
	readonly when: Condition;
	readonly status: 'NOT_ELIGIBLE';
	readonly basis: readonly SourceId[];
}

/** Answers that cannot both be true. The person is asked to look again; nothing is guessed. */
export interface Conflict {
	readonly id: string;
	readonly when: Condition;
	/** Questions to look at again. */
	readonly fix: readonly string[];
}

export interface Opening {
	readonly run: boolean;
	readonly ceiling: Ceiling;
}

/** One dated, frozen set of questions and rules. It holds no text that a person reads. */
export interface Ruleset {
	readonly id: string;
	/** Semantic version. A new major one makes older results ask again. */
	readonly version: string;
	readonly reviewedByClinician: boolean;
	/** For how many calendar months a result counts. */
	readonly validMonths: number;
	readonly questions: readonly Question[];
	readonly facts: Readonly<Record<string, Condition>>;
	readonly gates: readonly Gate[];
	readonly conflicts: readonly Conflict[];
	readonly rules: readonly Rule[];
	readonly outcomes: Readonly<Record<ClinicalStatus, Opening>>;
	readonly planLimits: Readonly<Record<Plan, Opening>>;
	/** The questions whose answers stay in the result after the form is deleted. */
	readonly kept: {
		readonly ageYears: string;
		readonly plan: string;
		readonly days: string;
		readonly minutes: string;
		readonly months: string;
		readonly hard: string;
	};
}
