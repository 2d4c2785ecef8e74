/** What is wrong with an outing. Each code has one meaning, and words of its own. */
export type OutingIssueCode =
	| 'name-empty'
	| 'name-too-long'
	| 'name-unprintable'
	| 'outing-empty'
	| 'outing-too-short'
	| 'outing-too-long'
	| 'too-many-phases'
	| 'repeat-empty'
	| 'times-out-of-limits'
	| 'duration-not-whole'
	| 'duration-too-short'
	| 'duration-too-long'
	| 'target-not-a-range'
	| 'target-outside-kind'
	| 'speed-out-of-limits'
	| 'too-fast-to-walk'
	| 'too-slow-to-run'
	| 'incline-out-of-limits'
	| 'cue-too-long'
	| 'cue-unprintable'
	/** Not wrong in itself: its author may walk, not run. */
	| 'run-not-open'
	/** Not wrong in itself: its author settled in not long ago. */
	| 'run-too-long-yet';

/** Where in an outing: keys and indexes from the outing inwards, such as parts, 2, phases, 0, cue. */
export type OutingPath = readonly (string | number)[];

export interface OutingIssue {
	readonly code: OutingIssueCode;
	readonly path: OutingPath;
}
