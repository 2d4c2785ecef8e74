import { checkOuting, type OutingIssue, type OutingPath } from '../outing/check-outing.ts';
import { fieldName } from '../outing/field-name.ts';
import type { Outing, OutingPart, OutingPhase } from '../outing/outing.ts';
import { phaseKinds } from '../outing/phase.ts';
import { typedLength } from '../outing/typed-length.ts';
import { kmhFromTyped, type SpeedUnit } from '../outing/typed-speed.ts';
import type { Typed } from './read-form.ts';

/** Far above what an outing may hold: it bounds the work, checkOuting judges. */
const MOST_READ = 1000;

export interface OutingTyped {
	/** What could not be read is NaN in it, and an issue. */
	readonly outing: Outing;
	readonly issues: readonly OutingIssue[];
	/** Every field as it was typed. */
	readonly values: Typed;
}

/**
 * An outing as a form sends it: one field each, named by its way from the outing inwards.
 * @param unit in which speeds are typed
 */
export function readOuting(form: FormData, unit: SpeedUnit): OutingTyped {
	const values: Record<string, string> = {};
	for (const [name, value] of form) if (typeof value === 'string') values[name] = value;
	const has = (path: OutingPath) => values[fieldName(path)] !== undefined;
	const text = (...path: OutingPath) => values[fieldName(path)]?.trim() ?? '';

	function phaseAt(path: OutingPath): OutingPhase {
		return {
			kind: phaseKinds.find((kind) => kind === text(...path, 'kind')) ?? 'recovery-walk',
			seconds: typedLength(text(...path, 'seconds')) ?? NaN,
			target: targetFrom(text(...path, 'target', 'low'), text(...path, 'target', 'high')),
			speedKmh: kmhFromTyped(text(...path, 'speedKmh'), unit),
			inclinePercent: numberFrom(text(...path, 'inclinePercent')),
			cue: text(...path, 'cue')
		};
	}

	function phasesUnder(path: OutingPath): OutingPhase[] {
		return Array.from({ length: countUnder(path, 'kind') }, (_, index) =>
			phaseAt([...path, index])
		);
	}

	function countUnder(path: OutingPath, ...fields: string[]): number {
		let count = 0;
		while (count < MOST_READ && fields.some((field) => has([...path, count, field]))) count++;
		return count;
	}

	const parts = Array.from(
		{ length: countUnder(['parts'], 'kind', 'times') },
		(_, index): OutingPart => {
			const path = ['parts', index];
			if (!has([...path, 'times'])) return phaseAt(path);
			const times = numberFrom(text(...path, 'times')) ?? NaN;
			return { times, phases: phasesUnder([...path, 'phases']) };
		}
	);
	const outing = { name: text('name').replace(/\s+/g, ' '), parts };
	return { outing, issues: checkOuting(outing), values };
}

/** Both ends empty is no target; one of them alone is a slip. */
function targetFrom(low: string, high: string): OutingPhase['target'] {
	if (low === '' && high === '') return null;
	return { low: shareFrom(low), high: shareFrom(high) };
}

function shareFrom(percent: string): number {
	return (numberFrom(percent) ?? NaN) / 100;
}

/** Null where nothing is typed, NaN where it is no number. */
function numberFrom(text: string): number | null {
	if (text === '') return null;
	return /^\d{1,4}([.,]\d{1,3})?$/.test(text) ? Number(text.replace(',', '.')) : NaN;
}
