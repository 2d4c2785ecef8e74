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

/**
 * The middle of a group through an outing and the range of two in three of them, at every so many
 * seconds from zero and at the end of each phase, where the pulse turns. Half and the edges are taken between neighbours where no runner
 * stands there. An illustration.
 *
 * @param ways of each runner, all of the same lengths
 */
export function medianCurve(
	ways: readonly CourseWay[],
	everySeconds: number
): readonly GroupPoint[] {
	const phases = ways[0]?.phases ?? [];
	if (phases.length === 0) return [];
	const shares = new Float64Array(ways.length);
	const order = Uint32Array.from(ways.keys());
	const points: GroupPoint[] = [];
	const add = (seconds: number, phase: number, secondsInto: number) => {
		for (let runner = 0; runner < ways.length; runner++) {
			const { edges, steady } = ways[runner]!;
			shares[runner] = pulseAfter(edges[phase]!, steady[phase]!, secondsInto);
		}
		sortAgain(order, shares);
		const at = (part: number) => quantile(order, shares, part);
		points.push({ seconds, median: at(0.5), low: at(0.16), high: at(0.84) });
	};
	let [from, next] = [0, 0];
	for (const [phase, { seconds }] of phases.entries()) {
		for (; next < from + seconds; next += everySeconds) add(next, phase, next - from);
		from += seconds;
		add(from, phase, seconds);
		if (next === from) next += everySeconds;
	}
	return points;
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
