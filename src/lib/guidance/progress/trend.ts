/** A value of a day, counted in days from any beginning. */
export interface Point {
	readonly day: number;
	readonly value: number;
}

export interface Trend {
	/** How much a day brings, and between what it lies four times in five. */
	readonly perDay: number;
	readonly lowPerDay: number;
	readonly highPerDay: number;
	/** The line on a day, and how far to either side it lies four times in five. */
	readonly at: (day: number) => { readonly value: number; readonly give: number };
}

/**
 * Ninetieth percentile of Student's t by degrees of freedom from 1 on. Source abramowitzStegun1964,
 * table 26.10; from memory, and the test compares it with another library.
 */
const NINETIETH = [
	3.078, 1.886, 1.638, 1.533, 1.476, 1.44, 1.415, 1.397, 1.383, 1.372, 1.363, 1.356, 1.35, 1.345,
	1.341, 1.337, 1.333, 1.33, 1.328, 1.325
] as const;

/**
 * Above twenty the last one counts for all: a doubt that is a little too wide.
 * @throws RangeError for none
 * @example ninetiethOfStudent(3) // 1.638
 */
export function ninetiethOfStudent(degreesOfFreedom: number): number {
	const found = NINETIETH[Math.min(degreesOfFreedom, NINETIETH.length) - 1];
	if (found === undefined) throw new RangeError('ninetiethOfStudent requires 1 or more, whole');
	return found;
}

/**
 * For: whether something changes over weeks, or only wavers. A straight line of least squares with
 * an interval of 80 %, as every textbook has it; no source. It takes for granted that the points
 * waver independently about one line, which people do only roughly.
 *
 * @throws RangeError for fewer than three points, or for all of one day
 * @example lineThrough([{ day: 0, value: 5 }, { day: 1, value: 5 }, { day: 2, value: 5 }]).perDay // 0
 */
export function lineThrough(points: readonly Point[]): Trend {
	const count = points.length;
	if (count < 3) throw new RangeError('lineThrough requires three points');
	const mean = (of: (point: Point) => number) =>
		points.reduce((sum, point) => sum + of(point), 0) / count;
	const day = mean((point) => point.day);
	const value = mean((point) => point.value);
	const across = count * mean((point) => (point.day - day) ** 2);
	if (across === 0) throw new RangeError('lineThrough requires two days');
	const perDay = (count * mean((point) => (point.day - day) * (point.value - value))) / across;
	const left = count * mean((point) => (point.value - value - perDay * (point.day - day)) ** 2);
	const spread = Math.sqrt(left / (count - 2));
	const wide = ninetiethOfStudent(count - 2);
	const give = (wide * spread) / Math.sqrt(across);
	return {
		perDay,
		lowPerDay: perDay - give,
		highPerDay: perDay + give,
		at: (on) => ({
			value: value + perDay * (on - day),
			give: wide * spread * Math.sqrt(1 / count + (on - day) ** 2 / across)
		})
	};
}
