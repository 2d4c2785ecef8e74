import type { Value } from './published-value.ts';

/**
 * How far an answer lies from a value: the largest difference of any number in it. Infinity where a
 * word, or a part of it, is another one.
 */
export function differenceFrom(answer: unknown, value: Value): number {
	if (typeof value === 'number') {
		return typeof answer === 'number' && !Number.isNaN(answer)
			? Math.abs(answer - value)
			: Infinity;
	}
	if (typeof value !== 'object' || value === null) return answer === value ? 0 : Infinity;
	if (typeof answer !== 'object' || answer === null) return Infinity;
	return Math.max(
		...Object.entries(value).map(([key, inner]) => differenceFrom(Reflect.get(answer, key), inner))
	);
}
