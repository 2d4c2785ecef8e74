import { daysBetween, type LocalDate } from '../../calendar/local-date.ts';
import type { SameEffort } from './same-effort.ts';
import { lineThrough } from './trend.ts';

/** Fewer outings, or a shorter time, say nothing of a change. Our own choice, no source. */
export const OUTINGS_NEEDED = 5;
export const DAYS_NEEDED = 21;
/** Over so long a change is said. */
export const FOUR_WEEKS = 28;

/** A place on the line, km/h, and where it lies four times in five. */
export interface OnLine {
	readonly onDate: LocalDate;
	readonly speedKmh: number;
	readonly lowKmh: number;
	readonly highKmh: number;
}

/** How the speed at the same effort changed. Nothing is rounded. */
export type Change =
	| { readonly kind: 'too-few'; readonly outings: number }
	| { readonly kind: 'too-short'; readonly days: number }
	| {
			readonly kind: 'line';
			/** Not clear: chance alone could give it. */
			readonly way: 'faster' | 'slower' | 'not-clear';
			/** In four weeks, km/h, and between what it lies four times in five. */
			readonly changeKmh: number;
			readonly lowKmh: number;
			readonly highKmh: number;
			readonly line: readonly OnLine[];
	  };

/** @param speeds oldest first */
export function changeOf(speeds: readonly SameEffort[]): Change {
	const [first, last] = [speeds[0], speeds.at(-1)];
	if (!first || !last || speeds.length < OUTINGS_NEEDED) {
		return { kind: 'too-few', outings: speeds.length };
	}
	const days = daysBetween(first.onDate, last.onDate);
	if (days < DAYS_NEEDED) return { kind: 'too-short', days };
	const dayOf = ({ onDate }: SameEffort) => daysBetween(first.onDate, onDate);
	const trend = lineThrough(speeds.map((one) => ({ day: dayOf(one), value: one.speedKmh })));
	return {
		kind: 'line',
		way: wayOf(trend.lowPerDay, trend.highPerDay),
		changeKmh: FOUR_WEEKS * trend.perDay,
		lowKmh: FOUR_WEEKS * trend.lowPerDay,
		highKmh: FOUR_WEEKS * trend.highPerDay,
		line: speeds.map((one) => {
			const { value, give } = trend.at(dayOf(one));
			const { onDate } = one;
			return { onDate, speedKmh: value, lowKmh: value - give, highKmh: value + give };
		})
	};
}

function wayOf(low: number, high: number) {
	if (low > 0) return 'faster';
	return high < 0 ? 'slower' : 'not-clear';
}
