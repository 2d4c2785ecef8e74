import { HALF_LIFE_DAYS } from '$lib/guidance/ceiling/talk-ceiling.ts';
import { PRIOR_SHARE } from '$lib/guidance/ceiling/prior.ts';
import { maximumPredictions } from '$lib/physiology/comparison-maximum.ts';
import { formulaIds, formulas, type Formula, type FormulaUse } from '$lib/physiology/formulas.ts';
import { intensities, intensityRange } from '$lib/physiology/intensity.ts';
import { AGE_MAXIMUM_SPREAD_BPM, TANAKA } from '$lib/physiology/maximum.ts';
import { REST_UPTAKE, UPTAKE_ERROR_FRACTION, uptakeCost } from '$lib/physiology/metabolic-cost.ts';
import { sources } from '$lib/physiology/sources.ts';
import { SPEED_ERROR_FRACTION } from '$lib/physiology/speed-for-reserve.ts';
import { SEDENTARY_TALKERS } from '$lib/physiology/talk-test.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import { percent } from '$words/numbers.ts';
import { errorText } from '$words/methods-checks.ts';
import { formulaWords } from '$words/methods-formulas.ts';
import { sourceName } from './source-name.ts';
import type { PageServerLoad } from './$types';

/** The axes on which the classes are shown. */
const AXES = ['reservePercent', 'maximumPercent', 'effort'] as const;

const AGES = [20, 30, 40, 50, 60, 70];

/** Of these a reader sees numbers; tools and comparisons have their errors on their own page. */
const SHOWN: ReadonlySet<FormulaUse> = new Set(['band', 'speed', 'expected']);

function accuracy() {
	return formulaIds
		.filter((id) => SHOWN.has(formulas[id].use))
		.map((id) => {
			const { error }: Formula = formulas[id];
			return {
				id,
				...formulaWords[id],
				off: error && errorText(error.amount, error.unit),
				source: error?.source ? sourceName(error.source) : null
			};
		});
}

/** Rendered from the same data as the code: a table here cannot drift from what is computed. */
export const load: PageServerLoad = () => ({
	maximum: { ...TANAKA, spreadBpm: AGE_MAXIMUM_SPREAD_BPM },
	uptake: {
		cost: uptakeCost,
		rest: REST_UPTAKE,
		error: percent(UPTAKE_ERROR_FRACTION),
		speedError: {
			low: String(Math.round(100 * SPEED_ERROR_FRACTION.low)),
			high: percent(SPEED_ERROR_FRACTION.high)
		}
	},
	ceiling: {
		people: SEDENTARY_TALKERS,
		share: percent(PRIOR_SHARE.mean),
		spread: String(Math.round(100 * PRIOR_SHARE.spread)),
		weeks: HALF_LIFE_DAYS / 7
	},
	accuracy: accuracy(),
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
