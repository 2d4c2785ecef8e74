import { donePhases } from '$lib/outing/done-phases.ts';
import type { DoneOuting } from '$lib/outing/settle-entries.ts';
import type { Guess } from './guess-view.ts';

/** Guesses that were made in outings. */
export function outingGuesses(
	outings: readonly (DoneOuting & { readonly id: string; readonly onDate: string })[]
): readonly Guess[] {
	return outings.flatMap((outing) => {
		const kinds = new Map(donePhases(outing).map(({ phase, kind }) => [phase, kind]));
		return outing.answers.flatMap((answer) => {
			const phase = kinds.get(answer.phase) ?? null;
			const { effort, guessedBpm } = answer;
			if (phase === null || effort === null || guessedBpm === undefined) return [];
			return {
				id: answer.id,
				guessedAt: answer.at,
				on: outing.onDate,
				phase,
				effort,
				pulseBpm: guessedBpm,
				seen: { talk: answer.talk, pulseBpm: answer.pulse?.bpm ?? null },
				outingId: outing.id
			};
		});
	});
}
