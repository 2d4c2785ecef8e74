import { limits } from '../physiology/limits.ts';
import { outingLimits } from './outing-limits.ts';
import type { OutingIssue, OutingIssueCode, OutingPath } from './outing-issues.ts';
import type { OutingPhase } from './outing.ts';
import { phaseTargets } from './phase.ts';
import { isPrintable } from './printable.ts';

type Found = OutingIssueCode | null;

/** What is wrong with one phase, in the order of its fields. */
export function checkPhase(phase: OutingPhase, path: OutingPath): readonly OutingIssue[] {
	const found: readonly (readonly [keyof OutingPhase, Found])[] = [
		['seconds', durationIssue(phase.seconds)],
		['target', targetIssue(phase)],
		['speedKmh', speedIssue(phase)],
		['inclinePercent', inclineIssue(phase.inclinePercent)],
		['cue', cueIssue(phase.cue)]
	];
	return found.flatMap(([field, code]) =>
		code === null ? [] : [{ code, path: [...path, field] }]
	);
}

function durationIssue(seconds: number): Found {
	const { low, high } = outingLimits.phaseSeconds;
	if (seconds < low) return 'duration-too-short';
	if (seconds > high) return 'duration-too-long';
	return Number.isInteger(seconds) ? null : 'duration-not-whole';
}

/** A target may be narrower than that of the kind, never wider: the kind says what the phase is for. */
function targetIssue({ kind, target }: OutingPhase): Found {
	if (target === null) return null;
	if (!(target.low >= 0 && target.low < target.high && target.high <= 1)) {
		return 'target-not-a-range';
	}
	const { low, high } = phaseTargets[kind].reserve;
	return target.low >= (low ?? 0) && target.high <= high ? null : 'target-outside-kind';
}

/** Between the two gaits lies a range that is both: the kind of the phase says which is meant. */
function speedIssue({ kind, speedKmh }: OutingPhase): Found {
	if (speedKmh === null) return null;
	const { low, high } = outingLimits.speedKmh;
	if (!(speedKmh >= low && speedKmh <= high)) return 'speed-out-of-limits';
	if (phaseTargets[kind].gait === 'walk') {
		return speedKmh > limits.walkingSpeedKmPerHour.valid.high ? 'too-fast-to-walk' : null;
	}
	return speedKmh < limits.runningSpeedKmPerHour.valid.low ? 'too-slow-to-run' : null;
}

function inclineIssue(inclinePercent: number | null): Found {
	if (inclinePercent === null) return null;
	const { low, high } = outingLimits.inclinePercent;
	return inclinePercent >= low && inclinePercent <= high ? null : 'incline-out-of-limits';
}

function cueIssue(cue: string): Found {
	if (cue.length > outingLimits.cueLength.high) return 'cue-too-long';
	return isPrintable(cue) ? null : 'cue-unprintable';
}
