import type { Expected } from '$lib/guidance/expected/expected-outing.ts';
import { fitsOf, type FitsOf } from '$lib/guidance/expected/fits-of.ts';
import { intensities } from '$lib/physiology/intensity-axes.ts';
import { minutesAndSeconds } from '$words/dates.ts';
import type { outingPicture } from '$words/outing-picture.ts';
import type { Scale } from './drawn.ts';

/** The same things said to a runner of themselves, or to a coach of a runner. */
type SentenceWords = (typeof outingPicture)['said'];

/** Peak, mean, longest run in band, shortest recovery, and the time in each class of intensity. */
export function expectedSentences(
	{ peak, mean, phases, secondsByIntensity }: Expected,
	{ rest, maximum }: Scale,
	words: SentenceWords
): readonly string[] {
	const level = (share: number) => Math.round(rest + share * (maximum - rest));
	const spread = (share: number) => Math.round(share * (maximum - rest));
	const { longestRun, shortestRecovery, isOverTop } = fitsOf(phases);
	const times = intensities
		.map((name) => ({ name, seconds: Math.round(secondsByIntensity[name]) }))
		.filter(({ seconds }) => seconds > 0);
	return [
		words.peak(level(peak.share), spread(peak.spreadShare), minutesAndSeconds(peak.seconds)),
		words.mean(level(mean.share), spread(mean.spreadShare)),
		words.intensity(times),
		...(longestRun === null ? [] : [longest(longestRun, words)]),
		...(shortestRecovery === null ? [] : [shortest(shortestRecovery, words)]),
		...(isOverTop ? [words.overTop] : [])
	];
}

/** Whole steps of 5 s, to the careful side; under one step there is none. */
const STEP_SECONDS = 5;

function longest(run: NonNullable<FitsOf['longestRun']>, words: SentenceWords): string {
	switch (run.kind) {
		case 'no-limit':
			return words.longest['no-limit'];
		case 'none':
			return words.longest.none;
		case 'seconds': {
			const seconds = Math.floor(run.seconds / STEP_SECONDS + 1e-9) * STEP_SECONDS;
			return seconds > 0 ? words.longest.seconds(seconds) : words.longest.none;
		}
	}
}

function shortest(recovery: NonNullable<FitsOf['shortestRecovery']>, words: SentenceWords): string {
	if (recovery.kind === 'never') return words.recovery.never;
	const seconds = Math.ceil(recovery.seconds / STEP_SECONDS - 1e-9) * STEP_SECONDS;
	return seconds > 0 ? words.recovery.seconds(seconds) : words.recovery.ready;
}
