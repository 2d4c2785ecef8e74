import { compareDates, type LocalDate } from '../../calendar/local-date.ts';
import type { ProgrammeOuting, ProgrammeWeek } from './programme.ts';

/** What became of an outing of the programme. */
export interface Happened {
	readonly number: number;
	readonly onDate: LocalDate;
	readonly state: 'done' | 'missed';
}

/** Where a group stands in its programme. */
export interface Stand {
	/** The next outing; null when the programme is at its end. */
	readonly next: ProgrammeOuting | null;
	readonly lastDoneOn: LocalDate | null;
	readonly lastOn: LocalDate | null;
}

/**
 * Where a group stands after what happened. A week of which less than half was done comes again from
 * its first outing; a single missed outing is not made up for. The last outing of all comes again
 * until it is done. Our own rules, no source.
 *
 * @param happened in any order, each outing as often as it was tried
 * @throws RangeError for an outing that is not of the programme
 */
export function standAfter(weeks: readonly ProgrammeWeek[], happened: readonly Happened[]): Stand {
	const all = weeks.flatMap(({ outings }) => outings);
	let next: ProgrammeOuting | null = all[0] ?? null;
	let doneOfWeek = 0;
	let lastDoneOn: LocalDate | null = null;
	const inOrder = [...happened].sort((one, other) => compareDates(one.onDate, other.onDate));
	for (const { number, state, onDate } of inOrder) {
		const week = weeks.find(({ outings }) => outings.some((one) => one.number === number));
		if (week === undefined) throw new RangeError('standAfter requires outings of the programme');
		if (week.outings[0]?.number === number) doneOfWeek = 0;
		if (state === 'done') {
			doneOfWeek += 1;
			lastDoneOn = onDate;
		}
		next = nextAfter(number, state, { week, doneOfWeek, all });
	}
	return { next, lastDoneOn, lastOn: inOrder.at(-1)?.onDate ?? null };
}

function nextAfter(
	number: number,
	state: Happened['state'],
	{
		week,
		doneOfWeek,
		all
	}: Readonly<{ week: ProgrammeWeek; doneOfWeek: number; all: readonly ProgrammeOuting[] }>
): ProgrammeOuting | null {
	const isLastOfWeek = week.outings.at(-1)?.number === number;
	if (isLastOfWeek && doneOfWeek * 2 < week.outings.length) return week.outings[0] ?? null;
	const following = all.find((one) => one.number === number + 1);
	if (following !== undefined) return following;
	return state === 'done' ? null : (week.outings.at(-1) ?? null);
}

/**
 * The outing of a runner who stands elsewhere in the programme than the group: it begins and ends for
 * them too.
 *
 * @param outingsAhead of the group above zero, behind it below
 * @throws RangeError for what is no whole number of outings
 * @example ownNumber({ groupNumber: 4, outingsAhead: -6, lastNumber: 48 }) // 1
 */
export function ownNumber(at: {
	readonly groupNumber: number;
	readonly outingsAhead: number;
	readonly lastNumber: number;
}): number {
	const { groupNumber, outingsAhead, lastNumber } = at;
	if (!Number.isInteger(groupNumber + outingsAhead)) {
		throw new RangeError('ownNumber requires whole outings');
	}
	return Math.min(Math.max(groupNumber + outingsAhead, 1), lastNumber);
}
