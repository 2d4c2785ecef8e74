import type { PulseShares } from '$lib/guidance/pulse-shares.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';

interface Range {
	/** Null where it is "anything under". */
	readonly low: number | null;
	readonly high: number;
}

/** A runner's bands as they are printed. Every number is rounded already. */
export interface Card {
	readonly name: string | null;
	readonly may: 'run' | 'talk' | 'walk';
	/** A date in words. */
	readonly until: string;
	/** The first day on which runs could come, in words, while settling in goes on. */
	readonly settlingUntil: string | null;
	/** How long a run may last in the weeks after settling in, in words; else null. */
	readonly longestRun: string | null;
	readonly phases: readonly CardPhase[];
	/** Only on the runner's own print, and the only pulse there with pulse off. */
	readonly careTeamLimit: number | null;
	readonly emergencyNumber: string | null;
	readonly meetingPoint: string | null;
	readonly defibrillator: string | null;
}

export interface CardPhase {
	readonly kind: PhaseKind;
	readonly byItsEnd: boolean;
	/** Null with pulse off, and before the resting pulse is known. */
	readonly beats: Range | null;
	readonly count: Range | null;
	readonly shares: PulseShares | null;
	readonly effort: { readonly low: number; readonly high: number };
	readonly speed: string;
}
