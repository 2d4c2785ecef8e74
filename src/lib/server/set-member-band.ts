import type { DeskPhase } from '../guidance/desk-view.ts';
import { NARROWEST_FRACTION, type BandSetting } from '../guidance/band-setting.ts';
import { phaseTargets } from '../outing/phase.ts';
import * as bandSettings from './band-settings.ts';
import * as memberBands from './member-bands.ts';

export type SetAnswer = 'set' | 'not-found' | 'closed' | 'beyond';

/**
 * Sets a band for one member: only while their result is open, only a phase that they have, and
 * nothing beyond what screening allows them now. Who has pulse off is set by effort alone, whatever
 * shares of the reserve are sent.
 */
export async function setMemberBand(
	stores: memberBands.Stores,
	coach: memberBands.Asking,
	groupId: string,
	memberId: string,
	words: bandSettings.BandWords,
	now: number
): Promise<SetAnswer> {
	const member = await memberBands.find(stores, coach, groupId, memberId, now);
	if (member === null || isHidden(member)) return 'not-found';
	const phase = member.desk?.phases.find(({ kind }) => kind === words.phase);
	if (!member.desk || phase === undefined) return 'closed';
	const subject = { groupId, memberId };
	let { setting } = words;
	if (setting !== null) {
		if (member.desk.pulse === 'off') {
			const before = await bandSettings.history(stores.database, coach.coachId, subject);
			setting = { ...setting, ...reserveOf(phase, before ?? []) };
		}
		if (isBeyond(setting, phase)) return 'beyond';
	}
	return bandSettings.set(stores.database, coach, subject, { ...words, setting }, now);
}

/** Nobody has joined under the name, or they do not share their result. */
function isHidden({ today }: memberBands.MemberBands): boolean {
	return today.word === 'not-joined' || today.word === 'not-shared';
}

/** The shares that are kept for the day when pulse comes back: as they were last set, or as usual. */
function reserveOf(
	{ kind, allowed }: DeskPhase,
	history: readonly bandSettings.BandEntry[]
): Pick<BandSetting, 'lowFraction' | 'highFraction'> {
	const last = history.find(({ phase }) => phase === kind)?.setting;
	const { low, high } = phaseTargets[kind].reserve;
	const highFraction = Math.min(last?.highFraction ?? high, allowed.reserve.highest);
	const lowFraction = last ? last.lowFraction : low;
	if (lowFraction === null) return { lowFraction, highFraction };
	const under = Math.round((highFraction - NARROWEST_FRACTION) * 100) / 100;
	return { lowFraction: Math.min(lowFraction, under), highFraction };
}

function isBeyond(setting: BandSetting, { allowed }: DeskPhase): boolean {
	return (
		setting.highFraction > allowed.reserve.highest || setting.effortHigh > allowed.effort.highest
	);
}
