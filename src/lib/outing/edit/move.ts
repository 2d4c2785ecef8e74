import { isRepeated, type Outing } from '../outing.ts';
import { at, type Place } from './place.ts';
import { replaceAt } from './replace.ts';

export interface Moved {
	readonly outing: Outing;
	/** Where what was moved stands now. */
	readonly place: Place;
}

/**
 * Moves what stands at a place in front of what stands at another, both as they are counted before
 * the move. A phase may move into and out of repeats; a repeat stays outside of others.
 *
 * @throws RangeError for places outside the outing, or a repeat inside a repeat
 * @example move({ name: '', parts: [plainPhase('brisk-walk', 60), plainPhase('brisk-walk', 90)] }, { part: 1, phase: null }, { part: 0, phase: null }).outing.parts[0].seconds // 90
 */
export function move(outing: Outing, from: Place, to: Place): Moved {
	const moved = at(outing, from);
	if (to.part === from.part && to.phase === from.phase) return { outing, place: from };
	if (to.part === from.part && from.phase === null && to.phase !== null) {
		throw new RangeError('move requires a place outside of what is moved');
	}
	if (isLater(from, to)) {
		return { outing: replaceAt(replaceAt(outing, from, 1, []), to, 0, [moved]), place: to };
	}
	// The later place is worked on first, so that the earlier one still counts right.
	const added = replaceAt(outing, to, 0, [moved]);
	const after = replaceAt(added, from, 1, []);
	const partsGone = added.parts.length - after.parts.length;
	const phasesGone = to.part === from.part ? 1 : 0;
	return {
		outing: after,
		place: {
			part: to.part - partsGone,
			phase: to.phase === null ? null : to.phase - phasesGone
		}
	};
}

/**
 * One step up or down, the way of a keyboard: at the edge of a repeat into it or out of it. Null
 * where there is nowhere to go.
 *
 * @throws RangeError for a place outside the outing
 * @example step({ name: '', parts: [plainPhase('brisk-walk', 60)] }, { part: 0, phase: null }, 'up') // null
 */
export function step(outing: Outing, from: Place, way: 'up' | 'down'): Moved | null {
	const to = way === 'up' ? placeAbove(outing, from) : placeBelow(outing, from);
	return to === null ? null : move(outing, from, to);
}

function placeAbove(outing: Outing, from: Place): Place | null {
	const { part, phase } = from;
	if (phase !== null) return { part, phase: phase > 0 ? phase - 1 : null };
	const own = at(outing, from);
	const above = outing.parts[part - 1];
	if (above === undefined) return null;
	const into = isRepeated(above) && !isRepeated(own);
	return { part: part - 1, phase: into ? above.phases.length : null };
}

/** In front of what: so one step down is in front of the second next. */
function placeBelow(outing: Outing, from: Place): Place | null {
	const { part, phase } = from;
	const group = outing.parts[part];
	if (phase !== null && group !== undefined && isRepeated(group)) {
		const isLast = phase === group.phases.length - 1;
		return isLast ? { part: part + 1, phase: null } : { part, phase: phase + 2 };
	}
	const below = outing.parts[part + 1];
	if (below === undefined) return null;
	const into = isRepeated(below) && !isRepeated(at(outing, from));
	return into ? { part: part + 1, phase: 0 } : { part: part + 2, phase: null };
}

function isLater(one: Place, other: Place): boolean {
	return one.part === other.part ? (one.phase ?? -1) > (other.phase ?? -1) : one.part > other.part;
}
