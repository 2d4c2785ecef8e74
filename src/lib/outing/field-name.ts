import type { Place } from './edit/place.ts';
import type { OutingPath } from './outing-issues.ts';

/**
 * What a field of an outing is called in a form, and its id on the page.
 *
 * @example fieldName(['parts', 2, 'phases', 0, 'cue']) // 'parts-2-phases-0-cue'
 */
export function fieldName(path: OutingPath): string {
	return path.join('-');
}

/**
 * The way to what stands at a place.
 *
 * @example pathOf({ part: 2, phase: 0 }) // ['parts', 2, 'phases', 0]
 */
export function pathOf({ part, phase }: Place): OutingPath {
	return phase === null ? ['parts', part] : ['parts', part, 'phases', phase];
}

/**
 * A place as one word, and back; null for a word that is none.
 *
 * @example placeWord({ part: 2, phase: 0 }) // '2.0'
 */
export function placeWord({ part, phase }: Place): string {
	return phase === null ? String(part) : `${part}.${phase}`;
}

/** @example placeFrom('2.0') // { part: 2, phase: 0 } */
export function placeFrom(word: string): Place | null {
	const found = /^(\d{1,4})(?:\.(\d{1,4}))?$/.exec(word);
	if (!found) return null;
	return { part: Number(found[1]), phase: found[2] === undefined ? null : Number(found[2]) };
}
