import { writtenPlaces, type Place } from '../../outing/edit/place.ts';
import type { Outing } from '../../outing/outing.ts';
import type { CourseWay } from './course-way.ts';
import { longestSeconds, phaseFit, shortestSeconds, type PhaseFit } from './phase-fit.ts';

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
 * @param ways of each runner who has a curve
 */
export function whatToChange(outing: Outing, ways: readonly CourseWay[]): readonly Change[] {
	const rounds = new Map<string, { place: Place; indexes: number[] }>();
	for (const [index, place] of writtenPlaces(outing).entries()) {
		const key = `${place.part}.${place.phase}`;
		const known = rounds.get(key);
		if (known) known.indexes.push(index);
		else rounds.set(key, { place, indexes: [index] });
	}
	return [...rounds.values()].flatMap(({ place, indexes }) => changesAt(place, indexes, ways));
}

/** @param indexes the rounds of one phase; where one runner runs, another may walk */
function changesAt(
	place: Place,
	indexes: readonly number[],
	ways: readonly CourseWay[]
): readonly Change[] {
	const run = { runners: 0, misfits: 0 };
	const recovery = { runners: 0, misfits: 0 };
	const walk = { runners: 0, misfits: 0 };
	let [longest, shortest] = [Infinity, 0];
	for (const way of ways) {
		let kind: PhaseFit['kind'] = 'walk';
		let isMisfit = false;
		for (const index of indexes) {
			const fit = fitAt(way, index);
			kind = fit.kind;
			isMisfit ||= isMisfitting(fit);
			if (fit.kind === 'run') longest = Math.min(longest, longestSeconds(fit.longest));
			if (fit.kind === 'recovery') shortest = Math.max(shortest, shortestSeconds(fit.shortest));
		}
		const counted = { run, recovery, walk }[kind];
		counted.runners += 1;
		if (isMisfit) counted.misfits += 1;
	}
	const found: readonly Change[] = [
		{ kind: 'run-too-long', place, ...run, fitsAllSeconds: roundedDown(longest) },
		{ kind: 'recovery-too-short', place, ...recovery, fitsAllSeconds: roundedUp(shortest) },
		{ kind: 'walk-too-fast', place, ...walk }
	];
	return found.filter(({ misfits }) => misfits > 0);
}

function fitAt({ asked, edges, steady, upper }: CourseWay, index: number): PhaseFit {
	const { kind, seconds } = asked.phases[index]!;
	return phaseFit({
		kind,
		seconds,
		startShare: edges[index]!,
		steadyShare: steady[index]!,
		upperEdge: upper[index]!
	});
}

function isMisfitting(fit: PhaseFit): boolean {
	switch (fit.kind) {
		case 'run':
			return fit.isTooLong;
		case 'recovery':
			return fit.isTooShort;
		case 'walk':
			return fit.isTooFast;
	}
}

/** Null where there is no length that fits all. */
function roundedDown(seconds: number): number | null {
	const rounded = Math.floor(seconds / STEP_SECONDS + 1e-9) * STEP_SECONDS;
	return rounded > 0 ? rounded : null;
}

function roundedUp(seconds: number): number | null {
	const rounded = Math.ceil(seconds / STEP_SECONDS - 1e-9) * STEP_SECONDS;
	return Number.isFinite(rounded) ? rounded : null;
}
