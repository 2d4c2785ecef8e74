import type { DeskPhase } from '../guidance/desk-view.ts';
import { NARROWEST_FRACTION, type BandSetting } from '../guidance/band-setting.ts';
import { phaseTargets } from '../outing/phase.ts';
import * as bandSettings from './band-settings.ts';
import * as memberBands from './member-bands.ts';

export type SetAnswer = 'set' | 'not-found' | 'closed' | 'beyond';

/** What a coach wants: shares of the reserve and effort, or effort alone. */
export type Wanted = Pick<BandSetting, 'effortLow' | 'effortHigh'> | BandSetting;

export type WantedWords = Omit<bandSettings.BandWords, 'setting'> & {
	readonly setting: Wanted | null;
};

/**
 * Sets a band for one member: only while their result is open, only a phase that they have, and
 * nothing beyond what screening allows them now. Who has pulse off is set by effort alone, whatever
 * shares of the reserve are sent.
 * @throws RangeError for effort alone where pulse is not off
 */
export async function setMemberBand(
	stores: memberBands.Stores,
	coach: memberBands.Asking,
	groupId: string,
	memberId: string,
	words: WantedWords,
	now: number
): Promise<SetAnswer> {
	const member = await memberBands.find(stores, coach, groupId, memberId, now);
	if (member === null || isHidden(member)) return 'not-found';
	const phase = member.desk?.phases.find(({ kind }) => kind === words.phase);
	if (!member.desk || phase === undefined) return 'closed';
	const subject = { groupId, memberId };
	const { database } = stores;
	const before = await bandSettings.history(database, coach.coachId, subject);
	const setting = words.setting && whole(words.setting, phase, before ?? []);
	if (setting !== null && isBeyond(setting, phase)) return 'beyond';
	return bandSettings.set(database, coach, subject, { ...words, setting }, now);
}

function whole(
	wanted: Wanted,
	phase: DeskPhase,
	history: readonly bandSettings.BandEntry[]
): BandSetting {
	const { effortLow, effortHigh } = wanted;
	// Without shares of the reserve there is no pulse.
	if (phase.reserve === null) return { ...reserveOf(phase, history), effortLow, effortHigh };
	if (!('highFraction' in wanted)) throw new RangeError('setMemberBand requires shares');
	const { lowFraction, highFraction } = wanted;
	return { lowFraction, highFraction, effortLow, effortHigh };
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
