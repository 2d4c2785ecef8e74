import { z } from 'zod';
import {
	LOWEST_EFFORT,
	LOWEST_FRACTION,
	NARROWEST_FRACTION,
	NOTE_LENGTHS,
	type BandSetting
} from '../guidance/band-setting.ts';
import { phaseField } from './band-doubt.ts';
import { optional, textUpTo, wholeNumber } from './fields.ts';

const lowest = Math.round(LOWEST_FRACTION * 100);
const narrowest = Math.round(NARROWEST_FRACTION * 100);

const efforts = {
	effortLow: wholeNumber({ low: LOWEST_EFFORT, high: 10 }),
	effortHigh: wholeNumber({ low: LOWEST_EFFORT, high: 10 })
};

const notes = {
	runnerNote: textUpTo(NOTE_LENGTHS.runner),
	innerNote: textUpTo(NOTE_LENGTHS.inner)
};

/** A band as a coach types it, in per cent of the reserve. How far it may go is decided later. */
export const bandForm = z
	.object({
		phase: phaseField,
		lowPercent: optional(wholeNumber({ low: lowest, high: 100 })),
		highPercent: wholeNumber({ low: lowest, high: 100 }),
		...efforts,
		...notes
	})
	.superRefine(({ lowPercent, highPercent, effortLow, effortHigh }, check) => {
		const width = highPercent - (lowPercent ?? lowest);
		if (width < 0) tell(check, 'highPercent', 'under-low');
		else if (width < narrowest) tell(check, 'highPercent', 'too-narrow');
		if (effortHigh < effortLow) tell(check, 'effortHigh', 'under-low');
	});

/** The same for whoever has pulse off: effort alone. */
export const effortForm = z
	.object({ phase: phaseField, ...efforts, ...notes })
	.superRefine(({ effortLow, effortHigh }, check) => {
		if (effortHigh < effortLow) tell(check, 'effortHigh', 'under-low');
	});

/** Back to how a phase was, or to the usual band. */
export const phaseForm = z.object({ phase: phaseField });

/** A band that was typed, in the fractions that are kept. */
export function settingOf(typed: z.output<typeof bandForm>): BandSetting {
	return {
		lowFraction: typed.lowPercent === null ? null : typed.lowPercent / 100,
		highFraction: typed.highPercent / 100,
		effortLow: typed.effortLow,
		effortHigh: typed.effortHigh
	};
}

type Check = Pick<z.core.$RefinementCtx, 'addIssue'>;

function tell(check: Check, field: string, message: string): void {
	check.addIssue({ code: 'custom', path: [field], message });
}
