/** Something that answers make true or false. An unanswered question makes none of them true. */
export type Condition =
	/** A single choice is one of these. */
	| { readonly question: string; readonly is: readonly string[] }
	/** At least one of these is ticked. */
	| { readonly question: string; readonly has: readonly string[] }
	| { readonly question: string; readonly over: number }
	| { readonly question: string; readonly atLeast: number }
	| { readonly question: string; readonly under: number }
	| { readonly fact: string }
	| { readonly all: readonly Condition[] }
	| { readonly any: readonly Condition[] }
	| { readonly not: Condition }
	/** At least so many of these hold. */
	| { readonly count: readonly Condition[]; readonly reaches: number }
	/** Happens outside the form: no answer makes it true, and none makes it go away. */
	| { readonly outside: 'urgent-event' | 'resting-pulse' };
