import type { PulseShares } from '$lib/guidance/pulse-shares.ts';
import { intensities, intensityRange } from '$lib/physiology/intensity.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';

/** The band of a swell, in beats a minute. A null low edge means "anything under". */
export interface SwellBand {
	readonly lowBpm: number | null;
	readonly highBpm: number;
	readonly lowSpreadBpm: number | null;
	readonly highSpreadBpm: number;
}

export interface Wedge {
	readonly shades: readonly { readonly name: string; readonly points: string }[];
	readonly hatches: readonly string[];
	readonly gap: string;
	/** Where the ink edges stand, 0 to WIDTH. */
	readonly edges: readonly number[];
}

const WIDTH = 1000;
const MIDDLE = 68;
const THIN = 6;
const THICK = 58;

/** The classes of intensity along the reserve, 0 to 1. */
const CLASSES = intensities.map((name) => {
	const { from, below } = intensityRange('reservePercent', name);
	return { name, from: (from ?? 0) / 100, to: (below ?? 100) / 100 };
});

const halfThickness = (fraction: number) => THIN + (THICK - THIN) * fraction;
const at = (fraction: number) => Math.round(fraction * WIDTH * 10) / 10;
const clamp = (fraction: number) => Math.min(1, Math.max(0, fraction));

function slice(from: number, to: number): string {
	const corner = (fraction: number, side: 1 | -1) =>
		`${at(fraction)},${roundHalfUp(MIDDLE + side * halfThickness(fraction), 1)}`;
	return [corner(from, -1), corner(to, -1), corner(to, 1), corner(from, 1)].join(' ');
}

/** A band in beats as shares of the way from resting to maximum. */
export function sharesOf(band: SwellBand, restingBpm: number, maximumBpm: number): PulseShares {
	const { lowBpm, highBpm, lowSpreadBpm, highSpreadBpm } = band;
	const reserveBpm = maximumBpm - restingBpm;
	return {
		low: lowBpm === null ? null : (lowBpm - restingBpm) / reserveBpm,
		high: (highBpm - restingBpm) / reserveBpm,
		lowSpread: lowSpreadBpm === null ? null : lowSpreadBpm / reserveBpm,
		highSpread: highSpreadBpm / reserveBpm
	};
}

/** Everything a swell draws, as points in a box of 1000 by 136. */
export function wedge({ low, high, lowSpread, highSpread }: PulseShares): Wedge {
	const from = clamp(low ?? 0);
	const to = clamp(high);
	const hatches: string[] = [slice(to, clamp(high + highSpread))];
	if (low !== null && lowSpread !== null) hatches.push(slice(clamp(low - lowSpread), from));
	return {
		shades: CLASSES.map((one) => ({ name: one.name, points: slice(one.from, one.to) })),
		hatches,
		gap: slice(from, to),
		edges: [at(from), at(to)]
	};
}
