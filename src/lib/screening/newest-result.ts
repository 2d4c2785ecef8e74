import { severityOf } from './strictness.ts';
import type { ScreeningResult } from './types.ts';

/**
 * The result that counts: the newest completion, and of two at the same moment the strictest. One
 * whose moment cannot be read counts as the newest, so that it closes rather than disappears.
 *
 * @returns null where there is none
 */
export function pickNewest(results: readonly ScreeningResult[]): ScreeningResult | null {
	return results.reduce<ScreeningResult | null>(
		(picked, result) => (picked === null || goesBefore(result, picked) ? result : picked),
		null
	);
}

/** A total order, so that the order of the list never matters. */
function goesBefore(one: ScreeningResult, other: ScreeningResult): boolean {
	const differences = [
		momentOf(one) - momentOf(other),
		Number(one.invalidatedAt !== null) - Number(other.invalidatedAt !== null),
		severityOf(one.status) - severityOf(other.status),
		one.reasons.length - other.reasons.length,
		one.id < other.id ? 1 : -1
	];
	return (differences.find((difference) => difference !== 0) ?? 0) > 0;
}

function momentOf({ completedAt }: ScreeningResult): number {
	return Number.isFinite(completedAt) ? completedAt : Number.MAX_VALUE;
}
