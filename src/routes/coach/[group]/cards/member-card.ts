import type { DeskView } from '$lib/guidance/desk-view.ts';
import type { RosterState } from '$lib/guidance/roster-next.ts';
import { longDate } from '$words/dates.ts';
import { spokenLength } from '$words/outings.ts';
import { cardPhase } from '../../../bands/card-phase.ts';
import type { Units } from '../../../bands/speed-view.ts';

interface Member {
	readonly name: string;
	readonly today: RosterState;
	readonly desk: DeskView | null;
}

interface Group {
	readonly units: Units['speed'];
	readonly paceUnits: Units['pace'];
	readonly emergencyNumber: string | null;
	readonly meetingPoint: string | null;
	readonly defibrillator: string | null;
}

const may = { 'may-run': 'run', 'may-run-by-talk': 'talk', 'may-walk': 'walk' } as const;

/** The card of a runner whose result is open today; null for everybody else. */
export function memberCard({ name, today, desk }: Member, group: Group) {
	if (!today.open || desk === null) return null;
	const units = { speed: group.units, pace: group.paceUnits };
	return {
		name,
		may: may[today.word],
		until: longDate(today.validUntil),
		settlingUntil: today.settlingInUntil && longDate(today.settlingInUntil),
		longestRun: today.longestRunSeconds === null ? null : spokenLength(today.longestRunSeconds),
		phases: desk.phases.map((phase) => cardPhase(phase, phase.shares, units)),
		// A limit that is there with pulse off is the runner's own to print.
		careTeamLimit: null,
		emergencyNumber: group.emergencyNumber,
		meetingPoint: group.meetingPoint,
		defibrillator: group.defibrillator
	};
}
