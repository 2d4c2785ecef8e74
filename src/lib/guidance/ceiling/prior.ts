import { standardNormalPdf } from '../../physiology/normal-distribution.ts';

/** A number with one standard deviation. */
interface Estimate {
	readonly bpm: number;
	readonly spreadBpm: number;
}

/**
 * Where comfortable talking ends, as a share of the reserve, before anything is known of a runner:
 * 14 sedentary adults on a treadmill last talked comfortably at 79 ± 9 % of their maximum (source
 * foster2009), which is about 70 ± 14 % of the reserve.
 */
export const PRIOR_SHARE = { mean: 0.7, spread: 0.14 };

/** How far above that talk breaks off, beats a minute, and the least. Our own choice, no source. */
const PRIOR_GAP = { mean: 20, spread: 10, least: 2, most: 60 };

/** How sharp the ends are for a runner: from and to, even in the logarithm. Our own choice. */
const SCATTER = { low: 3, high: 15, levels: 6 };

/** The places at which a ceiling is thought possible, and how likely each is at first. */
export interface Grid {
	/** Whole beats, one apart. */
	readonly ceilingsBpm: readonly number[];
	readonly ceilingShares: readonly number[];
	/** Two beats apart. */
	readonly gapsBpm: readonly number[];
	readonly gapShares: readonly number[];
	/** Each as likely as the others. */
	readonly scattersBpm: readonly number[];
}

/**
 * What is thought of a runner's talk ceiling before the first talk answer: resting plus a share of
 * the reserve, with the doubts of all three.
 *
 * The spread is that of f M + (1 - f) R for independent f, M, R: the root of
 * E(f^2) Var M + E((1 - f)^2) Var R + Var f (M - R)^2. Own derivation.
 *
 * @example priorCeiling({ bpm: 70, spreadBpm: 0 }, { bpm: 170, spreadBpm: 0 }).bpm // 140
 * @example priorCeiling({ bpm: 70, spreadBpm: 0 }, { bpm: 170, spreadBpm: 0 }).spreadBpm // 14
 */
export function priorCeiling(resting: Estimate, maximum: Estimate): Estimate {
	const { mean, spread } = PRIOR_SHARE;
	const reserve = maximum.bpm - resting.bpm;
	const variance =
		(mean ** 2 + spread ** 2) * maximum.spreadBpm ** 2 +
		((1 - mean) ** 2 + spread ** 2) * resting.spreadBpm ** 2 +
		spread ** 2 * reserve ** 2;
	return { bpm: resting.bpm + mean * reserve, spreadBpm: Math.sqrt(variance) };
}

/** @throws RangeError unless the maximum is above the resting pulse */
export function priorGrid(resting: Estimate, maximum: Estimate): Grid {
	if (!(maximum.bpm > resting.bpm)) throw new RangeError('priorGrid requires a reserve');
	const prior = priorCeiling(resting, maximum);
	const low = Math.round(prior.bpm - 4 * prior.spreadBpm);
	const high = Math.round(prior.bpm + 4 * prior.spreadBpm);
	const ceilingsBpm = Array.from({ length: high - low + 1 }, (_, nth) => low + nth);
	const { mean, spread, least, most } = PRIOR_GAP;
	const gapsBpm = Array.from({ length: (most - least) / 2 + 1 }, (_, nth) => least + 2 * nth);
	const { levels } = SCATTER;
	return {
		ceilingsBpm,
		ceilingShares: ceilingsBpm.map((at) => standardNormalPdf((at - prior.bpm) / prior.spreadBpm)),
		gapsBpm,
		gapShares: gapsBpm.map((gap) => standardNormalPdf((gap - mean) / spread)),
		scattersBpm: Array.from(
			{ length: levels },
			(_, nth) => SCATTER.low * (SCATTER.high / SCATTER.low) ** (nth / (levels - 1))
		)
	};
}
