import { standardNormalCdf } from '../../physiology/normal-distribution.ts';
import { dayShifts } from './day-shift.ts';
import type { OutingTalk } from './evidence.ts';
import type { Grid } from './prior.ts';

/** How often an answer has nothing to do with the pulse: a slip, shared by the three. Our choice. */
export const LAPSE = 0.03;

type Answer = OutingTalk['answers'][number];

/**
 * How likely the answers of one outing are for each ceiling and gap, at one scatter: an ordered
 * probit, with a shift of the day shared by them.
 *
 * P(comfortable) = Phi((c - h) / s); P(broke off) = Phi((h - c - g) / s); the rest is with breaths.
 * Both ends depend on c, and on c + g, alone, so they are worked out once along those.
 *
 * @returns ceiling by ceiling, the gaps of each together
 */
export function outingLikelihood(
	answers: readonly Answer[],
	{ ceilingsBpm, gapsBpm }: Pick<Grid, 'ceilingsBpm' | 'gapsBpm'>,
	scatterBpm: number
): Float64Array {
	const [first = 0] = ceilingsBpm;
	const [leastGap = 0] = gapsBpm;
	const [rows, columns] = [ceilingsBpm.length, gapsBpm.length];
	const sums = new Float64Array(rows * columns);
	const product = new Float64Array(rows * columns);
	for (const { bpm: shift, share } of dayShifts) {
		product.fill(share);
		for (const { pulseBpm, talk } of answers) {
			const off = pulseBpm - shift - first;
			const fine = along(talk === 'broke-off' ? 0 : rows, (nth) =>
				standardNormalCdf((nth - off) / scatterBpm)
			);
			const over = along(talk === 'comfortable' ? 0 : rows + 2 * columns, (nth) =>
				standardNormalCdf((off - leastGap - nth) / scatterBpm)
			);
			for (let row = 0, cell = 0; row < rows; row++) {
				const inRow = talk === 'broke-off' ? 0 : (fine[row] ?? 0);
				for (let column = 0; column < columns; column++, cell++) {
					const ofGap = talk === 'comfortable' ? 0 : (over[row + 2 * column] ?? 0);
					const meant = talk === 'with-breaths' ? 1 - inRow - ofGap : inRow + ofGap;
					product[cell] = (product[cell] ?? 0) * ((1 - LAPSE) * Math.max(0, meant) + LAPSE / 3);
				}
			}
		}
		for (let cell = 0; cell < sums.length; cell++) {
			sums[cell] = (sums[cell] ?? 0) + (product[cell] ?? 0);
		}
	}
	return sums;
}

function along(length: number, at: (nth: number) => number): Float64Array {
	const values = new Float64Array(length);
	for (let nth = 0; nth < length; nth++) values[nth] = at(nth);
	return values;
}
