import type { LocalDate } from '$lib/calendar/local-date.ts';
import type { CalendarDay } from '$lib/outing/programme/days-to-come.ts';
import type { WhatMoved } from '$lib/outing/programme/what-moved.ts';

/** A day of the calendar with an outing. */
export interface DayRow {
	readonly kind: 'outing';
	readonly id: string;
	readonly onDate: LocalDate;
	readonly name: string;
	readonly totalSeconds: number;
	readonly state: CalendarDay['state'];
	readonly isToday: boolean;
	/** Marked by a coach: phones take it as given. */
	readonly isHot: boolean;
	readonly isComing: boolean;
	/** By itself, or left by an earlier programme: not of the one that the group follows. */
	readonly isOfProgramme: boolean;
	/** Runs on the day before or after, one of them by itself: there is no day off between. */
	readonly isTooClose: boolean;
}

/** Days without an outing, both ends included. */
export interface FreeRow {
	readonly kind: 'free';
	readonly from: LocalDate;
	readonly until: LocalDate;
}

export interface CalendarView {
	/** Over, and nobody has said what became of them; oldest first. */
	readonly open: readonly DayRow[];
	readonly soon: readonly (DayRow | FreeRow)[];
	readonly later: readonly (DayRow | FreeRow)[];
	/** Newest first. */
	readonly over: readonly DayRow[];
}

/** What a press just did, and what moved by it. */
export type JustDone =
	| (Moving & {
			readonly kind: 'said';
			readonly id: string;
			readonly name: string;
			readonly onDate: LocalDate;
			readonly state: 'done' | 'missed';
	  })
	| (Moving & { readonly kind: 'off'; readonly from: LocalDate; readonly until: LocalDate });

interface Moving {
	readonly moved: WhatMoved;
}
