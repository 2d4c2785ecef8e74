import type { OutingIssueCode } from '$lib/outing/check-outing.ts';
import type { outingLimits } from '$lib/outing/outing-limits.ts';

/** What to say of each issue of an outing. The numbers come from the limits that are checked. */
export const outingIssues: Readonly<
	Record<OutingIssueCode, (limits: typeof outingLimits) => string>
> = {
	'run-not-open': () => 'Your result opens walking for now. Make this a brisk walk.',
	'name-empty': () => 'Give the outing a name.',
	'name-too-long': ({ nameLength }) => `The name can have ${nameLength.high} letters at most.`,
	'name-unprintable': () => 'The name must be one line of plain letters.',
	'outing-empty': () => 'Add a first phase.',
	'outing-too-short': ({ outingSeconds }) =>
		`An outing lasts at least ${outingSeconds.low} seconds.`,
	'outing-too-long': ({ outingSeconds }) =>
		`An outing lasts ${outingSeconds.high / 3600} hours at most.`,
	'too-many-phases': ({ phases }) =>
		`An outing can have ${phases.high} phases at most, counting each time a repeat is done.`,
	'repeat-empty': () => 'Put a phase into the repeat, or take the repeat away.',
	'times-out-of-limits': ({ times }) =>
		`Repeat it ${times.low} to ${times.high} times, in whole numbers.`,
	'duration-not-whole': () => 'Give the length in whole seconds, such as 1:30.',
	'duration-too-short': ({ phaseSeconds }) => `A phase lasts at least ${phaseSeconds.low} seconds.`,
	'duration-too-long': ({ phaseSeconds }) =>
		`A phase lasts ${phaseSeconds.high / 3600} hours at most.`,
	'target-not-a-range': () => 'The upper edge must be above the lower one.',
	'target-outside-kind': () =>
		'Stay inside the usual range of this phase. For a harder one, choose another kind.',
	'speed-out-of-limits': ({ speedKmh }) =>
		`Give a speed from ${speedKmh.low} to ${speedKmh.high} km/h.`,
	'too-fast-to-walk': () => 'Nobody walks this fast for long. Choose 7 km/h or less.',
	'too-slow-to-run': () => 'Running begins at 5 km/h. Choose that or more, or a walk.',
	'incline-out-of-limits': ({ inclinePercent }) =>
		`Give an incline from ${inclinePercent.low} to ${inclinePercent.high} %.`,
	'cue-too-long': ({ cueLength }) => `The cue can have ${cueLength.high} letters at most.`,
	'cue-unprintable': () => 'The cue must be one line of plain letters.'
};
