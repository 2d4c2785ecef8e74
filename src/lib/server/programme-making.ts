import type { CalendarDay } from '../outing/programme/days-to-come.ts';
import type { LocalDate } from '../screening/types.ts';
import type { ToPlan } from './plan-days.ts';
import type { ProgrammeWords } from './programme-rows.ts';

/**
 * Works the days to come out of the calendar as it is at that moment; null for wishes that cannot be
 * met. It is asked while nobody else can change the calendar, so it only reckons.
 */
export type Planner = (
	words: ProgrammeWords,
	calendar: readonly CalendarDay[],
	today: LocalDate
) => readonly ToPlan[] | null;

/** What a programme was made from, and the days that came of it or how they come of it. */
export interface Making {
	readonly words: ProgrammeWords;
	readonly planned: readonly ToPlan[] | Planner;
}

/** The days that come of it. */
export function plannedBy(how: Making['planned'], ...at: Parameters<Planner>): readonly ToPlan[] {
	const planned = typeof how === 'function' ? how(...at) : how;
	if (planned === null) throw new RangeError('a programme requires wishes that can be met');
	return planned;
}
