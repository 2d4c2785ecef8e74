import { withinPlausible, withinValid } from './limits.ts';
import type { Resting } from './reserve.ts';

/** One standard deviation of a resting pulse from morning to morning (5 to 6 % of about 56 bpm). */
export const MORNING_SPREAD_BPM = 3;

/** Older mornings than these say little about today. Our own choice, no source. */
export const MORNINGS_KEPT = 7;

export type RestingAnswer =
	| { readonly kind: 'known'; readonly resting: Resting }
	/** The newest morning lies outside 40 to 100: it may be a miscount. */
	| { readonly kind: 'measure-again' }
	/** Two mornings lie outside 40 to 100: no number comes from a pulse until a doctor has been asked. */
	| { readonly kind: 'ask-first' }
	| { readonly kind: 'not-known' };

/**
 * Resting pulse from pulses counted on waking. For: the lower end of the reserve.
 *
 * The mean of the last one to seven mornings, with a spread of 3 bpm over the square root of their
 * number. A morning outside 40 to 100 bpm is measured again before anything is worked out; once a
 * later morning lies inside it is taken for a miscount and left out. A second one is not a miscount.
 * Source: restingEcg2025 for the spread (10 adults, between-day variation 5 to 6 %); limits by
 * clinical convention, from memory. Counted after five quiet minutes: most people's pulse has
 * settled after four (speed2023, 433 healthy adults). Not valid after caffeine, in a fever, or with
 * medicines that slow the heart. Typical error 3 bpm with one morning, 1.7 with three.
 *
 * @param mornings beats a minute, oldest first; only the last seven count
 * @throws RangeError for a pulse outside 30 to 110, which a form should have asked about again
 * @example restingFromMornings([66, 64, 70]) // { kind: 'known', resting: { bpm: 66.6667, spreadBpm: 1.7321, mornings: 3 } }
 * @example restingFromMornings([66, 104]).kind // 'measure-again'
 */
export function restingFromMornings(mornings: readonly number[]): RestingAnswer {
	if (!mornings.every((bpm) => withinPlausible('restingBpm', bpm))) {
		throw new RangeError('restingFromMornings requires pulses from 30 to 110 bpm');
	}
	const recent = mornings.slice(-MORNINGS_KEPT);
	const newest = recent.at(-1);
	if (newest === undefined) return { kind: 'not-known' };
	const inside = recent.filter((bpm) => withinValid('restingBpm', bpm));
	const outside = recent.length - inside.length;
	if (outside >= 2) return { kind: 'ask-first' };
	if (!withinValid('restingBpm', newest)) return { kind: 'measure-again' };
	return { kind: 'known', resting: meanOfMornings(inside) };
}

/**
 * The plain mean of mornings, whatever their limits: for a runner whose doctor or nurse said that a
 * pulse outside 40 to 100 is usual for them. Spread as in restingFromMornings.
 *
 * @param mornings beats a minute, oldest first; only the last seven count
 * @throws RangeError without a morning
 * @example meanOfMornings([104, 102]).bpm // 103
 */
export function meanOfMornings(mornings: readonly number[]): Resting {
	const recent = mornings.slice(-MORNINGS_KEPT);
	if (recent.length === 0) throw new RangeError('meanOfMornings requires a morning');
	return {
		bpm: recent.reduce((total, bpm) => total + bpm, 0) / recent.length,
		spreadBpm: MORNING_SPREAD_BPM / Math.sqrt(recent.length),
		mornings: recent.length
	};
}
