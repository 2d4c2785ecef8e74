import { phaseRange } from '$lib/guidance/allowed-range.ts';
import { cutTo, type BandSetting } from '$lib/guidance/band-setting.ts';
import { phaseTargets, type PhaseKind } from '$lib/outing/phase.ts';
import { formValues, type BandFormView } from '../band-form.ts';

interface Entry {
	readonly phase: PhaseKind;
	readonly setting: BandSetting | null;
	readonly runnerNote: string | null;
	readonly innerNote: string | null;
}

/** The form of the group's band for a part: as it was set, or as usual. Beats belong to runners. */
export function groupForm(phase: PhaseKind, history: readonly Entry[]): BandFormView {
	const newest = history.find((entry) => entry.phase === phase);
	const ends = phaseRange(phase);
	const usual = phaseTargets[phase];
	const { reserve, effort } = newest?.setting ? cutTo(ends, usual, newest.setting).target : usual;
	const setting = {
		lowFraction: reserve.low,
		highFraction: reserve.high,
		effortLow: effort.low,
		effortHigh: effort.high
	};
	return {
		phase,
		values: formValues(setting, newest?.setting ? newest : undefined),
		hasReserve: true,
		inForce: null,
		roughBeats: null,
		ends
	};
}
