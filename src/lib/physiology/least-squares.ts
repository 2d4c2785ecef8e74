export interface Point {
	readonly across: number;
	readonly up: number;
}

/** A straight line through points, with what is needed to say how sure it is anywhere. */
export interface Line {
	readonly slope: number;
	readonly intercept: number;
	/** Standard deviation of the points about the line, in units of up; two degrees of freedom lost. */
	readonly scatter: number;
	readonly count: number;
	readonly meanAcross: number;
	/** Sum of squared distances from the mean, in squared units of across. */
	readonly squaresAcross: number;
}

/**
 * The line that makes the sum of squared vertical distances least.
 * @throws RangeError for fewer than three points, or points that all stand at one place across
 * @example leastSquaresLine([{ across: 1, up: 2 }, { across: 2, up: 4 }, { across: 3, up: 6 }]).slope // 2
 */
export function leastSquaresLine(points: readonly Point[]): Line {
	const count = points.length;
	if (count < 3) throw new RangeError('leastSquaresLine requires three points or more');
	const meanAcross = meanOf(points.map((point) => point.across));
	const meanUp = meanOf(points.map((point) => point.up));
	let squaresAcross = 0;
	let products = 0;
	for (const { across, up } of points) {
		squaresAcross += (across - meanAcross) ** 2;
		products += (across - meanAcross) * (up - meanUp);
	}
	if (!(squaresAcross > 0)) {
		throw new RangeError('leastSquaresLine requires points at more than one place across');
	}
	const slope = products / squaresAcross;
	const intercept = meanUp - slope * meanAcross;
	let squaresAbout = 0;
	for (const { across, up } of points) squaresAbout += (up - intercept - slope * across) ** 2;
	const scatter = Math.sqrt(squaresAbout / (count - 2));
	return { slope, intercept, scatter, count, meanAcross, squaresAcross };
}

/**
 * Standard error of the line's height at a place across, far from its points too: the scatter times
 * the root of one over the count plus the squared distance from their mean over their squares.
 * @example lineStandardError({ slope: 1, intercept: 0, scatter: 2, count: 4, meanAcross: 0, squaresAcross: 1 }, 0) // 1
 */
export function lineStandardError(line: Line, across: number): number {
	return (
		line.scatter * Math.sqrt(1 / line.count + (across - line.meanAcross) ** 2 / line.squaresAcross)
	);
}

function meanOf(values: readonly number[]): number {
	return values.reduce((sum, value) => sum + value, 0) / values.length;
}
