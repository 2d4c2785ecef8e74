import type { PhaseKind } from './phase.ts';

/** A phase of an outing, as long as it is meant to last. */
export interface PlannedPhase {
	readonly kind: PhaseKind;
	readonly seconds: number;
}

const WARM_UP_SECONDS = 420;
const COOL_DOWN_SECONDS = 420;
const WALK_SECONDS = 110;

/**
 * An outing for a group that has none of its own yet: runs of uneven length that rise to the longest
 * and fall again, a walk of 110 s after each but the last, which the cool-down follows. Our own
 * choice, no source.
 */
export const plainOuting: readonly PlannedPhase[] = outingOf([30, 40, 50, 40, 30]);

function outingOf(runSeconds: readonly number[]): readonly PlannedPhase[] {
	const runs = runSeconds.flatMap((seconds, i): PlannedPhase[] => [
		...(i > 0 ? [{ kind: 'recovery-walk' as const, seconds: WALK_SECONDS }] : []),
		{ kind: 'steady-run', seconds }
	]);
	return [
		{ kind: 'warm-up-walk', seconds: WARM_UP_SECONDS },
		...runs,
		{ kind: 'cool-down-walk', seconds: COOL_DOWN_SECONDS }
	];
}

/**
 * When each phase begins, in seconds from the start of the outing.
 *
 * @example startsOf([{ kind: 'warm-up-walk', seconds: 420 }, { kind: 'steady-run', seconds: 30 }]) // [0, 420]
 */
export function startsOf(phases: readonly PlannedPhase[]): readonly number[] {
	let at = 0;
	return phases.map(({ seconds }) => {
		const start = at;
		at += seconds;
		return start;
	});
}

/**
 * How long an outing lasts, and how much of it is running, in seconds.
 *
 * @example lengthOf([{ kind: 'warm-up-walk', seconds: 420 }, { kind: 'steady-run', seconds: 30 }]) // { seconds: 450, runSeconds: 30, longestRunSeconds: 30 }
 */
export function lengthOf(phases: readonly PlannedPhase[]) {
	const runs = phases.filter(({ kind }) => kind === 'steady-run').map(({ seconds }) => seconds);
	const sum = (lengths: readonly number[]) => lengths.reduce((one, other) => one + other, 0);
	return {
		seconds: sum(phases.map(({ seconds }) => seconds)),
		runSeconds: sum(runs),
		longestRunSeconds: Math.max(0, ...runs)
	};
}
