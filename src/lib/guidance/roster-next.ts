import type { CoachWord, RosterWord } from './roster-word.ts';

/** What stands beside a name: the word of a result, or why there is none. */
export type RosterState =
	RosterWord | { readonly open: false; readonly word: 'not-joined' | 'not-shared' };

export type RosterStateWord = CoachWord | 'not-joined' | 'not-shared';

/** Every word, in the order in which a filter offers them. */
export const rosterStateWords: readonly RosterStateWord[] = [
	'may-run',
	'may-run-by-talk',
	'may-walk',
	'not-today',
	'answer-again',
	'not-finished',
	'not-for-this-app',
	'not-shared',
	'not-joined'
];

/** What comes next for somebody on the list, as far as a coach has a part in it. */
export type NextStep =
	| 'send-link'
	| 'talk'
	| 'finish-questions'
	| 'answer-again'
	| 'answer-again-soon'
	| 'walk-first'
	| 'own-result'
	| 'another-way'
	| 'outing';

/**
 * The next step. For whoever is not for today it is the same whatever closed the result: their own
 * result page tells them, and nobody else.
 *
 * @example nextStep({ open: false, word: 'not-joined' }) // 'send-link'
 * @example nextStep({ open: false, word: 'not-today' }) // 'own-result'
 */
export function nextStep(state: RosterState): NextStep {
	switch (state.word) {
		case 'may-run':
		case 'may-run-by-talk':
		case 'may-walk':
			if (state.endsSoon) return 'answer-again-soon';
			return state.settlingInUntil === null ? 'outing' : 'walk-first';
		case 'not-today':
			return 'own-result';
		case 'answer-again':
			return 'answer-again';
		case 'not-finished':
			return 'finish-questions';
		case 'not-for-this-app':
			return 'another-way';
		case 'not-shared':
			return 'talk';
		case 'not-joined':
			return 'send-link';
	}
}
