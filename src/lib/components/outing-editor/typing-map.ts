import type { OutingPart } from '$lib/outing/outing.ts';
import type { Typing, TypingOf } from './typed-field.ts';

export type AnyTyping = TypingOf | { readonly times: Typing };

type TypingMap = ReadonlyMap<OutingPart, AnyTyping>;

export const noTyping: TypingMap = new Map();

/** The same with what is typed in one phase or repeat; nothing typed is not kept. */
export function withTyping(before: TypingMap, part: OutingPart, typing: AnyTyping): TypingMap {
	const kept = new Map(before);
	if (Object.keys(typing).length === 0) kept.delete(part);
	else kept.set(part, typing);
	return kept;
}
