import { addDays, type LocalDate } from '../../calendar/local-date.ts';
import * as attendance from '../attendance.ts';
import * as walks from '../walks.ts';
import { noonOf, type DemoPart } from './parts.ts';
import { demoRunners } from './people.ts';

/** Tuesday, Thursday and Saturday, as `getUTCDay` counts. */
const WEEKDAYS: ReadonlySet<number> = new Set([2, 4, 6]);
const WEEKS = 4;

/** The days on which the group met in the four weeks before today, oldest first: twelve. */
export function metOn(today: LocalDate): readonly LocalDate[] {
	const before = Array.from({ length: 7 * WEEKS }, (_, i) => addDays(today, i - 7 * WEEKS));
	return before.filter((date) => WEEKDAYS.has(new Date(noonOf(date)).getUTCDay()));
}

/** Who was there on each day, and that they walked. */
export const daysTogether: DemoPart = async ({ database, coach, groupId, runners, today }) => {
	for (const [i, date] of metOn(today).entries()) {
		for (const [id, { runnerId, memberId }] of runners) {
			const { missed } = demoRunners[id];
			if (missed === null || missed.includes(i)) continue;
			const at = noonOf(date);
			await attendance.mark(database, coach.coachId, groupId, memberId, date, at);
			await walks.record(database, runnerId, date, at);
		}
	}
};
