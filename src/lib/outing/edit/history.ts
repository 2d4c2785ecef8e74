/** What an editor shows, what it can go back to, and what it can bring back. Nearest last. */
export interface History<Kept> {
	readonly past: readonly Kept[];
	readonly now: Kept;
	readonly future: readonly Kept[];
	/** The stroke that `now` came from, while it may still go on. */
	readonly stroke: string | null;
}

/** Enough for an evening at an outing; beyond it the oldest steps are forgotten. */
const STEPS_KEPT = 200;

/** @example beginHistory(1).now // 1 */
export function beginHistory<Kept>(now: Kept): History<Kept> {
	return { past: [], now, future: [], stroke: null };
}

/**
 * One edit. Edits of one stroke, such as a duration that is being dragged, count as a single one: to
 * go back leads to what was before the stroke. What changes nothing is no edit.
 *
 * @param stroke names what goes on, such as 'seconds of phase 3'; null ends it
 * @example edited(beginHistory(1), 2).past // [1]
 */
export function edited<Kept>(
	history: History<Kept>,
	next: Kept,
	stroke: string | null = null
): History<Kept> {
	if (Object.is(next, history.now)) return history;
	const goesOn = stroke !== null && stroke === history.stroke;
	const past = goesOn ? history.past : [...history.past, history.now].slice(-STEPS_KEPT);
	return { past, now: next, future: [], stroke };
}

/** @example undone(edited(beginHistory(1), 2)).now // 1 */
export function undone<Kept>(history: History<Kept>): History<Kept> {
	const { past, now, future } = history;
	if (past.length === 0) return history;
	return {
		past: past.slice(0, -1),
		now: past[past.length - 1]!,
		future: [...future, now],
		stroke: null
	};
}

/** @example redone(undone(edited(beginHistory(1), 2))).now // 2 */
export function redone<Kept>(history: History<Kept>): History<Kept> {
	const { past, now, future } = history;
	if (future.length === 0) return history;
	return {
		past: [...past, now],
		now: future[future.length - 1]!,
		future: future.slice(0, -1),
		stroke: null
	};
}
