import type { Entry } from './entry.ts';
import { mergeEntries } from './merge-entries.ts';

/** The entries that may be of a kind, of which several may share a shape. */
type Of<Kind extends Entry['kind']> = EntryOf<Entry, Kind>;
type EntryOf<One extends Entry, Kind> = One extends Entry
	? Kind extends One['kind']
		? One & { readonly kind: Kind }
		: never
	: never;

/** One outing as it was done, after contradictions are settled. */
export interface DoneOuting {
	readonly outingRunId: string;
	readonly started: Of<'started'> | null;
	readonly ended: Of<'ended'> | null;
	readonly phases: readonly Of<'phase-done'>[];
	readonly answers: readonly Of<'talk-answer'>[];
	readonly pulses: readonly Of<'pulse-summary'>[];
	readonly pain: Of<'pain'> | null;
	readonly painNextMorning: Of<'pain-next-morning'> | null;
	readonly wrong: readonly Of<'something-wrong'>[];
}

/**
 * What the entries of one outing run come to.
 *
 * - Of starts, ends and a phase's end the first in order counts: a second comes from a second tap.
 * - Of answers about one phase, line and passage apart, the last counts, and one that was given after
 *   the end too: the runner has thought again. So of pain.
 * - Of the pulses of one phase the one that was measured longest counts: another page, or one that was
 *   loaded again, may have seen only a part of it.
 * - That something felt wrong counts always, each time.
 *
 * @throws RangeError for none, or for entries of several runs
 */
export function settleEntries(entries: readonly Entry[]): DoneOuting {
	const ordered = mergeEntries(entries);
	const outingRunId = ordered[0]?.outingRunId;
	if (outingRunId === undefined || ordered.some((entry) => entry.outingRunId !== outingRunId)) {
		throw new RangeError('settleEntries requires entries of one outing run');
	}
	const all = <Kind extends Entry['kind']>(kind: Kind) =>
		ordered.filter((entry): entry is Of<Kind> => entry.kind === kind);
	return {
		outingRunId,
		started: all('started')[0] ?? null,
		ended: all('ended')[0] ?? null,
		phases: byPhase(lastOfEach([...all('phase-done')].reverse(), ({ phase }) => `${phase}`)),
		answers: byPhase(
			lastOfEach(all('talk-answer'), ({ phase, afterPassage }) => `${phase} ${afterPassage}`)
		),
		pulses: byPhase(
			lastOfEach(
				all('pulse-summary').sort((one, other) => one.measuredSeconds - other.measuredSeconds),
				({ phase }) => `${phase}`
			)
		),
		pain: all('pain').at(-1) ?? null,
		painNextMorning: all('pain-next-morning').at(-1) ?? null,
		wrong: all('something-wrong')
	};
}

function lastOfEach<One>(ordered: readonly One[], key: (one: One) => string): readonly One[] {
	return [...new Map(ordered.map((one) => [key(one), one])).values()];
}

function byPhase<One extends { readonly phase: number; readonly seq: number }>(
	found: readonly One[]
): readonly One[] {
	return [...found].sort((one, other) => one.phase - other.phase || one.seq - other.seq);
}
