import type { PhaseKind } from '../outing/phase.ts';
import type { BandSetting } from './band-setting.ts';

/** One entry of what a group's coaches set, for one runner or for the whole group. */
export interface SetBand {
	readonly groupId: string;
	readonly phase: PhaseKind;
	readonly by: 'coach' | 'group';
	/** Null takes back what was set before. */
	readonly setting: BandSetting | null;
	/** Epoch milliseconds. */
	readonly setAt: number;
}

/** What counts of a group: never a taken-back entry. */
export type InForce<Entry extends SetBand = SetBand> = Entry & { readonly setting: BandSetting };

/**
 * What each group has set for a phase: of a runner's own entries the newest, and where that is none
 * or taken back, the newest of the group's default. A group that has set nothing has no say.
 *
 * @param entries in any order; of two at the same moment the later in the list counts
 */
export function settingsInForce<Entry extends SetBand>(
	entries: readonly Entry[],
	phase: PhaseKind
): readonly InForce<Entry>[] {
	const ofPhase = entries.filter((entry) => entry.phase === phase);
	const groups = [...new Set(ofPhase.map(({ groupId }) => groupId))];
	return groups.flatMap((groupId) => {
		const ofGroup = ofPhase.filter((entry) => entry.groupId === groupId);
		const own = newest(ofGroup.filter(({ by }) => by === 'coach'));
		const counts = own ?? newest(ofGroup.filter(({ by }) => by === 'group'));
		return counts === null ? [] : [counts];
	});
}

function newest<Entry extends SetBand>(entries: readonly Entry[]): InForce<Entry> | null {
	let last: Entry | null = null;
	for (const entry of entries) if (last === null || entry.setAt >= last.setAt) last = entry;
	return last !== null && isInForce(last) ? last : null;
}

function isInForce<Entry extends SetBand>(entry: Entry): entry is InForce<Entry> {
	return entry.setting !== null;
}
