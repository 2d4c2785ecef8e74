import { expect, test } from 'vitest';
import type { Entry, EntryContent } from '$lib/outing/entry.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { settleEntries } from '$lib/outing/settle-entries.ts';
import { guessView } from '../../src/routes/learn/guess/guess-view.ts';
import { outingGuesses } from '../../src/routes/learn/guess/outing-guesses.ts';

// Our own rules, no source.

const started: EntryContent = {
	kind: 'started',
	outing: { name: 'One', parts: [plainPhase('warm-up-walk', 400), plainPhase('brisk-walk', 400)] },
	plannedId: null,
	place: 'outdoors',
	hot: false
};
const answer = {
	kind: 'talk-answer',
	phase: 1,
	secondsIntoPhase: 380,
	talk: 'comfortable',
	effort: 8,
	speedKmh: null,
	afterPassage: false,
	pulse: { bpm: 136.4, source: 'chest-strap' },
	guessedBpm: 130
} as const satisfies EntryContent;

const outing = (...contents: readonly EntryContent[]) => ({
	...settleEntries(
		contents.map((content, seq): Entry => ({
			id: `${seq}`,
			outingRunId: 'run',
			at: seq,
			seq,
			elapsedMs: 0,
			...content
		}))
	),
	id: 'run',
	onDate: '2026-11-20'
});
const views = (showsPulse: boolean, ...contents: readonly EntryContent[]) =>
	outingGuesses([outing(...contents)]).map((guess) => guessView(guess, showsPulse));

test('a guess of an outing is set against talk and what the strap showed', () => {
	expect(views(true, started, answer)).toMatchObject([
		{
			outingId: 'run',
			on: '2026-11-20',
			phase: 'brisk-walk',
			effort: 8,
			effortOff: 2,
			pulse: { guessedBpm: 130, seenBpm: 136, off: -6 }
		}
	]);
});

test('with pulse off there is an effort and no beat in it', () => {
	expect(views(false, started, answer)).toMatchObject([{ effortOff: 2, pulse: null }]);
	expect(JSON.stringify(views(false, started, answer))).not.toMatch(/130|136/);
});

test('of answers about one moment the last is the guess', () => {
	expect(views(true, started, answer, { ...answer, talk: 'with-breaths' })).toMatchObject([
		{ talk: 'with-breaths' }
	]);
});

test('an answer without a guess, without an effort, or of an unknown part is none', () => {
	const { guessedBpm: _, ...plain } = answer;
	expect(views(true, started, plain)).toEqual([]);
	expect(views(true, started, { ...answer, effort: null })).toEqual([]);
	expect(views(true, answer)).toEqual([]);
});

test('where no pulse was guessed the effort stands alone', () => {
	expect(views(true, started, { ...answer, guessedBpm: null })).toMatchObject([{ pulse: null }]);
	expect(views(true, started, { ...answer, pulse: null })).toMatchObject([{ pulse: null }]);
});
