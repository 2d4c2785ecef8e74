import { kineticsSpread, pulseAfter, usualKinetics } from '../../physiology/pulse-kinetics.ts';
import { shortestRecovery } from '../../physiology/shortest-recovery.ts';
import { phaseTargets } from '../phase.ts';
import { RECOVERY_SECONDS, STEP_SECONDS } from './programme-limits.ts';
import type { ProgrammePulse } from './wishes.ts';

/** One spread slower than usual, so that five runners in six are back in time. */
const slowKinetics = {
	...usualKinetics,
	fallingTauSeconds: usualKinetics.fallingTauSeconds + kineticsSpread.fallingTauSeconds
};

/**
 * How long to walk after a run until the pulse is back in the recovery range, for a runner whose
 * pulse falls slowly, up to whole steps and at least 95 s. Where it never comes back so far, the
 * longest recovery that a programme has. Sources, people and error as in shortestRecovery.
 *
 * @example recoverySeconds(300, unknownPulse) // 110
 */
export function recoverySeconds(runSeconds: number, pulse: ProgrammePulse): number {
	const upperEdge = phaseTargets['recovery-walk'].reserve.high;
	const answer = shortestRecovery(
		{
			startBpm: pulseAfter(upperEdge, pulse.runShare, runSeconds),
			steadyWalkBpm: pulse.walkShare,
			upperEdgeBpm: upperEdge
		},
		slowKinetics
	);
	const needed = answer.kind === 'never' ? Infinity : answer.seconds;
	const whole = Math.ceil(needed / STEP_SECONDS - 1e-9) * STEP_SECONDS;
	return Math.min(Math.max(whole, RECOVERY_SECONDS.low), RECOVERY_SECONDS.high);
}
