import { isRepeated, type Outing, type OutingPart, type OutingPhase } from '../outing.ts';
import type { Place } from './place.ts';

/**
 * An outing with some items at a place taken out and others put there. Parts that are not touched
 * stay the very same objects. A repeat that is left without phases goes.
 *
 * @param removed how many items from the place on are taken out
 * @param added phases, or where the place is not inside a repeat also repeats
 * @throws RangeError for a place outside the outing, or a repeat inside a repeat
 */
export function replaceAt(
	outing: Outing,
	{ part, phase }: Place,
	removed: number,
	added: readonly OutingPart[]
): Outing {
	const { parts } = outing;
	if (phase === null) return { ...outing, parts: spliced(parts, part, removed, added) };
	const group = parts[part];
	if (group === undefined || !isRepeated(group) || !added.every(isPhase)) {
		throw new RangeError('replaceAt requires a repeat around a place with a phase');
	}
	const phases = spliced(group.phases, phase, removed, added);
	const kept = phases.length === 0 ? [] : [{ ...group, phases }];
	return { ...outing, parts: spliced(parts, part, 1, kept) };
}

function isPhase(part: OutingPart): part is OutingPhase {
	return !isRepeated(part);
}

function spliced<Item>(
	items: readonly Item[],
	from: number,
	removed: number,
	added: readonly Item[]
): readonly Item[] {
	if (!Number.isInteger(from) || from < 0 || from + removed > items.length) {
		throw new RangeError('replaceAt requires a place in the outing');
	}
	return [...items.slice(0, from), ...added, ...items.slice(from + removed)];
}
