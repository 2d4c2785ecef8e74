import { localDate } from '$lib/screening/calendar.ts';
import type { AdviceScope, LocalDate } from '$lib/screening/types.ts';

/** An advice as a coach may read it: never why, nor who gave it. */
export interface AdviceView {
	readonly id: string;
	readonly givenOn: LocalDate;
	readonly scope: AdviceScope;
	readonly confirmedBy: readonly {
		readonly coachName: string;
		readonly qualification: string | null;
		readonly on: LocalDate;
	}[];
}

interface Seen extends Omit<AdviceView, 'confirmedBy'> {
	readonly confirmedBy: readonly {
		readonly coachName: string;
		readonly qualification: string | null;
		readonly confirmedAt: number;
	}[];
}

export function adviceView(
	{ id, givenOn, scope, confirmedBy }: Seen,
	timeZone: string
): AdviceView {
	return {
		id,
		givenOn,
		scope,
		confirmedBy: confirmedBy.map(({ coachName, qualification, confirmedAt }) => ({
			coachName,
			qualification,
			on: localDate(confirmedAt, timeZone)
		}))
	};
}
