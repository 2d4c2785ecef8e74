import * as plannedOutings from '$lib/server/planned-outings.ts';
import { Unreadable } from '$lib/server/vault.ts';
import type { needGroup } from './need-group.ts';

type Needed = Pick<Awaited<ReturnType<typeof needGroup>>, 'database' | 'coach' | 'group'>;

/** The outing that is set for a day; null for none, undefined where it cannot be read. */
export async function setFor({ database, coach, group }: Needed, day: string) {
	try {
		const between = { from: day, until: day };
		const [set] = await plannedOutings.list(database, coach.coachId, group.id, between);
		return set === undefined || set.state === 'missed' ? null : set.outing;
	} catch (error) {
		if (error instanceof Unreadable) return undefined;
		throw error;
	}
}
