import type { OutingIssue } from '$lib/outing/check-outing.ts';
import { fieldName } from '$lib/outing/field-name.ts';
import { isRepeated, type Outing, type OutingPart, type OutingPhase } from '$lib/outing/outing.ts';
import { outingLimits } from '$lib/outing/outing-limits.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { usualSeconds } from '$lib/outing/usual-outing.ts';
import { partOf, typedFields, type Typing, type TypingOf } from './typed-field.ts';

/** What came back from a form: an outing, what is wrong with it, and each field as it was typed. */
export interface Draft {
	readonly outing: Outing;
	readonly issues: readonly OutingIssue[];
	readonly values: Readonly<Record<string, string | readonly string[]>>;
}

export interface SoundDraft {
	/** With a usual value wherever one was wrong. */
	readonly outing: Outing;
	/** What was wrong, by the phase or repeat in which it was typed. */
	readonly typing: ReadonlyMap<OutingPart, TypingOf | { readonly times: Typing }>;
}

/** An outing that can be drawn and edited, with what was wrong kept beside it as it was typed. */
export function soundDraft({ outing, issues, values }: Draft): SoundDraft {
	const typing = new Map<OutingPart, TypingOf | { readonly times: Typing }>();
	const codeAt = (...path: (string | number)[]) =>
		issues.find((issue) => fieldName(issue.path) === fieldName(path))?.code ?? null;
	const textAt = (...path: (string | number)[]) => {
		const value = values[fieldName(path)];
		return typeof value === 'string' ? value : '';
	};

	function sound(phase: OutingPhase, path: readonly (string | number)[]): OutingPhase {
		const usual = usualParts(phase);
		let kept = phase;
		const typed: Record<string, Typing> = {};
		for (const field of typedFields) {
			const part = partOf[field];
			const code = codeAt(...path, part);
			if (code === null) continue;
			kept = { ...kept, [part]: usual[part] };
			const name = part === 'target' ? [part, field === 'targetLow' ? 'low' : 'high'] : [part];
			typed[field] = { text: textAt(...path, ...name), code, isSettled: true };
		}
		if (Object.keys(typed).length > 0) typing.set(kept, typed);
		return kept;
	}

	const parts = outing.parts.map((part, index): OutingPart => {
		const path = ['parts', index];
		if (!isRepeated(part)) return sound(part, path);
		const phases = part.phases.map((phase, nth) => sound(phase, [...path, 'phases', nth]));
		const code = codeAt(...path, 'times');
		const kept = { times: code === null ? part.times : outingLimits.times.low, phases };
		if (code !== null) {
			typing.set(kept, { times: { text: textAt(...path, 'times'), code, isSettled: true } });
		}
		return kept;
	});
	return { outing: { ...outing, parts }, typing };
}

function usualParts({ kind }: OutingPhase): OutingPhase {
	return plainPhase(kind, usualSeconds[kind]);
}
