import type { Kysely } from 'kysely';
import { localDate } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import * as attendance from './attendance.ts';
import type { Coach } from './coaches.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import * as members from './members.ts';
import * as outingPlans from './outing-plans.ts';
import * as plannedOutings from './planned-outings.ts';
import * as programmes from './programmes.ts';
import { readOr, type Missed } from './readable.ts';
import type { Vault } from './vault.ts';

type Leading = Pick<Coach, 'coachId' | 'name'>;

export interface ExportedMember {
	readonly name: string;
	readonly addedOn: LocalDate;
	/** Null for a name alone. */
	readonly joinedOn: LocalDate | null;
	readonly isSharing: boolean;
	/** Newest first. */
	readonly attended: readonly LocalDate[];
}

/**
 * A group as an owner may take it away: its fields, its list, its attendance, its library and its
 * programme. Results are not in it: a file would keep them after the runner had taken them back. Nor
 * is what a programme took from its runners' pulses. Null for whoever does not own the group.
 */
export async function of(
	database: Kysely<Database>,
	vault: Vault,
	coach: Leading,
	groupId: string
) {
	const { coachId } = coach;
	const group = await groups.ofCoach(database, coachId, groupId);
	if (group?.role !== 'owner') return null;
	const present = await members.list(database, coachId, groupId);
	const attended = await attendance.list(database, coachId, groupId);
	const byMember = Map.groupBy(attended, ({ memberId }) => memberId);
	const dayOf = (at: number) => localDate(at, group.timeZone);
	const { id: _, role: __, isDemo: ___, ...fields } = group;
	return {
		group: fields,
		members: present.map((member): ExportedMember => ({
			name: member.name,
			addedOn: dayOf(member.addedAt),
			joinedOn: member.joinedAt === null ? null : dayOf(member.joinedAt),
			isSharing: member.sharedSince !== null,
			attended: (byMember.get(member.id) ?? []).map(({ onDate }) => onDate)
		})),
		attendance: attended.map(({ onDate, name }) => ({ onDate, name })),
		...(await outingsOf(database, vault, coach, groupId))
	};
}

/** What is written for the group. What cannot be read is named, and takes nothing else away. */
async function outingsOf(
	database: Kysely<Database>,
	vault: Vault,
	coach: Leading,
	groupId: string
) {
	const unreadable: Missed[] = [];
	const note = (missed: Missed) => void unreadable.push(missed);
	const plans = await outingPlans.list(database, { coach, groupId }, note);
	const readProgramme = () => programmes.current(database, vault, coach.coachId, groupId);
	const programme = await readOr(readProgramme, null, note);
	const readDays = () => plannedOutings.list(database, coach.coachId, groupId);
	const days = await readOr(readDays, [], note);
	return {
		library: plans.map(({ outing }) => outing),
		programme: programme && programmeFields(programme),
		days: days.map(({ onDate, number, week, state, outing }) => ({
			...{ onDate, number, week, state, outing }
		})),
		unreadable
	};
}

function programmeFields({ startsOn, weekdays, holidays, inputs }: programmes.Programme) {
	const wishes = inputs && {
		weeks: inputs.weeks,
		outingsAWeek: inputs.outingsAWeek,
		goal: inputs.goal
	};
	return { startsOn, weekdays, holidays, wishes };
}
