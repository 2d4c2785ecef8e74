import type { TalkLevel } from './effort-scale.ts';
import {
	axes,
	intensities,
	type CutPoints,
	type Intensity,
	type IntensityAxis
} from './intensity-axes.ts';

export { axes, intensities, type CutPoints, type Intensity, type IntensityAxis };

/**
 * What talking is usually like at each class. Coarse: on a treadmill sedentary adults still spoke
 * comfortably at 73 % of maximum and were unsure at 82 % (source foster2009), young adults at 82 and
 * 90 % (source quinn2011). A talk answer outranks this and the pulse.
 */
export const usualTalkLevel: Readonly<Record<Intensity, TalkLevel>> = {
	'very-light': 'comfortable',
	light: 'comfortable',
	moderate: 'comfortable',
	vigorous: 'with-breaths',
	'near-maximal': 'broke-off'
};

/**
 * The class of a value on an axis: the one look-up behind page, table and chart.
 *
 * Sources garber2011, and pag2018 for effort; measured on healthy adults; on the pulse axes not valid
 * with medicines or conditions that change the heart's answer to effort. Error: that of the value put
 * in, near two classes' edges often a whole class.
 *
 * @param value in the unit of the axis; percentages as 0 to 100, and beyond either end is fine
 * @throws RangeError when the value is not a number
 * @example intensityOf('reservePercent', 59.5) // 'moderate'
 * @example intensityOf('perceived', 14) // 'vigorous'
 */
export function intensityOf(axis: IntensityAxis, value: number): Intensity {
	return intensityAmong(axes[axis].cutPoints, value);
}

/**
 * The class of a value among any four cut points, half-open: a cut point belongs to the class above.
 * Twelve significant digits count, so that 0.57 x 100 is 57.
 * @throws RangeError when the value is not a number
 * @example intensityAmong([1.6, 3.2, 4.8, 6.8], 4) // 'moderate'
 */
export function intensityAmong(cutPoints: CutPoints, value: number): Intensity {
	if (Number.isNaN(value)) throw new RangeError('intensityAmong requires a number');
	const meant = Number(value.toPrecision(12));
	if (meant < cutPoints[0]) return 'very-light';
	if (meant < cutPoints[1]) return 'light';
	if (meant < cutPoints[2]) return 'moderate';
	if (meant < cutPoints[3]) return 'vigorous';
	return 'near-maximal';
}

/**
 * The range of a class on an axis: from an edge that belongs to it, to below one that does not. Null
 * where it is open.
 * @example intensityRange('reservePercent', 'moderate') // { from: 40, below: 60 }
 * @example intensityRange('mets', 'near-maximal') // { from: 8.8, below: null }
 */
export function intensityRange(
	axis: IntensityAxis,
	intensity: Intensity
): { from: number | null; below: number | null } {
	const place = intensities.indexOf(intensity);
	const { cutPoints } = axes[axis];
	return { from: cutPoints[place - 1] ?? null, below: cutPoints[place] ?? null };
}
