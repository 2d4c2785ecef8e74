import { daysBetween, type LocalDate } from '../calendar/local-date.ts';
import type { DoneOuting } from './settle-entries.ts';

/**
 * For how many days the morning after is still asked about. Soreness from new exercise is usually
 * strongest on the second and third day. Common practice, no source.
 */
export const ASKED_FOR_DAYS = 3;

/**
 * The outing after which pain has to be asked about now: the newest one of an earlier day, while it
 * is not long ago, and until it was answered. Null for none. A sore shin or knee is the commonest
 * harm of starting to run, and often comes overnight.
 *
 * @param outings in any order
 */
export function morningAfter<
	Outing extends Pick<DoneOuting, 'painNextMorning'> & { readonly onDate: LocalDate }
>(outings: readonly Outing[], today: LocalDate): Outing | null {
	const earlier = outings.filter(({ onDate }) => daysBetween(onDate, today) > 0);
	const newest = earlier.reduce<Outing | null>(
		(last, one) => (last === null || daysBetween(last.onDate, one.onDate) > 0 ? one : last),
		null
	);
	if (newest === null || newest.painNextMorning !== null) return null;
	return daysBetween(newest.onDate, today) <= ASKED_FOR_DAYS ? newest : null;
}
