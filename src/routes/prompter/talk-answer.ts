import type { Entry, TalkAnswer } from '$lib/outing/entry.ts';
import type { OutingPhase } from '$lib/outing/outing.ts';
import type { TalkMoment } from '$lib/outing/talk-moment.ts';
import type { Player } from './player.svelte.ts';

type Written = Extract<Entry, { kind: 'talk-answer' }>;

/** What was last answered about a moment, or null. */
export function answerAbout(
	{ phase, said }: TalkMoment,
	entries: readonly Entry[]
): Written | null {
	const answers = entries.filter((entry): entry is Written => entry.kind === 'talk-answer');
	return (
		answers.findLast((it) => it.phase === phase && it.afterPassage === (said === 'passage')) ?? null
	);
}

/**
 * The speed to begin from: what was last said in this outing of a phase of the same kind, else what
 * the outing says, else none. Outdoors nobody knows it.
 */
export function speedOf(
	{ phase, kind }: TalkMoment,
	{ entries, position, started }: Pick<Player, 'entries' | 'position' | 'started'>
): number | null {
	if (started.place !== 'treadmill') return null;
	const ofKind = (it: Written) => position.phases[it.phase]?.kind === kind;
	const answers = entries.filter((entry): entry is Written => entry.kind === 'talk-answer');
	const said = answers.findLast((it) => it.speedKmh !== null && ofKind(it));
	return said?.speedKmh ?? position.phases[phase]?.speedKmh ?? null;
}

/** How long the phase that is meant had lasted: it may be over by now. */
function secondsInto(
	{ phase }: TalkMoment,
	position: Player['position'],
	planned: readonly OutingPhase[]
): number {
	if (position.state === 'over') return planned[phase]?.seconds ?? 0;
	if (position.index === phase) return position.inPhaseMs / 1000;
	return position.before?.index === phase ? position.before.activeMs / 1000 : 0;
}

/** An answer, as it is written down. */
export const answerContent = (
	moment: TalkMoment,
	{ position, planned, pulse, entries }: Pick<Player, 'position' | 'planned' | 'pulse' | 'entries'>,
	answered: Answered
): TalkAnswer => ({
	kind: 'talk-answer',
	phase: moment.phase,
	secondsIntoPhase: secondsInto(moment, position, planned),
	...answered,
	afterPassage: moment.said === 'passage',
	// A guess stands beside what was measured when it was given.
	pulse: (answered.guessedBpm && answerAbout(moment, entries)?.pulse) || pulse
});

export type Answered = Pick<TalkAnswer, 'talk' | 'effort' | 'speedKmh' | 'guessedBpm'>;
