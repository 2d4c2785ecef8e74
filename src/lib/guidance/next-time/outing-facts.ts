import { donePhases, type DonePhase } from '../../outing/done-phases.ts';
import { isStopSign } from '../../outing/entry.ts';
import { phasesOf } from '../../outing/outing.ts';
import type { PhaseKind } from '../../outing/phase.ts';
import type { DoneOuting } from '../../outing/settle-entries.ts';
import type { Effort } from '../../physiology/effort-scale.ts';

/** The hardest that was heard in an outing, easiest first. */
export const talkHeard = ['comfortable', 'late-breaths', 'early-breaths', 'broke-off'] as const;
export type TalkHeard = (typeof talkHeard)[number];

/** What next time depends on. */
export interface OutingFacts {
	/** The phases that the outing is about: its runs, or its brisk walks where nobody runs. */
	readonly main: Extract<PhaseKind, 'steady-run' | 'brisk-walk'>;
	readonly mainPhases: number;
	/** Of those, not done to their end; none while no end was written down. */
	readonly unfinished: number;
	/** Of those, with an answer about talk. */
	readonly answered: number;
	/** Phases in which talk broke off. */
	readonly brokeOff: number;
	/** Null where nothing was said. */
	readonly talk: TalkHeard | null;
	readonly highestEffort: Effort | null;
	/** Of the time of main phases with a measured pulse, the share of those over the band. */
	readonly overBandShare: number | null;
	/** The last that was used in a main phase. */
	readonly speedKmh: number | null;
	readonly feltWrong: boolean;
}

/** Breaths are allowed from here on, in a run. */
const LAST_THIRD = 2 / 3;

/**
 * @param bandHighBpm the upper edge of the band of the main phases; null where no pulse counts
 */
export function outingFacts(done: DoneOuting, bandHighBpm: number | null): OutingFacts {
	const planned = done.started ? phasesOf(done.started.outing) : [];
	const main = planned.some(({ kind }) => kind === 'steady-run') ? 'steady-run' : 'brisk-walk';
	const phases = donePhases(done);
	const mains = phases.filter(({ kind }) => kind === main);
	const mainPhases = planned.filter(({ kind }) => kind === main).length;
	const whole = mains.filter(({ how }) => how === 'whole').length;
	const heard = phases.flatMap((one) => heardIn(one, planned[one.phase]?.seconds ?? null));
	const efforts = done.answers.flatMap(({ effort }) => (effort === null ? [] : [effort]));
	const speeds = mains.flatMap(({ answers }) => answers.flatMap((one) => one.speedKmh ?? []));
	return {
		main,
		mainPhases,
		unfinished: done.ended === null ? 0 : mainPhases - whole,
		answered: mains.filter(({ answers }) => answers.length > 0).length,
		brokeOff: phases.filter(({ answers }) => answers.some(({ talk }) => talk === 'broke-off'))
			.length,
		talk: talkHeard.findLast((level) => heard.includes(level)) ?? null,
		highestEffort: efforts.length === 0 ? null : (Math.max(...efforts) as Effort),
		overBandShare: bandHighBpm === null ? null : overShare(mains, bandHighBpm),
		speedKmh: speeds.at(-1) ?? null,
		feltWrong: done.wrong.some(({ sign }) => isStopSign(sign))
	};
}

function heardIn({ kind, answers }: DonePhase, seconds: number | null): readonly TalkHeard[] {
	return answers.map(({ talk, secondsIntoPhase }) => {
		if (talk !== 'with-breaths') return talk;
		const isLate = seconds !== null && secondsIntoPhase >= seconds * LAST_THIRD;
		return kind === 'steady-run' && isLate ? 'late-breaths' : 'early-breaths';
	});
}

function overShare(mains: readonly DonePhase[], bandHighBpm: number): number | null {
	let [measured, over] = [0, 0];
	for (const { pulse, activeSeconds } of mains) {
		if (pulse === null || activeSeconds === null) continue;
		measured += activeSeconds;
		if (pulse.meanBpm > bandHighBpm) over += activeSeconds;
	}
	return measured === 0 ? null : over / measured;
}
