import type { LocalDate } from '../../calendar/local-date.ts';
import { donePhases } from '../../outing/done-phases.ts';
import { phasesOf } from '../../outing/outing.ts';
import { hurt, type DatedOuting } from '../next-time/asked.ts';
import { COUNTS_FROM_SECONDS } from '../ceiling/evidence.ts';

/** What is compared: runs with runs, and brisk walks with brisk walks. */
export type Compared = 'steady-run' | 'brisk-walk';

/** A speed on a treadmill that was comfortable and felt like 5 or 6. */
export interface SameEffort {
	readonly onDate: LocalDate;
	/** The middle one of an outing. */
	readonly speedKmh: number;
}

/**
 * The outings of which the speed at the same effort can be compared, oldest first, one speed each. Of
 * an outing count answers with comfortable talk, effort 5 or 6, and a speed, two minutes or more into
 * a part without a slope: before that neither talk nor effort has caught up (foster2008). Outdoors a
 * speed is not measured, and a hot day or pain makes an outing another one. Our own rules, no source.
 */
export function atTheSameEffort(
	outings: readonly DatedOuting[],
	kind: Compared
): readonly SameEffort[] {
	return outings
		.flatMap((outing) => {
			const speeds = isComparable(outing) ? speedsOf(outing, kind) : [];
			const speedKmh = middle(speeds);
			return speedKmh === null ? [] : [{ onDate: outing.onDate, speedKmh }];
		})
		.sort((one, other) => (one.onDate < other.onDate ? -1 : 1));
}

const isComparable = (outing: DatedOuting) =>
	outing.started?.hot === false && outing.started.place === 'treadmill' && !hurt(outing);

function speedsOf(outing: DatedOuting, kind: Compared): readonly number[] {
	const planned = outing.started ? phasesOf(outing.started.outing) : [];
	return donePhases(outing)
		.filter((done) => done.kind === kind && !planned[done.phase]?.inclinePercent)
		.flatMap(({ answers }) => answers)
		.flatMap(({ talk, effort, speedKmh, secondsIntoPhase }) => {
			const counts = talk === 'comfortable' && (effort === 5 || effort === 6);
			return counts && speedKmh !== null && secondsIntoPhase >= COUNTS_FROM_SECONDS
				? [speedKmh]
				: [];
		});
}

function middle(values: readonly number[]): number | null {
	const sorted = [...values].sort((one, other) => one - other);
	const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
	return low === undefined || high === undefined ? null : (low + high) / 2;
}
