import type { OutingTalk } from './evidence.ts';
import { outingLikelihood } from './outing-likelihood.ts';
import { priorGrid, type Grid } from './prior.ts';

interface Estimate {
	readonly bpm: number;
	readonly spreadBpm: number;
}

/** The pulse at which comfortable talking ends for a runner, beats a minute, not rounded. */
export interface TalkCeiling extends Estimate {
	/** Four times in five it lies between these. */
	readonly lowBpm: number;
	readonly highBpm: number;
	/** It lies below this one time in five: a careful upper edge. */
	readonly carefulBpm: number;
}

/** After so many days an answer weighs half: training moves the ceiling. Our own choice, no source. */
export const HALF_LIFE_DAYS = 56;

/**
 * For: a runner's own talking pulse, learned from what they reported. Bayes on a fixed grid of the
 * ceiling, of how far above it talk breaks off, and of the runner's own scatter; talk answers as an
 * ordered probit. Own model; its start is source foster2009 (14 sedentary adults). Not checked on
 * people: `npm run bench` shows on invented runners that the sums are right, and no more.
 *
 * Order does not matter: outings are sorted by what is in them before they are added up.
 *
 * @param evidence of each outing; empty gives what is thought before the first answer
 * @throws RangeError unless the maximum is above the resting pulse
 */
export function talkCeiling(
	resting: Estimate,
	maximum: Estimate,
	evidence: readonly OutingTalk[]
): TalkCeiling {
	const grid = priorGrid(resting, maximum);
	const shares = new Float64Array(grid.ceilingsBpm.length);
	const columns = grid.gapsBpm.length;
	const logs = grid.scattersBpm.map((scatter) => logOfAll(grid, scatter, inOneOrder(evidence)));
	const highest = Math.max(...logs.map((one) => one.reduce((most, log) => Math.max(most, log))));
	for (const one of logs) {
		for (let cell = 0; cell < one.length; cell++) {
			const row = Math.floor(cell / columns);
			shares[row] = (shares[row] ?? 0) + Math.exp((one[cell] ?? -Infinity) - highest);
		}
	}
	return summary(grid.ceilingsBpm, shares);
}

function logOfAll(grid: Grid, scatterBpm: number, evidence: readonly OutingTalk[]): Float64Array {
	const { ceilingShares, gapShares } = grid;
	const logs = new Float64Array(ceilingShares.length * gapShares.length);
	const gapLogs = gapShares.map(Math.log);
	ceilingShares.forEach((share, row) => {
		const log = Math.log(share);
		for (const [column, gapLog] of gapLogs.entries()) {
			logs[row * gapLogs.length + column] = log + gapLog;
		}
	});
	for (const { daysAgo, answers } of evidence) {
		const weight = 0.5 ** (daysAgo / HALF_LIFE_DAYS);
		const likely = outingLikelihood(answers, grid, scatterBpm);
		for (let cell = 0; cell < logs.length; cell++) {
			logs[cell] = (logs[cell] ?? 0) + weight * Math.log(likely[cell] ?? 0);
		}
	}
	return logs;
}

function inOneOrder(evidence: readonly OutingTalk[]): readonly OutingTalk[] {
	const asText = (one: unknown) => JSON.stringify(one);
	const byText = (one: unknown, other: unknown) => (asText(one) < asText(other) ? -1 : 1);
	return evidence
		.map(({ daysAgo, answers }) => ({
			daysAgo,
			answers: answers.map(({ pulseBpm, talk }) => ({ pulseBpm, talk })).sort(byText)
		}))
		.sort(byText);
}

function summary(ceilingsBpm: readonly number[], shares: Float64Array): TalkCeiling {
	const total = shares.reduce((sum, share) => sum + share, 0);
	const mean = (of: (at: number) => number) =>
		ceilingsBpm.reduce((sum, at, nth) => sum + of(at) * (shares[nth] ?? 0), 0) / total;
	const bpm = mean((at) => at);
	const below = (share: number) => quantile(ceilingsBpm, shares, share * total);
	return {
		bpm,
		spreadBpm: Math.sqrt(mean((at) => (at - bpm) ** 2)),
		lowBpm: below(0.1),
		highBpm: below(0.9),
		carefulBpm: below(0.2)
	};
}

/** Each place of the grid stands for half a beat to either side. */
function quantile(ceilingsBpm: readonly number[], shares: Float64Array, sought: number): number {
	let sum = 0;
	for (const [nth, at] of ceilingsBpm.entries()) {
		const share = shares[nth] ?? 0;
		if (sum + share >= sought && share > 0) return at - 0.5 + (sought - sum) / share;
		sum += share;
	}
	return ceilingsBpm.at(-1) ?? 0;
}
