import type { Kysely } from 'kysely';
import { compareDates, localDate } from '../calendar/local-date.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import { calendarOf, datesTaken, replaceDays } from './plan-days.ts';
import * as plannedOutings from './planned-outings.ts';
import type { PlannedState } from './programme-rows.ts';
import * as programmes from './programmes.ts';
import type { Vault } from './vault.ts';

export type Decided =
	| 'decided'
	/** Nothing became of a day before it has come. */
	| 'not-yet'
	/** Somebody else said what became of it. Nothing was written. */
	| 'changed-meanwhile'
	| 'not-found';

/** What a coach says of a day, and what it said when they looked. */
export interface Saying {
	readonly plannedId: string;
	readonly was: PlannedState;
	readonly state: PlannedState;
}

/**
 * Says what became of a day and moves what follows in the programme, in one step; whoever leads may.
 * Saying "planned" takes back what was said, and with it what moved.
 *
 * @param planner of the group's programme; it is not asked where that cannot be read
 */
export async function decide(
	database: Kysely<Database>,
	vault: Vault,
	coachId: string,
	groupId: string,
	{ plannedId, was, state }: Saying,
	planner: programmes.Planner,
	now: number
): Promise<Decided> {
	return database.transaction().execute(async (step) => {
		await groups.hold(step, groupId);
		const group = await groups.ofCoach(step, coachId, groupId);
		const day = await plannedOutings.find(step, coachId, groupId, plannedId);
		if (group === null || day === null) return 'not-found';
		if (day.state !== was) return 'changed-meanwhile';
		const today = localDate(now, group.timeZone);
		if (state !== 'planned' && compareDates(day.onDate, today) > 0) return 'not-yet';
		await plannedOutings.mark(step, coachId, groupId, plannedId, state, now);
		const programme = await programmes.current(step, vault, coachId, groupId);
		const inputs = programme?.inputs ?? null;
		if (programme === null || inputs === null) return 'decided';
		if (day.programmeId !== programme.id) return 'decided';
		const calendar = await calendarOf(step, groupId, programme.id);
		const planned = planner({ ...programme, inputs }, calendar, today);
		if (planned === null) return 'decided';
		const taken = await datesTaken(step, groupId, planned);
		if (taken !== null)
			throw new RangeError('decide requires a planner that leaves taken days out');
		await replaceDays(step, groupId, programme.id, planned, today);
		return 'decided';
	});
}
