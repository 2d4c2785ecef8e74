import { localDate } from '$lib/screening/calendar.ts';
import type { AdviceScope, LocalDate } from '$lib/screening/types.ts';

/** An advice as a coach may read it: never why, nor who gave it. */
export interface AdviceView {
	readonly id: string;
	readonly givenOn: LocalDate;
	readonly scope: AdviceScope;
	/** Which one it is of those of one day and scope, the newest first; null where it is alone. */
	readonly place: { readonly nth: number; readonly of: number } | null;
	readonly confirmedBy: readonly {
		readonly coachName: string;
		readonly qualification: string | null;
		readonly on: LocalDate;
	}[];
}

interface Seen extends Omit<AdviceView, 'confirmedBy' | 'place'> {
	readonly confirmedBy: readonly {
		readonly coachName: string;
		readonly qualification: string | null;
		readonly confirmedAt: number;
	}[];
}

export function adviceViews(seen: readonly Seen[], timeZone: string): AdviceView[] {
	return seen.map((advice) => ({
		id: advice.id,
		givenOn: advice.givenOn,
		scope: advice.scope,
		place: placeAmong(seen, advice),
		confirmedBy: advice.confirmedBy.map(({ coachName, qualification, confirmedAt }) => ({
			coachName,
			qualification,
			on: localDate(confirmedAt, timeZone)
		}))
	}));
}

/** Two that read alike are told apart by their place, or a coach would confirm one blindly. */
function placeAmong(seen: readonly Seen[], advice: Seen): AdviceView['place'] {
	const alike = seen.filter(
		({ givenOn, scope }) => givenOn === advice.givenOn && scope === advice.scope
	);
	return alike.length < 2 ? null : { nth: alike.indexOf(advice) + 1, of: alike.length };
}
