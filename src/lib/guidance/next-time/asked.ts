import { daysBetween, type LocalDate } from '../../calendar/local-date.ts';
import type { DoneOuting } from '../../outing/settle-entries.ts';
import { outingFacts, type OutingFacts } from './outing-facts.ts';

/** An outing of a day. */
export type DatedOuting = DoneOuting & { readonly onDate: LocalDate };

/** Why nothing is raised, however an outing went. */
export const holds = ['settling-in', 'care-limit', 'no-runs'] as const;
export type Hold = (typeof holds)[number];

/** What may be asked of somebody next. */
export interface NextTimeRules {
	readonly today: LocalDate;
	/** What keeps from asking for more, of runs and of brisk walks; null for nothing. */
	readonly held: Readonly<Record<OutingFacts['main'], Hold | null>>;
	/** The upper edge of the band, of runs and of brisk walks; null where no pulse counts. */
	readonly bandHighBpm: Readonly<Record<OutingFacts['main'], number | null>>;
	readonly painStands: boolean;
	/** Whether a sign of the newest outing still keeps the runner from everything. */
	readonly signStands: boolean;
}

/** All that a row of the table looks at. */
export interface Asked {
	readonly seen: OutingFacts;
	readonly newest: DatedOuting;
	/** Newest first. */
	readonly outings: readonly DatedOuting[];
	readonly rules: NextTimeRules;
}

/** From so many days without an outing on, one begins a step lower. Our own rule, no source. */
export const GAP_DAYS = 14;

export function factsOf(outing: DoneOuting, { bandHighBpm }: NextTimeRules): OutingFacts {
	const { main } = outingFacts(outing, null);
	return outingFacts(outing, bandHighBpm[main]);
}

export const daysSince = ({ newest, rules }: Asked) => daysBetween(newest.onDate, rules.today);
export const isLongAgo = (asked: Asked) => daysSince(asked) >= GAP_DAYS;

/** Whether anything of it hurt, gone or not. */
export const hurt = ({ pain, painNextMorning }: DoneOuting) =>
	[pain, painNextMorning].some((said) => said !== null && said.level !== 'none');

/** Nothing is raised after a gap, a hot day, pain, a sign, or an outing that did not end as planned. */
export function mayRaise(asked: Asked): boolean {
	const { seen, newest, rules } = asked;
	const asPlanned = newest.ended?.how === 'finished' && newest.started?.hot === false;
	const isWell = !seen.feltWrong && !hurt(newest);
	return asPlanned && isWell && rules.held[seen.main] === null && !isLongAgo(asked);
}
