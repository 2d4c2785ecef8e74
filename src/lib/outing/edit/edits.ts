import { isRepeated, type Outing, type OutingPart, type OutingPhase } from '../outing.ts';
import { at, phaseAt, type Place } from './place.ts';
import { replaceAt } from './replace.ts';

/**
 * Puts a phase or a repeat in front of what stands at a place; one past the last is the end.
 *
 * @throws RangeError for a place outside the outing, or a repeat inside a repeat
 * @example add({ name: '', parts: [] }, { part: 0, phase: null }, plainPhase('brisk-walk', 60)).parts.length // 1
 */
export function add(outing: Outing, place: Place, added: OutingPart): Outing {
	return replaceAt(outing, place, 0, [added]);
}

/**
 * Takes away a phase, or a repeat with all in it.
 *
 * @throws RangeError where nothing stands
 * @example remove({ name: '', parts: [plainPhase('brisk-walk', 60)] }, { part: 0, phase: null }).parts // []
 */
export function remove(outing: Outing, place: Place): Outing {
	return replaceAt(outing, place, 1, []);
}

/**
 * The same once more, right behind it.
 *
 * @throws RangeError where nothing stands
 * @example duplicate({ name: '', parts: [plainPhase('brisk-walk', 60)] }, { part: 0, phase: null }).parts.length // 2
 */
export function duplicate(outing: Outing, place: Place): Outing {
	const same = at(outing, place);
	return replaceAt(outing, place, 1, [same, same]);
}

/**
 * Changes fields of a phase. Another kind asks for another effort: then a target, speed or incline
 * that is not given with it goes, for it was meant for the kind before.
 *
 * @throws RangeError where no phase stands
 * @example change({ name: '', parts: [plainPhase('brisk-walk', 60)] }, { part: 0, phase: null }, { seconds: 90 }).parts[0].seconds // 90
 */
export function change(outing: Outing, place: Place, changed: Partial<OutingPhase>): Outing {
	const before = phaseAt(outing, place);
	const isOtherKind = changed.kind !== undefined && changed.kind !== before.kind;
	const cleared = isOtherKind ? { target: null, speedKmh: null, inclinePercent: null } : {};
	return replaceAt(outing, place, 1, [{ ...before, ...cleared, ...changed }]);
}

/**
 * @throws RangeError where no repeat stands
 * @example changeTimes({ name: '', parts: [{ times: 2, phases: [] }] }, 0, 3).parts[0].times // 3
 */
export function changeTimes(outing: Outing, part: number, times: number): Outing {
	return replaceAt(outing, { part, phase: null }, 1, [{ ...repeatAt(outing, part), times }]);
}

/** @example rename({ name: 'One', parts: [] }, 'Two').name // 'Two' */
export function rename(outing: Outing, name: string): Outing {
	return { ...outing, name };
}

/**
 * Makes a repeat of parts that follow each other.
 *
 * @param last of the parts, itself included
 * @throws RangeError for parts outside the outing, or a repeat among them
 * @example wrap({ name: '', parts: [plainPhase('brisk-walk', 60)] }, 0, 0, 2).parts[0].times // 2
 */
export function wrap(outing: Outing, first: number, last: number, times: number): Outing {
	if (!(last >= first)) throw new RangeError('wrap requires a last part not before the first');
	const phases = Array.from({ length: last - first + 1 }, (_, nth) =>
		phaseAt(outing, { part: first + nth, phase: null })
	);
	return replaceAt(outing, { part: first, phase: null }, phases.length, [{ times, phases }]);
}

/**
 * The phases of a repeat once, in its place: undoes wrap.
 *
 * @throws RangeError where no repeat stands
 * @example unwrap({ name: '', parts: [{ times: 2, phases: [plainPhase('brisk-walk', 60)] }] }, 0).parts.length // 1
 */
export function unwrap(outing: Outing, part: number): Outing {
	return replaceAt(outing, { part, phase: null }, 1, repeatAt(outing, part).phases);
}

/**
 * The phases of a repeat as often as they are done, in its place: each can then be changed alone.
 *
 * @throws RangeError where no repeat stands
 * @example writeOut({ name: '', parts: [{ times: 2, phases: [plainPhase('brisk-walk', 60)] }] }, 0).parts.length // 2
 */
export function writeOut(outing: Outing, part: number): Outing {
	const { times, phases } = repeatAt(outing, part);
	const written = Array.from({ length: times }, () => phases).flat();
	return replaceAt(outing, { part, phase: null }, 1, written);
}

function repeatAt(outing: Outing, part: number) {
	const found = at(outing, { part, phase: null });
	if (!isRepeated(found)) throw new RangeError('repeatAt requires the place of a repeat');
	return found;
}
