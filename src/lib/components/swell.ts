import { intensities, intensityRange } from '$lib/physiology/intensity.ts';

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
		`${at(fraction)},${(MIDDLE + side * halfThickness(fraction)).toFixed(1)}`;
	return [corner(from, -1), corner(to, -1), corner(to, 1), corner(from, 1)].join(' ');
}

/** Everything a swell draws, as points in a box of 1000 by 136. */
export function wedge(band: SwellBand, restingBpm: number, maximumBpm: number): Wedge {
	const share = (bpm: number) => clamp((bpm - restingBpm) / (maximumBpm - restingBpm));
	const low = band.lowBpm === null ? 0 : share(band.lowBpm);
	const high = share(band.highBpm);
	const hatches: string[] = [slice(high, share(band.highBpm + band.highSpreadBpm))];
	if (band.lowBpm !== null && band.lowSpreadBpm !== null) {
		hatches.push(slice(share(band.lowBpm - band.lowSpreadBpm), low));
	}
	return {
		shades: CLASSES.map(({ name, from, to }) => ({ name, points: slice(from, to) })),
		hatches,
		gap: slice(low, high),
		edges: [at(low), at(high)]
	};
}
