/**
 * The middle of some numbers; of an even number of them the mean of the two in the middle.
 * @throws RangeError without a number
 * @example median([3, 1, 2]) // 2
 * @example median([4, 1, 2, 3]) // 2.5
 */
export function median(values: readonly number[]): number {
	const sorted = [...values].sort((one, other) => one - other);
	const upper = sorted[Math.floor(sorted.length / 2)];
	const lower = sorted[Math.floor((sorted.length - 1) / 2)];
	if (upper === undefined || lower === undefined) {
		throw new RangeError('median requires at least one number');
	}
	return (lower + upper) / 2;
}
