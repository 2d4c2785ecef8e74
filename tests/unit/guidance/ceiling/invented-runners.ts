import type { OutingTalk } from '$lib/guidance/ceiling/evidence.ts';

/*
 * Runners drawn from what the model takes for granted, with their talk answers. Invented, and seeded:
 * the same number of runners is the same runners every time. They show that the sums are right; what
 * people are like they cannot show.
 */

export const resting = { bpm: 70, spreadBpm: 3 };
export const maximum = { bpm: 176, spreadBpm: 11.4 };

export interface Invented {
	readonly ceilingBpm: number;
	readonly evidence: readonly OutingTalk[];
}

/** @param offBpm how far the truth lies from where the model would draw it */
export function inventedRunner(seed: number, daysApart: number, offBpm = 0): Invented {
	const chance = mulberry32(seed);
	const normal = (mean: number, spread: number) => mean + spread * boxMuller(chance);
	const truth = {
		resting: normal(resting.bpm, resting.spreadBpm),
		maximum: normal(maximum.bpm, maximum.spreadBpm),
		share: normal(0.7, 0.14)
	};
	const ceilingBpm = truth.resting + truth.share * (truth.maximum - truth.resting) + offBpm;
	let gap = normal(20, 10);
	while (gap < 2) gap = normal(20, 10);
	const scatter = 3 * 5 ** chance();
	const evidence = Array.from({ length: 6 }, (_, outing) => {
		const shift = normal(0, 5);
		const answers = Array.from({ length: 2 }, () => {
			// From an easy walk to a run that is too hard, as bands from age would lead somebody.
			const pulseBpm = Math.round(70 + (0.45 + 0.45 * chance()) * 106);
			const talk = answer(chance, pulseBpm - ceilingBpm - shift, gap, scatter);
			return { pulseBpm, talk };
		});
		return { daysAgo: (5 - outing) * daysApart, answers };
	});
	return { ceilingBpm, evidence };
}

function answer(chance: () => number, aboveBpm: number, gap: number, scatter: number) {
	const levels = ['comfortable', 'with-breaths', 'broke-off'] as const;
	if (chance() < 0.03) return levels[Math.floor(3 * chance())] ?? 'with-breaths';
	const felt = aboveBpm + scatter * boxMuller(chance);
	if (felt <= 0) return 'comfortable';
	return felt <= gap ? 'with-breaths' : 'broke-off';
}

/** Source: Box and Muller 1958, Annals of Mathematical Statistics 29:610-611; from memory. */
const boxMuller = (chance: () => number) =>
	Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());

/** A small generator in the public domain, so that every run draws the same; from memory. */
function mulberry32(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
}

export interface Proof {
	readonly runners: number;
	/** Root mean square error of the mean, and of what was thought before the first answer. */
	readonly errorBpm: number;
	readonly priorErrorBpm: number;
	/** How often the truth lay in the interval that should hold it four times in five. */
	readonly held: number;
}

type Estimate = { readonly bpm: number; readonly spreadBpm: number };
type Learn = (
	resting: Estimate,
	maximum: Estimate,
	evidence: readonly OutingTalk[]
) => { readonly bpm: number; readonly lowBpm: number; readonly highBpm: number };

/** Learns the ceiling of so many runners, and compares it with their true one. */
export function prove(
	learn: Learn,
	runners: number,
	{ daysApart, offBpm = 0 }: { readonly daysApart: number; readonly offBpm?: number }
): Proof {
	const before = learn(resting, maximum, []).bpm;
	let [squares, priorSquares, held] = [0, 0, 0];
	for (let seed = 1; seed <= runners; seed++) {
		const { ceilingBpm, evidence } = inventedRunner(seed, daysApart, offBpm);
		const { bpm, lowBpm, highBpm } = learn(resting, maximum, evidence);
		squares += (bpm - ceilingBpm) ** 2;
		priorSquares += (before - ceilingBpm) ** 2;
		held += ceilingBpm >= lowBpm && ceilingBpm <= highBpm ? 1 : 0;
	}
	return {
		runners,
		errorBpm: Math.sqrt(squares / runners),
		priorErrorBpm: Math.sqrt(priorSquares / runners),
		held: held / runners
	};
}
