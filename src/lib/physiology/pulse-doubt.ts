import { kineticsSpread, pulseAfter, pulseArea, usualKinetics } from './pulse-kinetics.ts';

/**
 * How far one standard deviation of each uncertain number moves a pulse, in beats a minute with
 * sign. They are taken as independent of each other and as the same all through an outing.
 */
export interface Doubt {
	readonly maximum: number;
	readonly resting: number;
	readonly capacity: number;
	/** The error of the equations that turn speed into uptake. */
	readonly equation: number;
	readonly risingTau: number;
	readonly fallingTau: number;
}

/** A pulse with its doubt. */
export interface DoubtfulPulse {
	readonly bpm: number;
	readonly doubt: Doubt;
}

/** Nothing is uncertain. */
export const noDoubt: Doubt = {
	maximum: 0,
	resting: 0,
	capacity: 0,
	equation: 0,
	risingTau: 0,
	fallingTau: 0
};

/**
 * One standard deviation of a pulse: the root of the sum of the squared doubts.
 * @example spreadOfDoubt({ maximum: 3, resting: 4, capacity: 0, equation: 0, risingTau: 0, fallingTau: 0 }) // 5
 */
export function spreadOfDoubt(doubt: Doubt): number {
	const { maximum, resting, capacity, equation, risingTau, fallingTau } = doubt;
	// A root of squares: Math.hypot minds overflow, which beats cannot come near, and takes far longer.
	return Math.sqrt(
		maximum ** 2 + resting ** 2 + capacity ** 2 + equation ** 2 + risingTau ** 2 + fallingTau ** 2
	);
}

/**
 * pulseAfter with its doubt carried along (first-order propagation of errors): each doubt of the
 * start shrinks as the start is forgotten, that of the steady pulse grows as it is neared, and the
 * time constant in force adds what one spread of it moves the pulse by.
 * @example doubtfulPulseAfter({ bpm: 100, doubt: noDoubt }, { bpm: 140, doubt: { ...noDoubt, maximum: 5 } }, 57.6).doubt.maximum // 3.1606
 * @example doubtfulPulseAfter({ bpm: 100, doubt: noDoubt }, { bpm: 140, doubt: { ...noDoubt, maximum: 5 } }, 57.6).doubt.risingTau // -6.0291
 */
export function doubtfulPulseAfter(
	start: DoubtfulPulse,
	steady: DoubtfulPulse,
	seconds: number
): DoubtfulPulse {
	const { tau, tauShare, rises } = timing(start, steady);
	const left = Math.exp(-seconds / tau);
	const fromTau = (start.bpm - steady.bpm) * left * (seconds / tau) * tauShare;
	return {
		bpm: pulseAfter(start.bpm, steady.bpm, seconds),
		doubt: mixed(start.doubt, left, steady.doubt, 1 - left, fromTau, rises)
	};
}

/**
 * pulseArea with its doubt carried along, in beats a minute times seconds.
 * @example doubtfulPulseArea({ bpm: 100, doubt: noDoubt }, { bpm: 140, doubt: { ...noDoubt, maximum: 5 } }, 57.6).doubt.maximum // 105.9493
 */
export function doubtfulPulseArea(
	start: DoubtfulPulse,
	steady: DoubtfulPulse,
	seconds: number
): DoubtfulPulse {
	const { tau, tauShare, rises } = timing(start, steady);
	const remembered = -tau * Math.expm1(-seconds / tau);
	const fromTau =
		(start.bpm - steady.bpm) * (tau - (seconds + tau) * Math.exp(-seconds / tau)) * tauShare;
	return {
		bpm: pulseArea(start.bpm, steady.bpm, seconds),
		doubt: mixed(start.doubt, remembered, steady.doubt, seconds - remembered, fromTau, rises)
	};
}

/**
 * Two areas one after the other: what is uncertain in both adds up before it is squared.
 * @example joinedAreas({ bpm: 10, doubt: { ...noDoubt, maximum: 1 } }, { bpm: 20, doubt: { ...noDoubt, maximum: 2 } }).doubt.maximum // 3
 */
export function joinedAreas(first: DoubtfulPulse, second: DoubtfulPulse): DoubtfulPulse {
	return { bpm: first.bpm + second.bpm, doubt: mixed(first.doubt, 1, second.doubt, 1, 0, true) };
}

/** tauShare is one spread of the time constant as a share of it. */
function timing(start: DoubtfulPulse, steady: DoubtfulPulse) {
	const rises = steady.bpm >= start.bpm;
	const name = rises ? 'risingTauSeconds' : 'fallingTauSeconds';
	const tau = usualKinetics[name];
	return { tau, tauShare: kineticsSpread[name] / tau, rises };
}

function mixed(
	start: Doubt,
	startWeight: number,
	steady: Doubt,
	steadyWeight: number,
	fromTau: number,
	rises: boolean
): Doubt {
	return {
		maximum: start.maximum * startWeight + steady.maximum * steadyWeight,
		resting: start.resting * startWeight + steady.resting * steadyWeight,
		capacity: start.capacity * startWeight + steady.capacity * steadyWeight,
		equation: start.equation * startWeight + steady.equation * steadyWeight,
		risingTau:
			start.risingTau * startWeight + steady.risingTau * steadyWeight + (rises ? fromTau : 0),
		fallingTau:
			start.fallingTau * startWeight + steady.fallingTau * steadyWeight + (rises ? 0 : fromTau)
	};
}
