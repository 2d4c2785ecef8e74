import { compareDates, type LocalDate } from '$lib/calendar/local-date.ts';
import type { PlannedOuting } from '$lib/server/planned-outings.ts';

type Day = Pick<PlannedOuting, 'onDate' | 'state'>;

/** Still to come: nobody said what became of it, and its day is today or later. */
export const isNotPast = ({ onDate, state }: Day, today: LocalDate) =>
	state === 'planned' && compareDates(onDate, today) >= 0;

/** Its day is over, and nobody has said what became of it. */
export const isOpen = ({ onDate, state }: Day, today: LocalDate) =>
	state === 'planned' && compareDates(onDate, today) < 0;
