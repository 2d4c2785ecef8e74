import { isRepeated, type Outing, type OutingPart, type OutingPhase } from '../outing.ts';

/**
 * Where something stands in an outing: a part, or with `phase` one of the phases that it repeats.
 */
export interface Place {
	readonly part: number;
	readonly phase: number | null;
}

/**
 * What stands at a place.
 *
 * @throws RangeError where nothing does
 * @example at({ name: '', parts: [{ times: 2, phases: [plainPhase('brisk-walk', 60)] }] }, { part: 0, phase: null }).times // 2
 */
export function at(outing: Outing, { part, phase }: Place): OutingPart {
	const found = outing.parts[part];
	if (found === undefined) throw new RangeError('at requires a place in the outing');
	if (phase === null) return found;
	const inside = isRepeated(found) ? found.phases[phase] : undefined;
	if (inside === undefined) throw new RangeError('at requires a place in the outing');
	return inside;
}

/**
 * The phase at a place.
 *
 * @throws RangeError where there is none, or a repeat
 * @example phaseAt({ name: '', parts: [plainPhase('brisk-walk', 60)] }, { part: 0, phase: null }).seconds // 60
 */
export function phaseAt(outing: Outing, place: Place): OutingPhase {
	const found = at(outing, place);
	if (isRepeated(found)) throw new RangeError('phaseAt requires the place of a phase');
	return found;
}

/**
 * Every phase once, with its place, in order: repeats are not written out.
 *
 * @example placesOf({ name: '', parts: [{ times: 2, phases: [plainPhase('brisk-walk', 60)] }] })[0] // { part: 0, phase: 0 }
 */
export function placesOf({ parts }: Pick<Outing, 'parts'>): readonly Place[] {
	return parts.flatMap<Place>((found, part) =>
		isRepeated(found) ? found.phases.map((_, phase) => ({ part, phase })) : [{ part, phase: null }]
	);
}

/**
 * The place of every phase in the order in which it is met, repeats written out: beside phasesOf.
 *
 * @example writtenPlaces({ parts: [{ times: 2, phases: [plainPhase('brisk-walk', 60)] }] }).length // 2
 */
export function writtenPlaces({ parts }: Pick<Outing, 'parts'>): readonly Place[] {
	return parts.flatMap((found, part) => {
		const once = placesOf({ parts: [found] }).map(({ phase }): Place => ({ part, phase }));
		return isRepeated(found) ? Array.from({ length: found.times }, () => once).flat() : once;
	});
}
