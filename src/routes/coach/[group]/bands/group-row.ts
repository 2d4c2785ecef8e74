import type { DeskPhase, DeskView } from '$lib/guidance/desk-view.ts';
import type { RosterState } from '$lib/guidance/roster-next.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';
import type { Units } from '../../../bands/speed-view.ts';
import { bandView, type BandView } from '../band-view.ts';

/** One runner's band for the part that the page is about. */
export interface GroupRow {
	readonly id: string;
	readonly name: string;
	readonly state: RosterState;
	/** Null where the result is not open, or the part is not in this runner's outing. */
	readonly band: BandView | null;
	/** Null where nothing was said since a coach last looked. */
	readonly says: string | null;
}

interface Seen {
	readonly id: string;
	readonly name: string;
	readonly today: RosterState;
	readonly desk: DeskView | null;
}

interface Group {
	readonly id: string;
	readonly timeZone: string;
	readonly units: Units['speed'];
	readonly paceUnits: Units['pace'];
}

export function groupRow({ id, name, today, desk }: Seen, part: PhaseKind, group: Group): GroupRow {
	const phase = desk && phaseFor(desk, part);
	const units = { speed: group.units, pace: group.paceUnits };
	const band = phase ? bandView(phase, group.id, units, group.timeZone) : null;
	return { id, name, state: today, band, says: null };
}

/** Whoever walks while the others run and recover has the brisk walk in that time. */
function phaseFor({ phases }: DeskView, part: PhaseKind): DeskPhase | undefined {
	const own = phases.find(({ kind }) => kind === part);
	if (own || (part !== 'steady-run' && part !== 'recovery-walk')) return own;
	return phases.find(({ kind }) => kind === 'brisk-walk');
}
