import { writtenPlaces, type Place } from '../../outing/edit/place.ts';
import type { Outing } from '../../outing/outing.ts';
import type { CoursePhase } from './course-steps.ts';

/** Lengths that a coach is told are whole steps of so many seconds. */
const STEP_SECONDS = 5;

/** Something about a phase that does not fit some of the runners. */
export type Change = {
	/** In the outing as it is written, a repeated phase once. */
	readonly place: Place;
	/** Whom it was asked of: those with a curve who do this phase. */
	readonly runners: number;
	/** How many of them it does not fit, in any of its rounds. */
	readonly misfits: number;
} & (
	| {
			readonly kind: 'run-too-long';
			/** Rounded down to 5 s; null where none fits all, as the pulse is still up at its start. */
			readonly fitsAllSeconds: number | null;
	  }
	| {
			readonly kind: 'recovery-too-short';
			/** Rounded up to 5 s; null where none fits all: for somebody this walk is itself too fast. */
			readonly fitsAllSeconds: number | null;
	  }
	| { readonly kind: 'walk-too-fast' }
);

/**
 * What to change so that an outing fits everybody, in the order of the outing. Each phase is judged
 * with the outing before it as it stands; shortening an earlier run only leaves more room.
 *
 * @param ways the phases of each runner who has a curve, as courseSteps gives them
 */
export function whatToChange(
	outing: Outing,
	ways: readonly (readonly CoursePhase[])[]
): readonly Change[] {
	const rounds = new Map<string, { place: Place; indexes: number[] }>();
	for (const [index, place] of writtenPlaces(outing).entries()) {
		const key = `${place.part}.${place.phase}`;
		const known = rounds.get(key);
		if (known) known.indexes.push(index);
		else rounds.set(key, { place, indexes: [index] });
	}
	return [...rounds.values()].flatMap(({ place, indexes }) =>
		changesAt(
			place,
			ways.map((way) => indexes.flatMap((index) => way[index] ?? []))
		)
	);
}

/** @param ways for each runner the rounds of one phase */
function changesAt(place: Place, ways: readonly (readonly CoursePhase[])[]): readonly Change[] {
	const runs = ways.filter((way) => way[0]?.fit.kind === 'run');
	const recoveries = ways.filter((way) => way[0]?.fit.kind === 'recovery');
	const walks = ways.filter((way) => way[0]?.fit.kind === 'walk');
	const found: readonly Change[] = [
		{
			kind: 'run-too-long',
			place,
			runners: runs.length,
			misfits: countOf(runs, ({ fit }) => fit.kind === 'run' && fit.isTooLong),
			fitsAllSeconds: longestForAll(runs.flat())
		},
		{
			kind: 'recovery-too-short',
			place,
			runners: recoveries.length,
			misfits: countOf(recoveries, ({ fit }) => fit.kind === 'recovery' && fit.isTooShort),
			fitsAllSeconds: shortestForAll(recoveries.flat())
		},
		{
			kind: 'walk-too-fast',
			place,
			runners: walks.length,
			misfits: countOf(walks, ({ fit }) => fit.kind === 'walk' && fit.isTooFast)
		}
	];
	return found.filter(({ misfits }) => misfits > 0);
}

function countOf(
	ways: readonly (readonly CoursePhase[])[],
	misfits: (phase: CoursePhase) => boolean
): number {
	return ways.filter((way) => way.some(misfits)).length;
}

function longestForAll(runs: readonly CoursePhase[]): number | null {
	let longest = Infinity;
	for (const { fit } of runs) {
		if (fit.kind !== 'run' || fit.longest.kind === 'no-limit') continue;
		longest = Math.min(longest, fit.longest.kind === 'none' ? 0 : fit.longest.seconds);
	}
	const rounded = Math.floor(longest / STEP_SECONDS + 1e-9) * STEP_SECONDS;
	return rounded > 0 ? rounded : null;
}

function shortestForAll(recoveries: readonly CoursePhase[]): number | null {
	let shortest = 0;
	for (const { fit } of recoveries) {
		if (fit.kind !== 'recovery') continue;
		shortest = Math.max(shortest, fit.shortest.kind === 'never' ? Infinity : fit.shortest.seconds);
	}
	const rounded = Math.ceil(shortest / STEP_SECONDS - 1e-9) * STEP_SECONDS;
	return Number.isFinite(rounded) ? rounded : null;
}
