/** Where the mark of a pulse stands on the way from resting to maximum, 0 to 1: never outside it. */
export function markShare(
	bpm: number,
	{ restingBpm, maximumBpm }: { readonly restingBpm: number; readonly maximumBpm: number }
): number {
	const share = (bpm - restingBpm) / (maximumBpm - restingBpm);
	return Math.min(1, Math.max(0, share));
}
