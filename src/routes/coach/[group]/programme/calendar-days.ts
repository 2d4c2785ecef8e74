import type { CalendarDay } from '$lib/outing/programme/days-to-come.ts';
import type { PlannedOuting } from '$lib/server/planned-outings.ts';

/** The calendar of a group as one of its programmes sees it; null for one that is yet to be made. */
export function calendarDays(
	planned: readonly PlannedOuting[],
	programmeId: string | null
): readonly CalendarDay[] {
	return planned
		.filter((one) => one.programmeId === programmeId || !makesRoom(one))
		.map(({ programmeId: of, number, onDate, state }) => ({
			onDate,
			number: of === programmeId ? number : null,
			state
		}));
}

const makesRoom = ({ programmeId, state }: PlannedOuting) =>
	programmeId !== null && state === 'planned';
