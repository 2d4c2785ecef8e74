import fc from 'fast-check';
import {
	LOWEST_FRACTION,
	NARROWEST_FRACTION,
	type BandSetting
} from '$lib/guidance/band-setting.ts';
import type { SetBand } from '$lib/guidance/settings-in-force.ts';
import { phaseKinds } from '$lib/outing/phase.ts';

const percent = (low: number, high: number) =>
	fc.integer({ min: low, max: high }).map((whole) => whole / 100);

/** Every band that can be set, the far too hard ones too. */
export const anySetting: fc.Arbitrary<BandSetting> = fc
	.record({
		low: fc.option(percent(LOWEST_FRACTION * 100, 95)),
		width: percent(NARROWEST_FRACTION * 100, 80),
		efforts: fc.tuple(fc.integer({ min: 1, max: 10 }), fc.integer({ min: 1, max: 10 }))
	})
	.map(({ low, width, efforts }) => ({
		lowFraction: low,
		highFraction: Math.min(1, Math.round(((low ?? LOWEST_FRACTION) + width) * 100) / 100),
		effortLow: Math.min(...efforts),
		effortHigh: Math.max(...efforts)
	}));

/** What up to three groups set over time, for one runner and for all of theirs. */
export const anyEntries: fc.Arbitrary<readonly SetBand[]> = fc.array(
	fc.record({
		groupId: fc.constantFrom('lantern', 'harbour', 'mill'),
		phase: fc.constantFrom(...phaseKinds),
		by: fc.constantFrom('coach' as const, 'group' as const),
		setting: fc.option(anySetting),
		setAt: fc.integer({ min: 0, max: 5 })
	}),
	{ maxLength: 12 }
);
