import type { DeskView } from '$lib/guidance/desk-view.ts';
import type { BandDoubt } from '$lib/server/band-doubts.ts';
import type { BandEntry } from '$lib/server/band-settings.ts';
import type { GroupOf } from '$lib/server/groups.ts';
import type { Member } from '$lib/server/members.ts';
import { bandView } from '../../../band-view.ts';
import { seenDoubt } from '../../../doubt-view.ts';
import { backView, entryView } from '../../../entry-view.ts';
import { memberForm } from './member-form.ts';

interface Kept {
	readonly member: Member;
	readonly group: GroupOf;
	readonly desk: DeskView;
	/** Newest first. */
	readonly history: readonly BandEntry[];
	/** Of the whole group. */
	readonly doubts: readonly BandDoubt[];
}

/** All that the page of a runner shows whose result is open. */
export function openView({ member, group, desk, history, doubts }: Kept) {
	const { timeZone } = group;
	const units = { speed: group.units, pace: group.paceUnits };
	const hasReserve = desk.pulse !== 'off';
	return {
		mayRun: desk.mayRun,
		pulse: desk.pulse,
		phases: desk.phases.map((phase) => {
			const band = bandView(phase, group.id, units, timeZone);
			return {
				band,
				form: memberForm(phase, band, history),
				back: backView(history, phase.kind, timeZone, hasReserve),
				hasOwn: Boolean(history.find((entry) => entry.phase === phase.kind)?.setting)
			};
		}),
		history: history.map((entry) => entryView(entry, timeZone, hasReserve)),
		doubts: doubts
			.filter(({ memberId }) => memberId === member.id)
			.map((doubt) => seenDoubt(doubt, timeZone))
	};
}
