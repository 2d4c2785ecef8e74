import type { OpenAccess } from '$lib/guidance/pulse-basis.ts';

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
	walkOnlyByAdvice: false,
	walkOnlyByPain: false
};
