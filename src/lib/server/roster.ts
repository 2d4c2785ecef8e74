import type { Kysely } from 'kysely';
import { nextStep, type NextStep, type RosterState } from '../guidance/roster-next.ts';
import { rosterWord } from '../guidance/roster-word.ts';
import { compareDates, localDate } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import * as attendance from './attendance.ts';
import type { Database } from './database/tables.ts';
import * as groupDays from './group-days.ts';
import * as members from './members.ts';
import * as nextOutings from './next-outings.ts';
import * as readings from './readings.ts';
import { sharesPlace } from './shares-place.ts';
import { standings } from './standing.ts';
import type { Vault } from './vault.ts';
import * as walks from './walks.ts';

/** One line of the roster: all that a coach may see there. Never a reason, an answer or an age. */
export interface RosterRow {
	readonly memberId: string;
	readonly name: string;
	/** Null for a name alone. */
	readonly joinedOn: LocalDate | null;
	readonly state: RosterState;
	readonly next: NextStep;
	/** The group's next outing at the runner's own step; null where none is planned or shared. */
	readonly nextOuting: NextOuting | null;
	readonly isHereToday: boolean;
	/** The last day on which they were there or did the group's outing, or null. */
	readonly lastOutingOn: LocalDate | null;
	/** Whether there is somebody to ask for an emergency contact. */
	readonly shares: boolean;
}

/** What somebody on the list does next with the group. */
export interface NextOuting {
	readonly onDate: LocalDate;
	readonly name: string;
	/** Outings behind the group below zero, ahead of it above. */
	readonly outingsAhead: number;
}

/**
 * Everybody on the list, by name, with what they may do now. It takes the same number of queries
 * for a group of two as for one of two hundred. That the coach looked is written down for each
 * runner whose result was read.
 */
export async function of(
	database: Kysely<Database>,
	vault: Vault,
	reader: readings.Reader,
	now: number
): Promise<RosterRow[]> {
	const { coach, group } = reader;
	const present = await members.list(database, coach.coachId, group.id);
	return look(database, vault, reader, present, now);
}

/** The same for one of them; null for who is not in the group, or not the coach's to know. */
export async function find(
	database: Kysely<Database>,
	vault: Vault,
	reader: readings.Reader,
	memberId: string,
	now: number
): Promise<RosterRow | null> {
	const { coach, group } = reader;
	const member = await members.find(database, coach.coachId, group.id, memberId);
	if (!member) return null;
	return (await look(database, vault, reader, [member], now))[0] ?? null;
}

async function look(
	database: Kysely<Database>,
	vault: Vault,
	{ coach, group }: readings.Reader,
	present: readonly members.Member[],
	now: number
): Promise<RosterRow[]> {
	const sharing = present.flatMap(sharedRunner);
	const standingOf = await standings(database, vault, sharing, now);
	await readings.record(database, { coach, group }, sharing, 'result', now);
	const today = localDate(now, group.timeZone);
	const here = await attendance.list(database, coach.coachId, group.id, today);
	const walkedBy = await walks.listOfMany(database, sharing);
	const isHere = new Set(here.map(({ memberId }) => memberId));
	const last = await attendance.byMember(database, coach.coachId, group.id);
	const lastByPhone = await groupDays.lastByMember(database, coach.coachId, group.id);
	const nextOf = await nextOutings.ofMembers(database, coach.coachId, group.id, today);
	return present.map((member) => {
		const [runnerId] = sharedRunner(member);
		const own = sharesPlace(member) ? nextOf(member.id) : null;
		const state: RosterState =
			runnerId === undefined
				? { open: false, word: member.runnerId === null ? 'not-joined' : 'not-shared' }
				: rosterWord(standingOf(runnerId), today, walks.daysSince(walkedBy(runnerId), today));
		return {
			memberId: member.id,
			name: member.name,
			joinedOn: member.joinedAt === null ? null : localDate(member.joinedAt, group.timeZone),
			state,
			next: nextStep(state),
			nextOuting: own && {
				onDate: own.onDate,
				name: own.outing.name,
				outingsAhead: own.outingsAhead
			},
			isHereToday: isHere.has(member.id),
			lastOutingOn: later(last.get(member.id)?.lastOn, lastByPhone.get(member.id)),
			shares: runnerId !== undefined
		};
	});
}

function later(one: LocalDate | undefined, other: LocalDate | undefined): LocalDate | null {
	if (one === undefined || other === undefined) return one ?? other ?? null;
	return compareDates(one, other) > 0 ? one : other;
}

/** The runner whose result may be read, if there is one. */
function sharedRunner({ runnerId, sharedSince }: members.Member): string[] {
	return runnerId !== null && sharedSince !== null ? [runnerId] : [];
}
