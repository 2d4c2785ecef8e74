import { checkPhase } from '$lib/outing/check-phase.ts';
import type { OutingIssueCode } from '$lib/outing/outing-issues.ts';
import type { OutingPhase } from '$lib/outing/outing.ts';
import { typedLength } from '$lib/outing/typed-length.ts';
import { kmhFromTyped, speedToType, type SpeedUnit } from '$lib/outing/typed-speed.ts';
import { minutesAndSeconds } from '$words/dates.ts';

/** A field in which a part of a phase is typed. */
export type TypedField =
	'seconds' | 'targetLow' | 'targetHigh' | 'speedKmh' | 'inclinePercent' | 'cue';

export const typedFields: readonly TypedField[] = [
	'seconds',
	'targetLow',
	'targetHigh',
	'speedKmh',
	'inclinePercent',
	'cue'
];

/** What stands in a field while it is not, or not yet, what the outing holds. */
export interface Typing {
	readonly text: string;
	/** What is wrong with it; null while it is right. */
	readonly code: OutingIssueCode | null;
	/** False while it is being typed: nobody is told off in the middle of a word. */
	readonly isSettled: boolean;
}

export type TypingOf = Readonly<Partial<Record<TypedField, Typing>>>;

/** The part of a phase that a field is about. */
export const partOf: Readonly<Record<TypedField, keyof OutingPhase>> = {
	seconds: 'seconds',
	targetLow: 'target',
	targetHigh: 'target',
	speedKmh: 'speedKmh',
	inclinePercent: 'inclinePercent',
	cue: 'cue'
};

/** Every field of a phase as text. */
export function textsOf(phase: OutingPhase, unit: SpeedUnit): Record<TypedField, string> {
	const { seconds, target, speedKmh, inclinePercent, cue } = phase;
	return {
		seconds: minutesAndSeconds(seconds),
		targetLow: target === null ? '' : String(Math.round(target.low * 100)),
		targetHigh: target === null ? '' : String(Math.round(target.high * 100)),
		speedKmh: speedKmh === null ? '' : speedToType(speedKmh, unit),
		inclinePercent: inclinePercent === null ? '' : String(inclinePercent),
		cue
	};
}

export type Read =
	| { readonly ok: true; readonly changes: Partial<OutingPhase> }
	| { readonly ok: false; readonly code: OutingIssueCode };

/** What a field would make of its phase, with all of the fields as they stand. */
export function readField(
	phase: OutingPhase,
	field: TypedField,
	texts: Readonly<Record<TypedField, string>>,
	unit: SpeedUnit
): Read {
	const part = partOf[field];
	const changes = { [part]: valueOf(part, texts, unit) } as Partial<OutingPhase>;
	const issue = checkPhase({ ...phase, ...changes }, []).find(({ path }) => path[0] === part);
	return issue === undefined ? { ok: true, changes } : { ok: false, code: issue.code };
}

function valueOf(
	part: keyof OutingPhase,
	texts: Readonly<Record<TypedField, string>>,
	unit: SpeedUnit
) {
	switch (part) {
		case 'seconds':
			return typedLength(texts.seconds) ?? NaN;
		case 'target': {
			const [low, high] = [texts.targetLow.trim(), texts.targetHigh.trim()];
			return low === '' && high === '' ? null : { low: share(low), high: share(high) };
		}
		case 'speedKmh':
			return kmhFromTyped(texts.speedKmh, unit);
		case 'inclinePercent':
			return texts.inclinePercent.trim() === '' ? null : decimal(texts.inclinePercent);
		case 'cue':
			return texts.cue.trim();
		case 'kind':
			throw new RangeError('valueOf requires a part that is typed');
	}
}

const share = (text: string) => decimal(text) / 100;

function decimal(text: string): number {
	const typed = text.trim();
	return /^\d{1,4}([.,]\d{1,3})?$/.test(typed) ? Number(typed.replace(',', '.')) : NaN;
}
