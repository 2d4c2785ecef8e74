import type { Guidance } from '../guide.ts';
import type { OutingTalk } from './evidence.ts';
import { talkCeiling } from './talk-ceiling.ts';

/** Fewer talk answers say little more than the age does. Our own choice, no source. */
export const ANSWERS_NEEDED = 5;

/** What may be said of a runner's talk ceiling. Pulses are not rounded. */
export type LearnedCeiling =
	| { readonly kind: 'too-few'; readonly answers: number; readonly needed: number }
	/** It lies above what the runner may do, so no number of it is of use. */
	| { readonly kind: 'above-band'; readonly answers: number }
	| {
			readonly kind: 'learned';
			readonly answers: number;
			readonly bpm: number;
			/** Four times in five it lies between these. */
			readonly lowBpm: number;
			readonly highBpm: number;
			/** Where only one kind of answer was heard, the other end is hardly known. */
			readonly heard: 'both' | 'only-comfortable' | 'never-comfortable';
			/** Under this in the main phase, where the band goes higher; else null. */
			readonly stayUnderBpm: number | null;
	  };

/**
 * What is learned from talk answers, as far as it may be shown: only while the pulse is on and its
 * ends are known. It never raises a band; where the runner's own answers lie below the band, it says
 * to stay under them. With a limit of a care team nothing is said: the limit counts.
 *
 * @returns null where no pulse of the runner's own may be shown
 */
export function learnedCeiling(
	guidance: Guidance,
	evidence: readonly OutingTalk[]
): LearnedCeiling | null {
	if (!guidance.open) return null;
	const { pulse, mayRun, settlingIn, phases } = guidance;
	if (pulse.kind !== 'on' || pulse.careTeamLimitBpm !== null) return null;
	const all = evidence.flatMap(({ answers }) => answers);
	if (all.length < ANSWERS_NEEDED) {
		return { kind: 'too-few', answers: all.length, needed: ANSWERS_NEEDED };
	}
	const { bpm, lowBpm, highBpm, carefulBpm } = talkCeiling(pulse.resting, pulse.maximum, evidence);
	const main = phases.find(({ kind }) => kind === 'steady-run' || kind === 'brisk-walk');
	const bandHighBpm = main?.pulse?.high.bpm ?? Infinity;
	const runsAreOpen = mayRun && settlingIn.kind !== 'going-on';
	if (!runsAreOpen && highBpm > bandHighBpm) return { kind: 'above-band', answers: all.length };
	const comfortable = all.filter(({ talk }) => talk === 'comfortable').length;
	return {
		kind: 'learned',
		answers: all.length,
		bpm,
		lowBpm,
		highBpm,
		heard: heardOf(comfortable, all.length),
		stayUnderBpm: carefulBpm < bandHighBpm ? carefulBpm : null
	};
}

function heardOf(comfortable: number, all: number) {
	if (comfortable === all) return 'only-comfortable';
	return comfortable === 0 ? 'never-comfortable' : 'both';
}
