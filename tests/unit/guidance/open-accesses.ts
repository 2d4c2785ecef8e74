import fc from 'fast-check';
import type { OpenAccess } from '$lib/guidance/pulse-basis.ts';
import type { RunnerProfile } from '$lib/guidance/profile.ts';

/** An access that opens everything, to be narrowed by each test. Invented. */
export const wideOpen: OpenAccess = {
	allowed: true,
	status: 'CLEARED_ALL',
	run: true,
	ceiling: 'vigorous',
	startEffort: 'vigorous',
	pulse: { on: true, careTeamLimitBpm: null },
	reasons: [],
	coveredReasons: [],
	liftable: [],
	advice: [],
	validUntil: '2027-11-24',
	resultUntil: '2027-11-24',
	startedOn: '2026-11-25',
	ageYears: 46,
	plan: 'walkrun',
	walkOnlyByAdvice: false
};

export const measured: RunnerProfile = {
	mornings: [68],
	supervisedMaximumBpm: null,
	supervisedCapacity: null
};

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

export const anyProfile: fc.Arbitrary<RunnerProfile> = fc.record({
	mornings: fc.array(fc.integer({ min: 30, max: 110 }), { maxLength: 7 }),
	supervisedMaximumBpm: fc.option(fc.integer({ min: 100, max: 230 })),
	supervisedCapacity: fc.option(fc.integer({ min: 15, max: 75 }))
});
