import { expect, test } from 'vitest';
import { nextStep, rosterStateWords, type RosterState } from '$lib/guidance/roster-next.ts';

/* Our own table; no source outside. */

const open = {
	open: true,
	word: 'may-run',
	pulse: 'on',
	settlingInUntil: null,
	longestRunSeconds: null,
	validUntil: '2027-11-24',
	endsSoon: false
} as const;

test.each<[string, RosterState, string]>([
	['may run', open, 'outing'],
	['may walk', { ...open, word: 'may-walk' }, 'outing'],
	['settling in', { ...open, settlingInUntil: '2026-12-09' }, 'walk-first'],
	[
		'ends soon, settling in or not',
		{ ...open, settlingInUntil: '2026-12-09', endsSoon: true },
		'answer-again-soon'
	],
	['not today', { open: false, word: 'not-today' }, 'own-result'],
	['answer again', { open: false, word: 'answer-again' }, 'answer-again'],
	['not finished', { open: false, word: 'not-finished' }, 'finish-questions'],
	['under age', { open: false, word: 'not-for-this-app' }, 'another-way'],
	['not shared', { open: false, word: 'not-shared' }, 'talk'],
	['a name alone', { open: false, word: 'not-joined' }, 'send-link']
])('%s', (_, state, step) => expect(nextStep(state)).toBe(step));

test('a filter offers every word once', () => {
	expect(new Set(rosterStateWords).size).toBe(rosterStateWords.length);
	expect(rosterStateWords).toHaveLength(9);
});
