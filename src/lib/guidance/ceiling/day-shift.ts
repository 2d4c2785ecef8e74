/**
 * How far a runner's ceiling lies from its usual place on one day, beats a minute: one standard
 * deviation. Sleep, coffee, warmth and stress move the pulse at the same effort. Our own choice, from
 * memory of day-to-day differences of 3 to 6 beats; not from a source that was seen.
 */
export const DAY_SPREAD_BPM = 5;

const ROOT_PI = Math.sqrt(Math.PI);
const ROOT_TWO = Math.SQRT2;

/** Gauss and Hermite's seven points. Source abramowitzStegun1964, table 25.10, n = 7. */
const POINTS = [
	{ at: 0, weight: 0.8102646175568073 },
	{ at: 0.8162878828589647, weight: 0.4256072526101278 },
	{ at: 1.673551628767471, weight: 0.05451558281912703 },
	{ at: 2.651961356835233, weight: 0.0009717812450995192 }
] as const;

/** The shifts of a day over which a mean is taken, each with its share; the shares add up to one. */
export const dayShifts: readonly { readonly bpm: number; readonly share: number }[] =
	POINTS.flatMap(({ at, weight }) => {
		const bpm = at * ROOT_TWO * DAY_SPREAD_BPM;
		const share = weight / ROOT_PI;
		return at === 0
			? [{ bpm, share }]
			: [
					{ bpm, share },
					{ bpm: -bpm, share }
				];
	});
