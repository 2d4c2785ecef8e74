import type { Kysely } from 'kysely';
import { dateRanges, type DateRange } from '../calendar/date-ranges.ts';
import { addDays, compareDates, type LocalDate } from '../calendar/local-date.ts';
import { comesAgain, type ComesAgain } from '../outing/programme/comes-again.ts';
import type { Database } from './database/tables.ts';
import { daysOf } from './programme-rows.ts';
import { Unreadable } from './vault.ts';

/** What is other in the days of a group than its runners may expect. */
export interface MovedOutings {
	readonly groupId: string;
	readonly groupName: string;
	/** Days of the last weeks on which the group's outing did not take place, by date. */
	readonly missed: readonly LocalDate[];
	readonly again: ComesAgain | null;
	/** Days without an outing to come, by date. */
	readonly free: readonly DateRange[];
}

/** So long a missed day is shown. Our own choice, no source. */
const SHOWN_DAYS = 14;

/**
 * What moved in the groups that a runner shares their result with, by name; a group of which nothing
 * is to be told is left out. It holds days of the group and nothing of any runner.
 *
 * @param today the runner's own date
 * @param until how far ahead days without an outing are told
 */
export async function forRunner(
	database: Kysely<Database>,
	runnerId: string,
	today: LocalDate,
	until: LocalDate
): Promise<MovedOutings[]> {
	const groups = await database
		.selectFrom('member')
		.innerJoin('running_group', 'running_group.id', 'member.group_id')
		.where('member.runner_id', '=', runnerId)
		.where('member.left_at', 'is', null)
		.where('member.shared_since', 'is not', null)
		.select(['running_group.id', 'running_group.name'])
		.orderBy('running_group.name')
		.execute();
	if (groups.length === 0) return [];
	const ids = groups.map(({ id }) => id);
	const days = await database
		.selectFrom('planned_outing')
		.select(['group_id', 'programme_id', 'number', 'week', 'on_date', 'state'])
		.where('group_id', 'in', ids)
		.orderBy('on_date')
		.execute();
	const programmes = await database
		.selectFrom('programme')
		.selectAll()
		.where('group_id', 'in', ids)
		.where('ended_at', 'is', null)
		.execute();
	return groups
		.map(({ id, name }): MovedOutings => {
			const own = days.filter(({ group_id }) => group_id === id);
			const programme = programmes.find(({ group_id }) => group_id === id);
			return {
				groupId: id,
				groupName: name,
				missed: own
					.filter(({ state }) => state === 'missed')
					.map(({ on_date }) => on_date)
					.filter((on) => isBetween(on, addDays(today, -SHOWN_DAYS), today)),
				again: comesAgain(
					own
						.filter(({ programme_id }) => programme_id === programme?.id)
						.map(({ on_date: onDate, ...day }) => ({ ...day, onDate })),
					today
				),
				free: programme ? freeOf(programme, today, until) : []
			};
		})
		.filter(({ missed, again, free }) => missed.length > 0 || again !== null || free.length > 0);
}

function freeOf(
	row: Parameters<typeof daysOf>[0],
	today: LocalDate,
	until: LocalDate
): readonly DateRange[] {
	try {
		return dateRanges(daysOf(row).holidays.filter((on) => isBetween(on, today, until)));
	} catch (error) {
		if (error instanceof Unreadable) return [];
		throw error;
	}
}

const isBetween = (on: LocalDate, from: LocalDate, until: LocalDate) =>
	compareDates(on, from) >= 0 && compareDates(on, until) <= 0;
