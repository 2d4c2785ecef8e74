/** What a runner has told about themselves beyond the screening. Every part may be missing. */
export interface RunnerProfile {
	/** Resting pulses of mornings, beats a minute, oldest first, at most seven. */
	readonly mornings: readonly number[];
	/** From a supervised test only, beats a minute. */
	readonly supervisedMaximumBpm: number | null;
	/** From a supervised test only, mL/kg/min. */
	readonly supervisedCapacity: number | null;
}

export const emptyProfile: RunnerProfile = {
	mornings: [],
	supervisedMaximumBpm: null,
	supervisedCapacity: null
};
