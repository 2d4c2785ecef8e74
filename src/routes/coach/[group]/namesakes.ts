import { foldName } from '$lib/forms/person-name.ts';
import { localDate } from '$lib/screening/calendar.ts';
import type { LocalDate } from '$lib/screening/types.ts';
import type { RosterRow } from '$lib/server/roster.ts';

export interface Namesakes {
	readonly name: string;
	/** The one that joined first stands first; names alone stand last. */
	readonly rows: readonly { readonly memberId: string; readonly joinedOn: LocalDate | null }[];
}

/**
 * Rows of one name, each with the day of joining. Somebody without a phone who lost the code begins
 * as new: then one of two is out of date, and only a coach can tell.
 */
export function namesakesOf(
	rows: readonly Pick<RosterRow, 'memberId' | 'name' | 'joinedAt'>[],
	timeZone: string
): Namesakes[] {
	const byName = Map.groupBy(rows, ({ name }) => foldName(name));
	return [...byName.values()]
		.filter(({ length }) => length > 1)
		.map((same) => ({
			name: same[0]?.name ?? '',
			rows: [...same]
				.sort((one, other) => (one.joinedAt ?? Infinity) - (other.joinedAt ?? Infinity))
				.map(({ memberId, joinedAt }) => ({
					memberId,
					joinedOn: joinedAt === null ? null : localDate(joinedAt, timeZone)
				}))
		}));
}
