import type { Outing, OutingPhase } from '../outing.ts';
import { plainPhase } from '../plain-phase.ts';
import { COOL_DOWN_SECONDS, RECOVERY_SECONDS, WARM_UP_SECONDS } from './programme-limits.ts';
import { recoverySeconds } from './recovery-length.ts';
import { runLengths } from './run-lengths.ts';
import type { ProgrammePulse } from './wishes.ts';

export type Parts = Outing['parts'];

/** Of the walks of settling in; the brisk part grows by a minute a week. Our own choice, no source. */
const BRISK_SECONDS = { first: 600, more: 60, longest: 240 };

/** Runs of these lengths, each but the last with the recovery that it needs. */
export function runningParts(lengths: readonly number[], pulse: ProgrammePulse): Parts {
	return withWalksAround(lengths, 'steady-run', (seconds) => recoverySeconds(seconds, pulse));
}

/**
 * An outing of settling in: brisk walks with easier ones between.
 *
 * @param week of the programme, from 1
 */
export function walkingParts(week: number): Parts {
	const total = BRISK_SECONDS.first + BRISK_SECONDS.more * (week - 1);
	const lengths = runLengths(total, BRISK_SECONDS.longest);
	return withWalksAround(lengths, 'brisk-walk', () => RECOVERY_SECONDS.low);
}

function withWalksAround(
	lengths: readonly number[],
	kind: OutingPhase['kind'],
	recoveryAfter: (seconds: number) => number
): Parts {
	return [
		plainPhase('warm-up-walk', WARM_UP_SECONDS),
		...lengths.flatMap((seconds, nth) => {
			const phase = plainPhase(kind, seconds);
			const isLast = nth === lengths.length - 1;
			return isLast ? [phase] : [phase, plainPhase('recovery-walk', recoveryAfter(seconds))];
		}),
		plainPhase('cool-down-walk', COOL_DOWN_SECONDS)
	];
}
