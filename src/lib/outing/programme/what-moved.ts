import type { LocalDate } from '../../calendar/local-date.ts';

type Placed = { readonly number: number; readonly onDate: LocalDate };

/** What is other in the days to come than it would have been. */
export interface WhatMoved {
	/** Outings that come again, first to last; null where none does. */
	readonly again: { readonly first: Placed; readonly count: number } | null;
	/** The first outing that comes on another day, with the day on which it would have come. */
	readonly firstMoved: (Placed & { readonly insteadOf: LocalDate }) | null;
	/** Where the programme would have ended and where it does; null where that is the same day. */
	readonly end: { readonly insteadOf: LocalDate; readonly onDate: LocalDate } | null;
}

/**
 * @param would the days to come as they would have been, by date
 * @param are the days to come as they are, by date
 */
export function whatMoved(would: readonly Placed[], are: readonly Placed[]): WhatMoved {
	const count = Math.max(0, are.length - would.length);
	const first = are[0];
	const dayOf = new Map<number, LocalDate>();
	for (const { number, onDate } of would) if (!dayOf.has(number)) dayOf.set(number, onDate);
	const seen = new Set<number>();
	const moved = are.flatMap(({ number, onDate }) => {
		const isFirst = !seen.has(number);
		seen.add(number);
		const insteadOf = dayOf.get(number);
		return isFirst && insteadOf !== undefined && insteadOf !== onDate
			? [{ number, onDate, insteadOf }]
			: [];
	});
	const [wouldEnd, ends] = [would.at(-1)?.onDate, are.at(-1)?.onDate];
	return {
		again: count > 0 && first !== undefined ? { first, count } : null,
		firstMoved: moved[0] ?? null,
		end:
			wouldEnd !== undefined && ends !== undefined && wouldEnd !== ends
				? { insteadOf: wouldEnd, onDate: ends }
				: null
	};
}
