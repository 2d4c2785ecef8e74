import { donePhases, type DonePhase } from '../outing/done-phases.ts';
import { doneTotals, type DoneTotals } from '../outing/done-totals.ts';
import type { TalkAnswer } from '../outing/entry.ts';
import type { DoneOuting } from '../outing/settle-entries.ts';
import type { Access } from '../screening/access.ts';

/** How much of an outing that was done may be shown. */
export type PastSight =
	/** Everything. */
	| 'all'
	/** No pulse. */
	| 'no-pulse'
	/** What was done and how talk went, in words: no effort number, no speed, no pulse. */
	| 'words';

/**
 * What a person did is theirs to read, also while the gate is closed; but then no number there may
 * look like one to aim at.
 */
export function pastSight(access: Access): PastSight {
	if (!access.allowed) return 'words';
	return access.pulse.on ? 'all' : 'no-pulse';
}

type ShownAnswer = Pick<
	TalkAnswer,
	'talk' | 'afterPassage' | 'effort' | 'speedKmh' | 'pulse' | 'secondsIntoPhase'
>;

/** A phase of an outing that was done, as it may be shown. What may not be shown is null. */
export interface ShownPhase extends Omit<DonePhase, 'answers'> {
	readonly answers: readonly ShownAnswer[];
}

/** An outing that was done, as it may be shown. */
export interface ShownOuting {
	/** Null where its start never arrived. */
	readonly name: string | null;
	readonly place: 'treadmill' | 'outdoors' | null;
	readonly hot: boolean;
	/** Null where it has not ended, as far as we know. */
	readonly ended: 'finished' | 'early' | null;
	readonly totals: DoneTotals;
	readonly phases: readonly ShownPhase[];
	readonly pain: Said;
	readonly painNextMorning: Said;
	/** Whether the runner pressed that something felt wrong, and did not take it back. */
	readonly feltWrong: boolean;
}

type Said = Pick<NonNullable<DoneOuting['pain']>, 'level' | 'where'> | null;

/** The one way from what was written down to what a page may hold of it. */
export function shownOuting(done: DoneOuting, sight: PastSight): ShownOuting {
	const { started, ended, pain, painNextMorning, wrong } = done;
	return {
		name: started?.outing.name ?? null,
		place: started?.place ?? null,
		hot: started?.hot ?? false,
		ended: ended?.how ?? null,
		totals: doneTotals(done),
		phases: donePhases(done).map((phase) => shownPhase(phase, sight)),
		pain: said(pain),
		painNextMorning: said(painNextMorning),
		feltWrong: wrong.some(({ sign }) => sign !== 'none')
	};
}

function shownPhase(phase: DonePhase, sight: PastSight): ShownPhase {
	const { pulse } = phase;
	return {
		...phase,
		answers: phase.answers.map((answer) => shownAnswer(answer, sight)),
		pulse:
			sight === 'all' && pulse !== null
				? {
						source: pulse.source,
						meanBpm: pulse.meanBpm,
						highestBpm: pulse.highestBpm,
						measuredSeconds: pulse.measuredSeconds
					}
				: null
	};
}

function shownAnswer(answer: TalkAnswer, sight: PastSight): ShownAnswer {
	const { talk, afterPassage, effort, speedKmh, pulse, secondsIntoPhase } = answer;
	const hasNumbers = sight !== 'words';
	return {
		talk,
		afterPassage,
		secondsIntoPhase,
		effort: hasNumbers ? effort : null,
		speedKmh: hasNumbers ? speedKmh : null,
		pulse: sight === 'all' ? pulse : null
	};
}

const said = (pain: Said): Said => pain && { level: pain.level, where: pain.where };
