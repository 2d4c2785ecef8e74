import { expectedCurve, type PulseStep } from '../../physiology/pulse-response.ts';
import { START_SHARE } from './course-steps.ts';

/** Where the runners of a group are expected to be at one moment, in shares of the reserve. */
export interface GroupPoint {
	readonly seconds: number;
	readonly median: number;
	/** Two in three of the group lie between these two: the 16th and 84th hundredth. */
	readonly low: number;
	readonly high: number;
}

/**
 * The middle of a group through an outing and the range of two in three of them. Half and the edges
 * are taken between neighbours where no runner stands there. An illustration.
 *
 * @param ways the steps of each runner, all of the same lengths
 */
export function medianCurve(
	ways: readonly (readonly PulseStep[])[],
	everySeconds: number
): readonly GroupPoint[] {
	const curves = ways.map((steps) => expectedCurve(steps, START_SHARE, everySeconds));
	const first = curves[0] ?? [];
	const shares = new Float64Array(curves.length);
	return first.map(({ seconds }, nth) => {
		curves.forEach((curve, runner) => (shares[runner] = curve[nth]!.bpm));
		shares.sort();
		return {
			seconds,
			median: quantile(shares, 0.5),
			low: quantile(shares, 0.16),
			high: quantile(shares, 0.84)
		};
	});
}

/** Between the two neighbours in proportion: type 7 of Hyndman and Fan 1996, the usual default. */
function quantile(sorted: Float64Array, part: number): number {
	const place = (sorted.length - 1) * part;
	const below = Math.floor(place);
	const lower = sorted[below]!;
	const upper = sorted[Math.min(below + 1, sorted.length - 1)]!;
	return lower + (upper - lower) * (place - below);
}
