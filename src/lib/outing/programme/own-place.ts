import { ownNumber } from './stand.ts';

/**
 * The outing of a runner who stands elsewhere in the programme than the group, as it was planned
 * last; null where there is none of that number.
 *
 * @param numbered the outings of the programme by number, each as often as it was planned
 * @example ownPlace([{ number: 1 }, { number: 2 }], 2, -1) // { number: 1 }
 */
export function ownPlace<Outing extends { readonly number: number }>(
	numbered: readonly Outing[],
	groupNumber: number,
	outingsAhead: number
): Outing | null {
	const lastNumber = numbered.at(-1)?.number ?? groupNumber;
	const own = ownNumber({ groupNumber, outingsAhead, lastNumber });
	return numbered.findLast(({ number }) => number === own) ?? null;
}
