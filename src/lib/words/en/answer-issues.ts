import type { InvalidAnswer } from '$lib/screening/evaluate.ts';
import type { Question } from '$lib/screening/ruleset.ts';

type Issue = InvalidAnswer['issue'];
type Messages = Partial<Record<Issue, string>>;

/** What to change, by issue code. Nothing here hints at which answer opens the gate. */
export const answerIssues: Readonly<Record<Issue, string>> = {
	missing: 'Please answer this question.',
	'not-a-number': 'Type a number, such as 3.',
	'not-whole': 'Type a whole number, such as 3.',
	'too-low': 'That number is too low. Please look at it again.',
	'too-high': 'That number is too high. Please look at it again.',
	'unknown-option': 'Pick one of the answers on this page.',
	'exclusive-mixed': 'You ticked “None of these” and something else. Untick one of them.',
	'too-many': 'Give one answer only.',
	'unknown-question': 'One answer belongs to another form. Please start the questions again.'
};

/** Where the kind of question says more. */
export const answerIssuesByKind: Readonly<Record<Question['kind'], Messages>> = {
	single: { missing: 'Pick one answer.', 'too-many': 'Pick one answer only.' },
	multi: {
		missing: 'Tick all that fit, or tick “None of these”.',
		'unknown-option': 'Tick only answers on this page.',
		'too-many': 'Tick each answer only once.'
	},
	integer: { missing: 'Type a number. 0 counts too.', 'too-many': 'Type one number only.' }
};

/** Where the question itself says more. */
export const answerIssuesByQuestion: Readonly<Record<string, Messages>> = {
	'age.years': {
		missing: 'Type your age in whole years, such as 46.',
		'not-a-number': 'Type your age as a number, such as 46.',
		'not-whole': 'Type your age in whole years, such as 46.',
		'too-low': 'Type your age in whole years, such as 46. It cannot be under 0.',
		'too-high': 'Type your age in years, not the year you were born. It can be 120 at most.',
		'too-many': 'Type your age once.'
	},
	'act.days': {
		missing: 'Type how many days, from 0 to 7.',
		'not-a-number': 'Type how many days as a number, from 0 to 7.',
		'not-whole': 'Type whole days, from 0 to 7. If it changes, take the lower number.',
		'too-low': 'Type how many days, from 0 to 7.',
		'too-high': 'A week has 7 days. Type a number from 0 to 7.'
	},
	'act.minutes': {
		missing: 'Type how many minutes, such as 20. Type 0 if you do not do this.',
		'not-a-number': 'Type the minutes as a number, such as 20.',
		'not-whole': 'Type whole minutes, such as 20.',
		'too-low': 'Type how many minutes, from 0 on.',
		'too-high': 'Type the minutes on one day, 600 at most.'
	}
};

/**
 * What the person reads about one answer: the most helpful words that exist.
 *
 * @example answerIssueText({ id: 'age.years', kind: 'integer' }, 'missing') // 'Type your age in whole years, such as 46.'
 */
export function answerIssueText(question: Pick<Question, 'id' | 'kind'>, issue: Issue): string {
	return (
		answerIssuesByQuestion[question.id]?.[issue] ??
		answerIssuesByKind[question.kind][issue] ??
		answerIssues[issue]
	);
}
