import { pulseAfter } from '../../physiology/pulse-kinetics.ts';
import type { CourseWay } from './course-way.ts';

/** Where the runners of a group are expected to be at one moment, in shares of the reserve. */
export interface GroupPoint {
	readonly seconds: number;
	readonly median: number;
	/** Two in three of the group lie between these two: the 16th and 84th hundredth. */
	readonly low: number;
	readonly high: number;
}

/** Every so many seconds from zero, and the end of each phase, where the pulse turns. */
export function momentsOf(
	phases: readonly { readonly seconds: number }[],
	everySeconds: number
): readonly number[] {
	if (!(everySeconds > 0)) throw new RangeError('momentsOf requires an interval above 0 s');
	const moments: number[] = [];
	let [end, next] = [0, 0];
	for (const { seconds } of phases) {
		end += seconds;
		for (; next < end; next += everySeconds) moments.push(next);
		moments.push(end);
		if (next === end) next += everySeconds;
	}
	return moments;
}

/**
 * The middle of a group through an outing and the range of two in three of them. Half and the edges
 * are taken between neighbours where no runner stands there. An illustration.
 *
 * @param ways of each runner, all as long as the outing
 * @param moments seconds from its start, rising
 */
export function medianCurve(
	ways: readonly CourseWay[],
	moments: readonly number[]
): readonly GroupPoint[] {
	if (ways.length === 0) return [];
	const shares = new Float64Array(ways.length);
	const order = Uint32Array.from(ways.keys());
	const places = new Map(ways.map(({ asked }) => [asked, { phase: 0, secondsInto: 0 }]));
	const placeOf = ways.map(({ asked }) => places.get(asked)!);
	return moments.map((seconds) => {
		for (const [{ startSeconds }, place] of places) {
			while ((startSeconds[place.phase + 1] ?? Infinity) <= seconds) place.phase += 1;
			place.secondsInto = seconds - startSeconds[place.phase]!;
		}
		for (let runner = 0; runner < ways.length; runner++) {
			const { edges, steady } = ways[runner]!;
			const { phase, secondsInto } = placeOf[runner]!;
			shares[runner] = pulseAfter(edges[phase]!, steady[phase]!, secondsInto);
		}
		sortAgain(order, shares);
		const at = (part: number) => quantile(order, shares, part);
		return { seconds, median: at(0.5), low: at(0.16), high: at(0.84) };
	});
}

/**
 * By insertion: from one moment to the next a group hardly changes its order, and what is nearly in
 * order already is sorted in one pass.
 */
function sortAgain(order: Uint32Array, shares: Float64Array): void {
	for (let nth = 1; nth < order.length; nth++) {
		const runner = order[nth]!;
		const share = shares[runner]!;
		let place = nth;
		for (; place > 0 && shares[order[place - 1]!]! > share; place--) {
			order[place] = order[place - 1]!;
		}
		order[place] = runner;
	}
}

/** Between the two neighbours in proportion: type 7 of Hyndman and Fan 1996, the usual default. */
function quantile(order: Uint32Array, shares: Float64Array, part: number): number {
	const place = (order.length - 1) * part;
	const below = Math.floor(place);
	const lower = shares[order[below]!]!;
	const upper = shares[order[Math.min(below + 1, order.length - 1)]!]!;
	return lower + (upper - lower) * (place - below);
}
