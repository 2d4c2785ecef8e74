import fc from 'fast-check';
import type { WalkedMile } from '$lib/guidance/mile-capacity.ts';
import type { WalkStage } from '$lib/physiology/walk-check.ts';
import type { OpenAccess } from '$lib/guidance/pulse-basis.ts';
import { emptyProfile, type RunnerProfile } from '$lib/guidance/profile.ts';
import { wideOpen } from './wide-open.ts';

export { wideOpen };

export const measured: RunnerProfile = { ...emptyProfile, mornings: [68] };

/** Every kind of open access, and every kind of profile. */
export const anyAccess: fc.Arbitrary<OpenAccess> = fc
	.record({
		ageYears: fc.integer({ min: 18, max: 110 }),
		walkOnly: fc.boolean(),
		startsModerate: fc.boolean(),
		pulseOn: fc.boolean(),
		careTeamLimitBpm: fc.option(fc.integer({ min: 60, max: 190 }))
	})
	.map(({ ageYears, walkOnly, startsModerate, pulseOn, careTeamLimitBpm }) => ({
		...wideOpen,
		ageYears,
		status: walkOnly ? 'CLEARED_WALK' : 'CLEARED_ALL',
		run: !walkOnly,
		ceiling: walkOnly ? 'moderate' : 'vigorous',
		startEffort: walkOnly || startsModerate ? 'moderate' : 'vigorous',
		pulse: pulseOn
			? { on: true, careTeamLimitBpm }
			: { on: false, reasons: ['H-MEDS'], careTeamLimitBpm }
	}));

const anyMileWalk: fc.Arbitrary<WalkedMile> = fc.record({
	weightKilograms: fc.integer({ min: 45, max: 120 }),
	sex: fc.constantFrom('female' as const, 'male' as const, 'not-said' as const),
	minutes: fc.integer({ min: 11, max: 22 }),
	pulseBpm: fc.integer({ min: 90, max: 170 })
});

/** Three walks, each faster and with a higher pulse than the one before. */
const anyWalkCheck: fc.Arbitrary<readonly WalkStage[]> = fc
	.record({ first: fc.integer({ min: 80, max: 110 }), rise: fc.integer({ min: 4, max: 20 }) })
	.map(({ first, rise }) =>
		[60, 80, 100].map((speedMetresPerMinute, nth) => ({
			speedMetresPerMinute,
			grade: 0,
			pulseBpm: first + nth * rise
		}))
	);

export const anyProfile: fc.Arbitrary<RunnerProfile> = fc.record({
	mornings: fc.array(fc.integer({ min: 30, max: 110 }), { maxLength: 7 }),
	supervisedMaximumBpm: fc.option(fc.integer({ min: 100, max: 230 })),
	supervisedCapacity: fc.option(fc.integer({ min: 15, max: 75 })),
	walkCheck: fc.option(anyWalkCheck),
	mileWalk: fc.option(anyMileWalk),
	questions: fc.option(
		fc.record({
			sex: fc.constantFrom('female' as const, 'male' as const),
			bodyMassIndex: fc.integer({ min: 18, max: 40 }),
			activityLevel: fc.integer({ min: 0, max: 7 })
		})
	)
});
