import type { CapacityQuestions } from '../physiology/questions-capacity.ts';
import type { WalkStage } from '../physiology/walk-check.ts';
import type { WalkedMile } from './mile-capacity.ts';

/** What a runner has told about themselves beyond the screening. Every part may be missing. */
export interface RunnerProfile {
	/** Resting pulses of mornings, beats a minute, oldest first, at most seven. */
	readonly mornings: readonly number[];
	/** From a supervised test only, beats a minute. */
	readonly supervisedMaximumBpm: number | null;
	/** From a supervised test only, mL/kg/min. */
	readonly supervisedCapacity: number | null;
	/** The walks of the newest walk check that still counts. */
	readonly walkCheck: readonly WalkStage[] | null;
	/** The newest mile walk that still counts. */
	readonly mileWalk: WalkedMile | null;
	/** For an expected curve only: never for a speed. */
	readonly questions: Omit<CapacityQuestions, 'ageYears'> | null;
}

export const emptyProfile: RunnerProfile = {
	mornings: [],
	supervisedMaximumBpm: null,
	supervisedCapacity: null,
	walkCheck: null,
	mileWalk: null,
	questions: null
};
