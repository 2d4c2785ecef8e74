/** Category-ratio rating at and below which the 6-20 scale stands at its floor. */
const QUIET = 0.3;
const STEPS = 2.8;
const EXPONENT = 0.79;

/**
 * The 6-20 rating that goes with a category-ratio rating of 0 to 10. For: reading studies that used
 * one scale beside those that used the other; never shown as a runner's own number.
 *
 * 6 plus 2.8 times the rating less 0.3, raised to 0.79. Source borgE2001: 16 men and 16 women on a
 * cycle, one scale each. Holds from 0.3 to 7.97; beyond, the 6-20 scale has ended and 6 or 20 is
 * returned. Typical error about one step of either scale (from memory).
 *
 * @param categoryRatio 0 or more; the scale is open above 10
 * @throws RangeError for a rating below zero
 * @example perceivedFromCategoryRatio(3) // 12.137
 */
export function perceivedFromCategoryRatio(categoryRatio: number): number {
	if (!(categoryRatio >= 0)) {
		throw new RangeError('perceivedFromCategoryRatio requires a rating of 0 or more');
	}
	if (categoryRatio <= QUIET) return 6;
	return Math.min(20, 6 + STEPS * (categoryRatio - QUIET) ** EXPONENT);
}

/**
 * The category-ratio rating that goes with a 6-20 rating: perceivedFromCategoryRatio turned round.
 * Same source, people, limits and error.
 *
 * @param perceived 6 to 20
 * @throws RangeError for a rating that the scale does not have
 * @example categoryRatioFromPerceived(12) // 2.924
 */
export function categoryRatioFromPerceived(perceived: number): number {
	if (!(perceived >= 6 && perceived <= 20)) {
		throw new RangeError('categoryRatioFromPerceived requires a rating from 6 to 20');
	}
	return QUIET + ((perceived - 6) / STEPS) ** (1 / EXPONENT);
}
