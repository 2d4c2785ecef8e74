import { cutTo, type BandSetting } from '$lib/guidance/band-setting.ts';
import type { DeskPhase } from '$lib/guidance/desk-view.ts';
import { phaseTargets, type PhaseKind } from '$lib/outing/phase.ts';
import type { BandView } from '../../../band-view.ts';
import { formValues, type BandFormView } from '../../../band-form.ts';

interface Entry {
	readonly phase: PhaseKind;
	readonly setting: BandSetting | null;
	readonly runnerNote: string | null;
	readonly innerNote: string | null;
}

/**
 * The form of one phase for one runner: with the band that this group's coaches set, as far as it is
 * open now, or else with the band that counts.
 *
 * @param band the one that counts, as the page tells it
 * @param history newest first
 */
export function memberForm(
	phase: DeskPhase,
	band: Pick<BandView, 'percent' | 'beats'>,
	history: readonly Entry[]
): BandFormView {
	const { percent, beats } = band;
	const { kind, allowed, reserve, effort, roughBeats } = phase;
	const own = history.find((entry) => entry.phase === kind);
	const usual = phaseTargets[kind].reserve;
	const now: BandSetting = {
		lowFraction: reserve ? reserve.low : usual.low,
		highFraction: reserve ? reserve.high : usual.high,
		effortLow: effort.low,
		effortHigh: effort.high
	};
	const shown = own?.setting ? cutTo(allowed, phaseTargets[kind], own.setting).target : null;
	return {
		phase: kind,
		values: formValues(shown ? settingIn(shown) : now, own?.setting ? own : undefined),
		hasReserve: reserve !== null,
		inForce: percent && beats && { percent, beats: { low: beats.low, high: beats.high } },
		roughBeats,
		ends: allowed
	};
}

function settingIn({
	reserve,
	effort
}: Pick<(typeof phaseTargets)[PhaseKind], 'reserve' | 'effort'>) {
	return {
		lowFraction: reserve.low,
		highFraction: reserve.high,
		effortLow: effort.low,
		effortHigh: effort.high
	};
}
