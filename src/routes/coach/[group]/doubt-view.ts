import type { PhaseKind } from '$lib/outing/phase.ts';
import { localDate } from '$lib/screening/calendar.ts';
import type { LocalDate } from '$lib/screening/types.ts';

/** "This feels wrong", as a coach reads it. */
export interface SeenDoubt {
	readonly id: string;
	readonly phase: PhaseKind;
	readonly feels: string;
	readonly saidOn: LocalDate;
	readonly seenOn: LocalDate | null;
}

interface Doubt {
	readonly id: string;
	readonly phase: PhaseKind;
	readonly feels: string;
	readonly saidAt: number;
	readonly seenAt: number | null;
}

export function seenDoubt(
	{ id, phase, feels, saidAt, seenAt }: Doubt,
	timeZone: string
): SeenDoubt {
	return {
		id,
		phase,
		feels,
		saidOn: localDate(saidAt, timeZone),
		seenOn: seenAt === null ? null : localDate(seenAt, timeZone)
	};
}
