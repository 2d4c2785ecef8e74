import type { Kysely } from 'kysely';
import { localDate } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import * as attendance from './attendance.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import * as members from './members.ts';

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
 * A group as an owner may take it away: its fields, its list, its attendance. Results are not in
 * it: a file would keep them after the runner had taken them back. Null for whoever does not own
 * the group.
 */
export async function of(database: Kysely<Database>, coachId: string, groupId: string) {
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
		attendance: attended.map(({ onDate, name }) => ({ onDate, name }))
	};
}
