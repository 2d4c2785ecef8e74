import type { Kinetics } from './pulse-kinetics.ts';
import { pulseArea, usualKinetics } from './pulse-kinetics.ts';

/** A run and a walk that follow each other again and again, each of even effort. */
export interface Cycle {
	readonly runSeconds: number;
	readonly walkSeconds: number;
	/** Pulse at which a run that never ends would settle. */
	readonly runSteadyBpm: number;
	/** Pulse at which a walk that never ends would settle. */
	readonly walkSteadyBpm: number;
}

/** Where a cycle's pulse settles after many rounds, beats a minute. */
export interface CyclePulse {
	readonly peakBpm: number;
	readonly troughBpm: number;
	readonly meanBpm: number;
}

/**
 * Peak, trough and mean that a repeated run and walk settle to. For: what a programme of many equal
 * runs asks, without going through them one by one; an outing with few or uneven runs is expectedCurve.
 * With a and b what is left of a distance after the run and after the walk: the peak is (run steady
 * x (1 - a) + walk steady x a (1 - b)) / (1 - a b), the trough lies b of the way from walk steady
 * to the peak, the mean is the area under both over the time. With one time constant for both, the
 * mean is that of the steady pulses by time. An illustration; sources, people and error as in
 * pulseAfter.
 *
 * @throws RangeError unless the run's steady pulse is at least the walk's, both durations are zero or
 * more, and one of them is above
 * @example steadyCycle({ runSeconds: 60, walkSeconds: 90, runSteadyBpm: 160, walkSteadyBpm: 100 }).peakBpm // 144.6646
 */
export function steadyCycle(cycle: Cycle, kinetics: Kinetics = usualKinetics): CyclePulse {
	const { runSeconds, walkSeconds, runSteadyBpm, walkSteadyBpm } = cycle;
	if (!(runSeconds >= 0 && walkSeconds >= 0 && runSeconds + walkSeconds > 0)) {
		throw new RangeError('steadyCycle requires a run and a walk that last');
	}
	if (!(runSteadyBpm >= walkSteadyBpm)) {
		throw new RangeError('steadyCycle requires a run at least as hard as the walk');
	}
	const runTime = runSeconds / kinetics.risingTauSeconds;
	const walkTime = walkSeconds / kinetics.fallingTauSeconds;
	const a = Math.exp(-runTime);
	const b = Math.exp(-walkTime);
	// expm1 keeps the digits of 1 - a, 1 - b and 1 - a b when a cycle is short.
	const towardsRun = -Math.expm1(-runTime) * runSteadyBpm;
	const towardsWalk = -a * Math.expm1(-walkTime) * walkSteadyBpm;
	const peakBpm = (towardsRun + towardsWalk) / -Math.expm1(-runTime - walkTime);
	const troughBpm = walkSteadyBpm + (peakBpm - walkSteadyBpm) * b;
	const area =
		pulseArea(troughBpm, runSteadyBpm, runSeconds, kinetics) +
		pulseArea(peakBpm, walkSteadyBpm, walkSeconds, kinetics);
	return { peakBpm, troughBpm, meanBpm: area / (runSeconds + walkSeconds) };
}
