import { daysBetween, type LocalDate } from '../../calendar/local-date.ts';
import type { DoneOuting } from '../../outing/settle-entries.ts';
import type { TalkLevel } from '../../physiology/effort-scale.ts';

/** Talk answers of one outing from which a talk ceiling may be learned. */
export interface OutingTalk {
	/** Whole days since, zero or more. */
	readonly daysAgo: number;
	readonly answers: readonly { readonly pulseBpm: number; readonly talk: TalkLevel }[];
}

/**
 * From here on in a phase an answer counts: before it neither the pulse nor talk has caught up
 * (foster2008: talk needs over two minutes to turn).
 */
export const COUNTS_FROM_SECONDS = 120;

/**
 * The answers that a ceiling is learned from: after the passage of about half a minute, two minutes
 * or more into a phase, with a measured pulse. All others steer effort alone. A hot outing is not
 * compared with others: heat raises the pulse at the same effort.
 */
export function talkEvidence(
	outings: readonly (DoneOuting & { readonly onDate: LocalDate })[],
	today: LocalDate
): readonly OutingTalk[] {
	return outings.flatMap(({ started, answers, onDate }) => {
		if (started?.hot !== false) return [];
		const counting = answers.flatMap(({ afterPassage, secondsIntoPhase, pulse, talk }) =>
			afterPassage && secondsIntoPhase >= COUNTS_FROM_SECONDS && pulse !== null
				? [{ pulseBpm: pulse.bpm, talk }]
				: []
		);
		const daysAgo = Math.max(0, daysBetween(onDate, today));
		return counting.length === 0 ? [] : [{ daysAgo, answers: counting }];
	});
}
