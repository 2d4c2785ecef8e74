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
	const shape: Shape = {
		firstBpm: ceilingsBpm[0] ?? 0,
		rows: ceilingsBpm.length,
		leastGapBpm: gapsBpm[0] ?? 0,
		columns: gapsBpm.length,
		scatterBpm
	};
	const sums = new Float64Array(shape.rows * shape.columns);
	const product = new Float64Array(sums.length);
	for (const { bpm: shiftBpm, share } of dayShifts) {
		product.fill(share);
		for (const answer of answers) takeIn(product, answer, shiftBpm, shape);
		for (let cell = 0; cell < sums.length; cell++) {
			sums[cell] = (sums[cell] ?? 0) + (product[cell] ?? 0);
		}
	}
	return sums;
}

interface Shape {
	readonly firstBpm: number;
	readonly rows: number;
	readonly leastGapBpm: number;
	readonly columns: number;
	readonly scatterBpm: number;
}

/** Multiplies one answer in, as if the day had that shift. */
function takeIn(
	product: Float64Array,
	{ pulseBpm, talk }: Answer,
	shiftBpm: number,
	{ firstBpm, rows, leastGapBpm, columns, scatterBpm }: Shape
): void {
	const off = pulseBpm - shiftBpm - firstBpm;
	// An end that the answer does not ask about stays empty, and counts as nothing.
	const fine = along(talk === 'broke-off' ? 0 : rows, (nth) =>
		shareBelow((nth - off) / scatterBpm)
	);
	const over = along(talk === 'comfortable' ? 0 : rows + 2 * columns, (nth) =>
		shareBelow((off - leastGapBpm - nth) / scatterBpm)
	);
	for (let row = 0, cell = 0; row < rows; row++) {
		const inRow = fine[row] ?? 0;
		for (let column = 0; column < columns; column++, cell++) {
			const either = inRow + (over[row + 2 * column] ?? 0);
			const meant = talk === 'with-breaths' ? Math.max(0, 1 - either) : either;
			product[cell] = (product[cell] ?? 0) * ((1 - LAPSE) * meant + LAPSE / 3);
		}
	}
}

/** Beyond 8 spreads the rest is under 1e-15: nothing beside a slip. */
const shareBelow = (z: number) => (Math.abs(z) < 8 ? standardNormalCdf(z) : Number(z > 0));

function along(length: number, at: (nth: number) => number): Float64Array {
	const values = new Float64Array(length);
	for (let nth = 0; nth < length; nth++) values[nth] = at(nth);
	return values;
}
