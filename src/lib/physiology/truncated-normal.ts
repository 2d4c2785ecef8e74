import { excessOfHazard, standardNormalCdf, standardNormalPdf } from './normal-distribution.ts';

/**
 * Mean and spread of what is left of a normal distribution when all below a bound is cut away.
 * With a = (bound - mean) / spread and h the density at a over the share above a: the mean rises by
 * spread x h, the variance becomes spread^2 (1 + a h - h^2). Source johnsonKotz1994, section 13.10.
 * Far out, where 1 + a h - h^2 would lose its digits, the same two come from the continued fraction.
 *
 * @throws RangeError unless the spread is above zero and all three are finite
 * @example truncatedBelow(0, 1, 0).mean // 0.7978845608
 * @example truncatedBelow(0, 1, 0).spread // 0.6028102749
 */
export function truncatedBelow(
	mean: number,
	spread: number,
	bound: number
): { mean: number; spread: number } {
	if (!(spread > 0) || ![mean, spread, bound].every(Number.isFinite)) {
		throw new RangeError('truncatedBelow requires finite values and a spread above 0');
	}
	const a = (bound - mean) / spread;
	if (a > 4) {
		const excess = excessOfHazard(a, 1);
		const variance = excess * (excessOfHazard(a, 2) - excess);
		return { mean: mean + spread * (a + excess), spread: spread * Math.sqrt(variance) };
	}
	const hazard = standardNormalPdf(a) / standardNormalCdf(-a);
	const variance = 1 + hazard * (a - hazard);
	return { mean: mean + spread * hazard, spread: spread * Math.sqrt(variance) };
}
