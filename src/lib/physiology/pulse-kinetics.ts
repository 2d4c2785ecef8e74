/**
 * How fast the pulse follows a change of effort. Everything computed from it is an illustration: no
 * model of this kind was checked on beginners who walk and run in turn.
 */
export interface Kinetics {
	/** Time in which about two thirds (63 %) of a rise is made, in seconds. */
	readonly risingTauSeconds: number;
	/** The same for a fall while the person walks on, in seconds. */
	readonly fallingTauSeconds: number;
}

/**
 * Rising: source hunt2015, steps of running speed on a treadmill, 24 healthy men, 57.6 s with a
 * spread of 23.6 s. Falling: source barak2011 table 2, untrained students pedalling lightly in a
 * seat after effort, 90.6 s with a spread of 30.4 s. That walking slows the fall as light pedalling
 * does is our assumption.
 */
export const usualKinetics: Kinetics = { risingTauSeconds: 57.6, fallingTauSeconds: 90.6 };

/** One standard deviation between people of the two times above, same sources, in seconds. */
export const kineticsSpread: Kinetics = { risingTauSeconds: 23.6, fallingTauSeconds: 30.4 };

/**
 * Pulse some seconds into a phase of even effort: it nears the steady pulse, and in each time
 * constant makes 63 % of what is still missing. The steady pulse, plus the distance at the start
 * times e to the minus seconds over the time constant. For: the expected curve.
 * Sources and people: see usualKinetics. Not valid after all-out effort, nor for phases long enough
 * to drift (source coyle2001: upwards after about ten minutes). Typical error about the curve of one
 * person 2.3 bpm (wang2021), when that person's own numbers are known; far more when they are not.
 *
 * @returns beats a minute
 * @throws RangeError for a time below zero
 * @example pulseAfter(100, 140, 60) // 125.8854
 * @example pulseAfter(140, 100, 0) // 140
 */
export function pulseAfter(
	startBpm: number,
	steadyBpm: number,
	seconds: number,
	kinetics: Kinetics = usualKinetics
): number {
	if (!(seconds >= 0)) throw new RangeError('pulseAfter requires a time of 0 seconds or more');
	const tau = tauSeconds(startBpm, steadyBpm, kinetics);
	return steadyBpm + (startBpm - steadyBpm) * Math.exp(-seconds / tau);
}

/**
 * Seconds until the pulse stands at a level on its way to the steady pulse: pulseAfter solved for
 * the time. Zero when it starts there; Infinity when it never gets there, the steady pulse itself
 * included, which it only nears.
 * @example secondsUntil(100, 140, 125.8854) // 60
 * @example secondsUntil(100, 140, 140) // Infinity
 */
export function secondsUntil(
	startBpm: number,
	steadyBpm: number,
	levelBpm: number,
	kinetics: Kinetics = usualKinetics
): number {
	if (levelBpm === startBpm) return 0;
	const share = (startBpm - steadyBpm) / (levelBpm - steadyBpm);
	if (!(share >= 1 && share < Infinity)) return Infinity;
	return tauSeconds(startBpm, steadyBpm, kinetics) * Math.log(share);
}

/**
 * Area under the pulse of the first seconds of a phase, exact: its mean is this over the seconds.
 * The steady pulse times the seconds, plus the distance made times the time constant.
 * @returns beats a minute times seconds
 * @throws RangeError for a time below zero
 * @example pulseArea(120, 120, 10) // 1200
 */
export function pulseArea(
	startBpm: number,
	steadyBpm: number,
	seconds: number,
	kinetics: Kinetics = usualKinetics
): number {
	if (!(seconds >= 0)) throw new RangeError('pulseArea requires a time of 0 seconds or more');
	const tau = tauSeconds(startBpm, steadyBpm, kinetics);
	return steadyBpm * seconds - (startBpm - steadyBpm) * tau * Math.expm1(-seconds / tau);
}

/** The time constant that applies: whether the pulse rises or falls never changes within a phase. */
function tauSeconds(startBpm: number, steadyBpm: number, kinetics: Kinetics): number {
	return steadyBpm >= startBpm ? kinetics.risingTauSeconds : kinetics.fallingTauSeconds;
}
