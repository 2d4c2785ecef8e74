import { checkPhase } from './check-phase.ts';
import type { OutingIssue, OutingPath } from './outing-issues.ts';
import { outingLimits } from './outing-limits.ts';
import { isRepeated, type Outing, type OutingPart } from './outing.ts';
import { isPrintable } from './printable.ts';

export type { OutingIssue, OutingIssueCode, OutingPath } from './outing-issues.ts';

/**
 * What is wrong with an outing, from the name inwards; nothing where it can be kept and done. Every
 * number may be anything, NaN included. Without writing out the repeats, so that no number of times
 * is too many to look at.
 *
 * @example checkOuting({ name: 'One', parts: [] }) // [{ code: 'outing-empty', path: ['parts'] }]
 */
export function checkOuting(outing: Outing): readonly OutingIssue[] {
	const ofParts = outing.parts.flatMap((part, index) => partIssues(part, ['parts', index]));
	return [...nameIssues(outing.name), ...wholeIssues(outing, ofParts.length > 0), ...ofParts];
}

function nameIssues(name: string): readonly OutingIssue[] {
	const path = ['name'];
	const { low, high } = outingLimits.nameLength;
	if (name.trim().length < low) return [{ code: 'name-empty', path }];
	if (name.length > high) return [{ code: 'name-too-long', path }];
	return isPrintable(name) ? [] : [{ code: 'name-unprintable', path }];
}

/** The length is judged only where every part is sound: else one slip would be told twice. */
function wholeIssues({ parts }: Outing, partsAreUnsound: boolean): readonly OutingIssue[] {
	const path = ['parts'];
	const sums = parts.map(partSums);
	const phaseCount = sums.reduce((sum, part) => sum + part.phaseCount, 0);
	const seconds = sums.reduce((sum, part) => sum + part.seconds, 0);
	if (parts.length === 0) return [{ code: 'outing-empty', path }];
	if (phaseCount > outingLimits.phases.high) return [{ code: 'too-many-phases', path }];
	if (partsAreUnsound) return [];
	if (seconds < outingLimits.outingSeconds.low) return [{ code: 'outing-too-short', path }];
	return seconds > outingLimits.outingSeconds.high ? [{ code: 'outing-too-long', path }] : [];
}

function partSums(part: OutingPart) {
	if (!isRepeated(part)) return { phaseCount: 1, seconds: part.seconds };
	const once = part.phases.reduce((sum, { seconds }) => sum + seconds, 0);
	return { phaseCount: part.times * part.phases.length, seconds: part.times * once };
}

function partIssues(part: OutingPart, path: OutingPath): readonly OutingIssue[] {
	if (!isRepeated(part)) return checkPhase(part, path);
	const { low, high } = outingLimits.times;
	const timesFit = Number.isInteger(part.times) && part.times >= low && part.times <= high;
	return [
		...(timesFit ? [] : [{ code: 'times-out-of-limits', path: [...path, 'times'] } as const]),
		...(part.phases.length > 0
			? part.phases.flatMap((phase, index) => checkPhase(phase, [...path, 'phases', index]))
			: [{ code: 'repeat-empty', path: [...path, 'phases'] } as const])
	];
}
