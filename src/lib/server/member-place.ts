import type { Kysely } from 'kysely';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import * as memberSteps from './member-steps.ts';
import * as members from './members.ts';
import { nextDay, ownNext, type NumberedOuting, type OwnNext } from './next-outings.ts';
import { outingOf } from './outing-shape.ts';
import { sharesPlace } from './shares-place.ts';

/** Where a member stands in the programme of their group, and where they could. */
export interface MemberPlace {
	readonly programmeId: string;
	/** As it was set: it may reach beyond the first or last outing. */
	readonly outingsAheadSet: number;
	/** Of the group, on its next day. */
	readonly group: OwnNext & { readonly number: number };
	readonly own: OwnNext & { readonly number: number };
	/** Each outing of the programme once, by number. */
	readonly numbered: readonly NumberedOuting[];
	/** Newest first. */
	readonly history: readonly memberSteps.MemberStep[];
}

/**
 * Null where the group has no programme with an outing to come, for who is not a coach of it, and of a
 * runner who does not share.
 *
 * @param today the date where the group is
 * @throws Unreadable
 */
export async function placeOf(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	memberId: string,
	today: LocalDate
): Promise<MemberPlace | null> {
	const member = await members.find(database, coachId, groupId, memberId);
	if (member === null || !sharesPlace(member)) return null;
	const day = await nextDay(database, coachId, groupId, today, 'of-programme');
	if (day === null || day.number === null || day.programmeId === null) return null;
	const history = await memberSteps.history(database, coachId, groupId, memberId);
	const outingsAheadSet = history[0]?.outingsAhead ?? 0;
	const own = ownNext(day, outingsAheadSet);
	const byNumber = new Map(day.numbered.map(({ number, outing }) => [number, outing]));
	return {
		programmeId: day.programmeId,
		outingsAheadSet,
		group: { ...ownNext(day, 0), number: day.number },
		own: { ...own, number: own.number ?? day.number },
		numbered: [...byNumber].map(([number, outing]) => ({
			number,
			outing: outingOf(outing, 'planned_outing')
		})),
		history
	};
}
