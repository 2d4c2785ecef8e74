import type { PhaseKind } from '$lib/outing/phase.ts';
import { localDate } from '$lib/screening/calendar.ts';
import type { LocalDate } from '$lib/screening/types.ts';

/** What a runner last said about a phase. */
export interface DoubtView {
	readonly feels: string;
	readonly saidOn: LocalDate;
	readonly seenOn: LocalDate | null;
}

interface Doubt {
	readonly phase: PhaseKind;
	readonly feels: string;
	readonly saidAt: number;
	readonly seenAt: number | null;
}

/** @param doubts newest first; of two groups, one that a coach has seen comes before one that none has */
export function doubtViews(
	doubts: readonly Doubt[],
	timeZone: string
): Partial<Record<PhaseKind, DoubtView>> {
	const views: Partial<Record<PhaseKind, DoubtView>> = {};
	for (const { phase, feels, saidAt, seenAt } of doubts) {
		const saidOn = localDate(saidAt, timeZone);
		const seenOn = seenAt === null ? null : localDate(seenAt, timeZone);
		const shown = views[phase];
		if (shown === undefined) views[phase] = { feels, saidOn, seenOn };
		else if (shown.saidOn === saidOn && shown.feels === feels && shown.seenOn === null) {
			views[phase] = { ...shown, seenOn };
		}
	}
	return views;
}
