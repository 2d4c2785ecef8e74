import { foldName } from '$lib/forms/person-name.ts';
import type { RosterRow } from '$lib/server/roster.ts';

type Row = Pick<RosterRow, 'memberId' | 'name' | 'joinedOn'>;

export interface Namesakes {
	readonly name: string;
	/** Who joined first stands first; names alone stand last. */
	readonly rows: readonly Omit<Row, 'name'>[];
}

/**
 * Rows of one name, each with the day of joining. Somebody without a phone who lost the code begins
 * as new: then one of two is out of date, and only a coach can tell.
 *
 * @param rows of one day, who joined first comes first
 */
export function namesakesOf(rows: readonly Row[]): Namesakes[] {
	const byName = Map.groupBy(rows, ({ name }) => foldName(name));
	return [...byName.values()]
		.filter(({ length }) => length > 1)
		.map((same) => ({
			name: same[0]?.name ?? '',
			rows: [...same]
				.sort((one, other) => placeOf(one) - placeOf(other))
				.map(({ memberId, joinedOn }) => ({ memberId, joinedOn }))
		}));
}

/** By the day of joining; names alone come after them all. */
const placeOf = ({ joinedOn }: Row) => (joinedOn ? Date.parse(joinedOn) : Number.MAX_SAFE_INTEGER);
