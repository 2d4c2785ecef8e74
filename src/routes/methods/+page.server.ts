import { maximumPredictions } from '$lib/physiology/comparison-maximum.ts';
import { intensities, intensityRange } from '$lib/physiology/intensity.ts';
import { sources } from '$lib/physiology/sources.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import { percent } from '$words/dates.ts';
import type { PageServerLoad } from './$types';

/** The axes on which the classes are shown. */
const AXES = ['reservePercent', 'maximumPercent', 'effort'] as const;

const AGES = [20, 30, 40, 50, 60, 70];

/** Rendered from the same data as the code: a table here cannot drift from what is computed. */
export const load: PageServerLoad = () => ({
	formulas: maximumPredictions.map(
		({ source }) => `${sources[source].authors.split(' ')[0]} ${sources[source].year}`
	),
	maxima: AGES.map((age) => ({
		age,
		bpm: maximumPredictions.map(({ predict }) => roundHalfUp(predict(age), 0))
	})),
	classes: intensities.map((intensity) => ({
		intensity,
		ranges: AXES.map((axis) => intensityRange(axis, intensity))
	})),
	targets: Object.values(phaseTargets).map(({ kind, reserve, byItsEnd, effort }) => ({
		kind,
		byItsEnd,
		effort,
		reserve:
			reserve.low === null
				? `< ${percent(reserve.high)}`
				: `${Math.round(reserve.low * 100)}–${percent(reserve.high)}`
	})),
	sources: Object.entries(sources).map(([id, { authors, year, title, where, doi, seen }]) => ({
		id,
		authors,
		year,
		title,
		where,
		doi,
		seen
	}))
});
