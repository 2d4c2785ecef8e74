import { placeWord, pathOf } from './field-name.ts';
import { phaseAt, writtenPlaces } from './edit/place.ts';
import type { OutingIssue } from './outing-issues.ts';
import { phasesOf, type Outing } from './outing.ts';
import { shortenRuns } from './shorten-runs.ts';

/**
 * Each run that is longer than its author's may be for now, a repeated one once.
 *
 * @example runsTooLong({ name: '', parts: [] }, 30) // []
 */
export function runsTooLong(outing: Outing, longestSeconds: number): readonly OutingIssue[] {
	const short = phasesOf(shortenRuns(outing, longestSeconds));
	const tooLong = writtenPlaces(outing).filter((place, index) => {
		const { kind, seconds } = phaseAt(outing, place);
		const own = short[index];
		return kind === 'steady-run' && (own?.kind !== kind || own.seconds !== seconds);
	});
	const once = new Map(tooLong.map((place) => [placeWord(place), place]));
	return [...once.values()].map((place) => ({
		code: 'run-too-long-yet',
		path: [...pathOf(place), 'seconds']
	}));
}
