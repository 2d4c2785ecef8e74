import type { Outing } from '$lib/outing/outing.ts';
import type { Kept } from './phone.svelte.ts';

/** An outing that can be taken now. */
export interface OutingChoice {
	readonly key: string;
	readonly outing: Outing;
	/** Of the group's planned outing, and whose. */
	readonly plannedId: string | null;
	readonly groupName: string | null;
	readonly onDate: string | null;
	readonly walksInstead: boolean;
	/** How long its runs are at most where some had to end sooner; else null. */
	readonly shortenedToSeconds: number | null;
}

export interface OutingChoices {
	readonly today: readonly OutingChoice[];
	readonly later: readonly OutingChoice[];
	/** The runner's own, and last the usual one. */
	readonly any: readonly OutingChoice[];
}

export function choicesOf({ outings, own, usual }: Kept, today: string): OutingChoices {
	const planned = outings
		.filter(({ state }) => state === 'planned')
		.map(({ id, outing, groupName, onDate, walksInstead, shortenedToSeconds }) => ({
			key: `planned ${id}`,
			outing,
			plannedId: id,
			groupName,
			onDate,
			walksInstead,
			shortenedToSeconds
		}));
	const free = { plannedId: null, groupName: null, onDate: null };
	return {
		today: planned.filter(({ onDate }) => onDate === today),
		later: planned.filter(({ onDate }) => onDate > today),
		any: [
			...own.map(({ id, outing, walksInstead, shortenedToSeconds }) => ({
				...free,
				key: `own ${id}`,
				outing,
				walksInstead,
				shortenedToSeconds
			})),
			{ ...free, key: 'usual', outing: usual, walksInstead: false, shortenedToSeconds: null }
		]
	};
}
