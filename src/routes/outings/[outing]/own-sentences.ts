import type { Scale } from '$lib/components/outing-editor/drawn.ts';
import type { Expected } from '$lib/guidance/expected/expected-outing.ts';
import type { FitsOf } from '$lib/guidance/expected/fits-of.ts';
import { minutesAndSeconds } from '$words/dates.ts';
import { ownPicture as words } from '$words/own-picture.ts';

/** What a runner's own picture says: peak, mean, the longest run in band, the shortest recovery. */
export function ownSentences(
	{ peak, mean }: Pick<Expected, 'peak' | 'mean'>,
	fits: FitsOf,
	{ rest, maximum }: Scale
): readonly string[] {
	const beats = (share: number) => Math.round(rest + share * (maximum - rest));
	const spread = (share: number) => Math.round(share * (maximum - rest));
	return [
		words.peak(beats(peak.share), spread(peak.spreadShare), minutesAndSeconds(peak.seconds)),
		words.mean(beats(mean.share), spread(mean.spreadShare)),
		...(fits.longestRun === null ? [] : [longest(fits.longestRun)]),
		...(fits.shortestRecovery === null ? [] : [shortest(fits.shortestRecovery)]),
		...(fits.isOverTop ? [words.overTop] : [])
	];
}

/** Whole steps of 5 s, to the careful side; under one step there is none. */
const STEP_SECONDS = 5;

function longest(run: NonNullable<FitsOf['longestRun']>): string {
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

function shortest(recovery: NonNullable<FitsOf['shortestRecovery']>): string {
	if (recovery.kind === 'never') return words.recovery.never;
	const seconds = Math.ceil(recovery.seconds / STEP_SECONDS - 1e-9) * STEP_SECONDS;
	return seconds > 0 ? words.recovery.seconds(seconds) : words.recovery.ready;
}
