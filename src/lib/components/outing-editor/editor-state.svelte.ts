import { checkOuting, type OutingIssue } from '$lib/outing/check-outing.ts';
import { change, changeTimes, rename } from '$lib/outing/edit/edits.ts';
import { beginHistory, edited, redone, undone } from '$lib/outing/edit/history.ts';
import { move } from '$lib/outing/edit/move.ts';
import { at, phaseAt, placesOf, type Place } from '$lib/outing/edit/place.ts';
import { fieldName, pathOf, placeWord } from '$lib/outing/field-name.ts';
import { isRepeated, type Outing, type OutingPart, type OutingPhase } from '$lib/outing/outing.ts';
import { outingLimits } from '$lib/outing/outing-limits.ts';
import { press, type Press } from '$lib/outing/press.ts';
import type { SpeedUnit } from '$lib/outing/typed-speed.ts';
import { soundDraft, type Draft } from './sound-draft.ts';
import { noTyping, withTyping, type AnyTyping } from './typing-map.ts';
import {
	partOf,
	readField,
	textsOf,
	typedFields,
	type TypedField,
	type Typing,
	type TypingOf
} from './typed-field.ts';

/**
 * One outing while it is edited: every state that can be gone back to, and what is typed that is not,
 * or not yet, part of it. The outing itself is always one that can be drawn.
 */
export class EditorState {
	#history = $state.raw(beginHistory<Outing>({ name: '', parts: [] }));
	/** By the phase or repeat itself: it stays the same wherever it is moved. */
	#typing: ReadonlyMap<OutingPart, AnyTyping> = $state.raw(noTyping);
	/** What was kept last. */
	#kept = $state.raw<Outing>({ name: '', parts: [] });
	/** The phase that a hand changed last, until something is moved, added or taken away. */
	#touched: Place | null = $state.raw(null);
	readonly unit: SpeedUnit;

	constructor(draft: Draft, unit: SpeedUnit, isKept: boolean) {
		this.unit = unit;
		const { outing, typing } = soundDraft(draft);
		this.#history = beginHistory(outing);
		this.#typing = typing;
		if (isKept) this.#kept = outing;
	}

	get outing(): Outing {
		return this.#history.now;
	}

	get touched(): Place | null {
		return this.#touched;
	}

	get canUndo(): boolean {
		return this.#history.past.length > 0;
	}

	get canRedo(): boolean {
		return this.#history.future.length > 0;
	}

	get isChanged(): boolean {
		return this.outing !== this.#kept || this.#wrong().length > 0;
	}

	/** All that is wrong: with the outing, and with what is typed beside it. */
	get issues(): readonly OutingIssue[] {
		const whole = checkOuting(this.outing);
		const places = whole.map(({ path }) => fieldName(path));
		return [...whole, ...this.#wrong().filter(({ path }) => !places.includes(fieldName(path)))];
	}

	undo(): void {
		this.#history = undone(this.#history);
	}

	redo(): void {
		this.#history = redone(this.#history);
	}

	rename(name: string): void {
		this.#edit(rename(this.outing, name), 'name');
	}

	press(pressed: Press): Place | null {
		const { outing, place } = press(this.outing, pressed);
		this.#touched = null;
		this.#edit(outing, null);
		return place;
	}

	move(from: Place, to: Place): Place {
		const { outing, place } = move(this.outing, from, to);
		this.#touched = null;
		if (placeWord(place) !== placeWord(from)) this.#edit(outing, null);
		return place;
	}

	change(place: Place, changes: Partial<OutingPhase>, stroke: string | null = null): void {
		const before = phaseAt(this.outing, place);
		const outing = change(this.outing, place, changes);
		this.#touched = place;
		this.#carry(before, phaseAt(outing, place), Object.keys(changes));
		this.#edit(outing, stroke && `${stroke} ${placeWord(place)}`);
	}

	/** Something is typed; with `isSettled` the hand has left the field. */
	type(place: Place, field: TypedField, text: string, isSettled: boolean): void {
		const phase = phaseAt(this.outing, place);
		const read = readField(phase, field, { ...this.textsOf(phase), [field]: text }, this.unit);
		if (read.ok && this.#differs(phase, read.changes)) {
			this.change(place, read.changes, `type ${field}`);
		}
		const now = phaseAt(this.outing, place);
		const typing = { ...(this.typingOf(now) ?? {}) };
		if (read.ok && isSettled) delete typing[field];
		else typing[field] = { text, code: read.ok ? null : read.code, isSettled };
		this.#keepTyping(now, typing);
	}

	typeTimes(part: number, text: string, isSettled: boolean): void {
		const { low, high } = outingLimits.times;
		const times = /^\d{1,3}$/.test(text.trim()) ? Number(text) : NaN;
		const isRight = times >= low && times <= high;
		if (isRight) this.#edit(changeTimes(this.outing, part, times), `times ${part}`);
		const group = at(this.outing, { part, phase: null });
		const code = isRight ? null : 'times-out-of-limits';
		this.#keepTyping(group, isRight && isSettled ? {} : { times: { text, code, isSettled } });
	}

	/** Somebody else's version in the place of this one; undo brings this one back. */
	take(outing: Outing): void {
		this.#edit(outing, null);
		this.#kept = outing;
	}

	markKept(outing: Outing): void {
		this.#kept = outing;
	}

	typingOf(part: OutingPart): TypingOf | undefined {
		const found = this.#typing.get(part);
		return found === undefined || 'times' in found ? undefined : found;
	}

	timesTyping(part: OutingPart): Typing | undefined {
		const found = this.#typing.get(part);
		return found !== undefined && 'times' in found ? found.times : undefined;
	}

	/** Each field of a phase as it stands on the page. */
	textsOf(phase: OutingPhase): Record<TypedField, string> {
		const texts = textsOf(phase, this.unit);
		const typing = this.typingOf(phase) ?? {};
		for (const field of typedFields) texts[field] = typing[field]?.text ?? texts[field];
		return texts;
	}

	#edit(outing: Outing, stroke: string | null): void {
		this.#history = edited(this.#history, outing, stroke);
	}

	#differs(phase: OutingPhase, changes: Partial<OutingPhase>): boolean {
		const before = Object.keys(changes).map((key) => phase[key as keyof OutingPhase]);
		return JSON.stringify(before) !== JSON.stringify(Object.values(changes));
	}

	/** What is typed in the other fields of a phase stays with it. */
	#carry(before: OutingPhase, after: OutingPhase, changed: readonly string[]): void {
		const typing = this.typingOf(before);
		if (typing === undefined) return;
		const rest = Object.entries(typing).filter(
			([field]) => !changed.includes(partOf[field as TypedField])
		);
		this.#keepTyping(after, Object.fromEntries(rest));
	}

	#keepTyping(part: OutingPart, typing: AnyTyping): void {
		this.#typing = withTyping(this.#typing, part, typing);
	}

	#wrong(): OutingIssue[] {
		if (this.#typing.size === 0) return [];
		const repeats = this.outing.parts.flatMap((part, index): OutingIssue[] => {
			const code = isRepeated(part) ? this.timesTyping(part)?.code : null;
			return code ? [{ code, path: ['parts', index, 'times'] }] : [];
		});
		const phases = placesOf(this.outing).flatMap((place) => {
			const typing = Object.entries(this.typingOf(phaseAt(this.outing, place)) ?? {});
			return typing.flatMap(([field, { code }]): OutingIssue[] =>
				code === null ? [] : [{ code, path: [...pathOf(place), partOf[field as TypedField]] }]
			);
		});
		return [...repeats, ...phases];
	}
}
