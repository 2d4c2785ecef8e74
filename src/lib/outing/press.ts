import { add, duplicate, remove, unwrap, wrap, writeOut } from './edit/edits.ts';
import { step } from './edit/move.ts';
import { at, type Place } from './edit/place.ts';
import { placeFrom } from './field-name.ts';
import { isRepeated, type Outing, type OutingPart } from './outing.ts';
import { outingLimits } from './outing-limits.ts';
import { phaseKinds, type PhaseKind } from './phase.ts';
import { plainPhase } from './plain-phase.ts';
import { usualSeconds, whereToAdd } from './usual-outing.ts';

export const placePresses = [
	'up',
	'down',
	'copy',
	'remove',
	'repeat',
	'unwrap',
	'write-out'
] as const;

/** What a button of the editor asks for. */
export type Press =
	| { readonly does: 'add'; readonly kind: PhaseKind }
	| { readonly does: (typeof placePresses)[number]; readonly place: Place };

export interface Pressed {
	readonly outing: Outing;
	/** What to look at next, or null where nothing is left of it. */
	readonly place: Place | null;
}

/**
 * The value of a button, read back; null for what is none.
 *
 * @example pressFrom('up 2.0').place // { part: 2, phase: 0 }
 * @example pressFrom('add brisk-walk').kind // 'brisk-walk'
 */
export function pressFrom(value: string): Press | null {
	const [does, what = ''] = value.split(' ');
	if (does === 'add') {
		const kind = phaseKinds.find((one) => one === what);
		return kind === undefined ? null : { does, kind };
	}
	const known = placePresses.find((one) => one === does);
	const place = placeFrom(what);
	return known === undefined || place === null ? null : { does: known, place };
}

/**
 * The outing after a press. One that goes nowhere, such as up at the top, changes nothing.
 *
 * @throws RangeError for a place outside the outing
 * @example press({ name: '', parts: [] }, { does: 'add', kind: 'brisk-walk' }).outing.parts.length // 1
 */
export function press(outing: Outing, pressed: Press): Pressed {
	if (pressed.does === 'add') return added(outing, pressed.kind);
	const { does, place } = pressed;
	const { part, phase } = place;
	// Throws where nothing stands.
	at(outing, place);
	switch (does) {
		case 'up':
		case 'down':
			return step(outing, place, does) ?? { outing, place };
		case 'copy':
			return {
				outing: duplicate(outing, place),
				place: phase === null ? { part: part + 1, phase } : { part, phase: phase + 1 }
			};
		case 'remove':
			return { outing: remove(outing, place), place: null };
		case 'repeat':
			return repeated(outing, part);
		case 'unwrap':
			return { outing: unwrap(outing, part), place: { part, phase: null } };
		case 'write-out':
			return { outing: writeOut(outing, part), place: { part, phase: null } };
	}
}

function added(outing: Outing, kind: PhaseKind): Pressed {
	const phase = plainPhase(kind, usualSeconds[kind]);
	const place = { part: whereToAdd(outing, phase), phase: null };
	return { outing: add(outing, place, phase), place };
}

/** A run takes the recovery walk behind it along. */
function repeated(outing: Outing, part: number): Pressed {
	const isOf = (kind: PhaseKind, found: OutingPart | undefined) =>
		found !== undefined && !isRepeated(found) && found.kind === kind;
	const first = at(outing, { part, phase: null });
	const walks = isOf('steady-run', first) && isOf('recovery-walk', outing.parts[part + 1]);
	const wrapped = wrap(outing, part, walks ? part + 1 : part, outingLimits.times.low);
	return { outing: wrapped, place: { part, phase: null } };
}
