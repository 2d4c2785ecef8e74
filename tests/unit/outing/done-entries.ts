import type { Entry, EntryContent, TalkAnswer } from '$lib/outing/entry.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { settleEntries, type DoneOuting } from '$lib/outing/settle-entries.ts';
import { RUN } from './any-entry.ts';

/** An outing as a prompter would have written it down, from what there is to say of each phase. */
export interface ToldPhase {
	readonly kind: PhaseKind;
	readonly seconds?: number;
	readonly done?: number;
	readonly how?: 'whole' | 'skipped' | 'cut-short';
	readonly answer?: Partial<TalkAnswer>;
}

interface Told {
	readonly ended?: 'finished' | 'early' | null;
	readonly hot?: boolean;
	readonly more?: readonly EntryContent[];
}

export function doneOuting(
	phases: readonly ToldPhase[],
	{ ended = 'finished', hot = false, more = [] }: Told = {}
): DoneOuting {
	const contents: EntryContent[] = [
		{
			kind: 'started',
			outing: {
				name: 'Outing 7',
				parts: phases.map(({ kind, seconds = 100 }) => plainPhase(kind, seconds))
			},
			plannedId: null,
			place: 'treadmill',
			hot
		},
		...phases.flatMap(({ seconds = 100, done = seconds, how = 'whole', answer }, phase) => [
			...(answer ? [{ ...comfortable, phase, ...answer }] : []),
			{ kind: 'phase-done', phase, activeSeconds: done, how } as const
		]),
		...(ended === null ? [] : [{ kind: 'ended', how: ended } as const]),
		...more
	];
	return settleEntries(contents.map(asEntry));
}

export const comfortable: TalkAnswer = {
	kind: 'talk-answer',
	phase: 0,
	secondsIntoPhase: 80,
	talk: 'comfortable',
	effort: 5,
	speedKmh: null,
	afterPassage: false,
	pulse: null
};

const asEntry = (content: EntryContent, seq: number): Entry => ({
	id: `00000000-0000-4000-8000-${String(seq).padStart(12, '0')}`,
	outingRunId: RUN,
	at: 1_700_000_000_000 + seq,
	seq,
	elapsedMs: 0,
	...content
});
