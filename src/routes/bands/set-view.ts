import type { PhaseBand } from '$lib/guidance/phase-band.ts';
import { settingsInForce, type SetBand } from '$lib/guidance/settings-in-force.ts';
import { localDate } from '$lib/screening/calendar.ts';
import type { LocalDate } from '$lib/screening/types.ts';

/** That a coach set a band, as the runner reads it. */
export interface SetView {
	readonly by: 'coach' | 'group';
	readonly on: LocalDate;
	readonly groups: readonly string[];
	readonly notes: readonly { readonly text: string; readonly from: string }[];
	/** True where two groups set different bands, and the gentler counts. */
	readonly groupsDiffer: boolean;
	/** True where the result allows less than the coach set. */
	readonly isCut: boolean;
}

interface Entry extends SetBand {
	readonly groupName: string;
	readonly runnerNote: string | null;
	readonly setByName: string;
}

export function setView(
	{ kind, set }: PhaseBand,
	entries: readonly Entry[],
	timeZone: string
): SetView | null {
	if (set.by === 'default') return null;
	const deciding = settingsInForce(entries, kind).filter(({ groupId }) =>
		set.groupIds.includes(groupId)
	);
	return {
		by: set.by,
		on: localDate(set.since, timeZone),
		groups: deciding.map(({ groupName }) => groupName),
		notes: deciding.flatMap(({ runnerNote, setByName }) =>
			runnerNote === null ? [] : [{ text: runnerNote, from: setByName }]
		),
		groupsDiffer: set.groupsDiffer,
		isCut: set.cuts.some(({ because }) => because === 'screening')
	};
}
