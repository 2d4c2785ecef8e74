import { bandForm, effortForm, settingOf } from '$lib/forms/band-setting.ts';
import { readForm, type Issue, type Typed } from '$lib/forms/read-form.ts';
import type { AllowedRange } from '$lib/guidance/allowed-range.ts';
import type { BandSetting } from '$lib/guidance/band-setting.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';

type Effort = Pick<BandSetting, 'effortLow' | 'effortHigh'>;

interface Words<Setting> {
	readonly phase: PhaseKind;
	readonly setting: Setting;
	readonly runnerNote: string | null;
	readonly innerNote: string | null;
}

export type BandAnswer<Setting> =
	| { readonly ok: true; readonly value: Words<Setting>; readonly values: Typed }
	| { readonly ok: false; readonly issues: readonly Issue[]; readonly values: Typed };

export function readBand(sent: FormData): BandAnswer<BandSetting> {
	const read = readForm(sent, bandForm);
	if (!read.ok) return read;
	return {
		ok: true,
		value: { ...read.value, setting: settingOf(read.value) },
		values: typed(sent)
	};
}

/** Who has pulse off is set by effort: the shares of the reserve are not the coach's to set. */
export function readEffort(sent: FormData): BandAnswer<Effort> {
	const read = readForm(sent, effortForm);
	if (!read.ok) return read;
	const { effortLow, effortHigh } = read.value;
	const setting = { effortLow, effortHigh };
	return { ok: true, value: { ...read.value, setting }, values: typed(sent) };
}

/** Where a band goes further than it may. The form says how far, and why. */
export function beyond(
	setting: BandSetting | Effort,
	{ reserve, effort }: AllowedRange
): readonly Issue[] {
	const issues: Issue[] = [];
	if ('highFraction' in setting && setting.highFraction > reserve.highest) {
		issues.push({ field: 'highPercent', code: 'beyond' });
	}
	if (setting.effortHigh > effort.highest) issues.push({ field: 'effortHigh', code: 'beyond' });
	return issues;
}

/** What was typed, to be shown again. */
function typed(sent: FormData): Typed {
	return Object.fromEntries(
		[...sent].flatMap(([field, text]) => (typeof text === 'string' ? [[field, text]] : []))
	);
}
