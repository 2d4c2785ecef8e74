import type { AccessCode, AdviceRole, AdviceScope, ClinicalStatus } from '$lib/screening/types.ts';

/*
 * Date and advice cases of the gate. This project's own, written before the code. Basis:
 *
 * - A completed form counts for at most twelve months and lapses when health changes: Warburton DER
 *   and others, Consensus Document 2011, Appl Physiol Nutr Metab 2011;36(S1):S266-S298. Secondary.
 * - Clearance counts when given in the last twelve months without new signs: Riebe D and others,
 *   Med Sci Sports Exerc 2015;47(11):2473-2479. Secondary.
 * - Local calendar dates, 29 February kept as 28 in a common year, a clock set back closes, who may
 *   cover what: common practice, no source.
 */

export interface AccessCase {
	readonly title: string;
	readonly result: {
		readonly status: ClinicalStatus;
		readonly reasons: readonly string[];
		readonly completedOn: string;
		readonly timeZone: string;
		readonly major: number;
		readonly invalidated: boolean;
		readonly consent: boolean;
	} | null;
	readonly advice: {
		readonly givenOn: string;
		readonly covers: readonly string[];
		readonly scope: AdviceScope;
		readonly role: AdviceRole;
	} | null;
	/** ISO 8601 in UTC. */
	readonly now: string;
	readonly currentMajor: number;
	readonly illToday: boolean;
	readonly expected: { readonly code: AccessCode; readonly allowed: boolean };
}

export const accessCases: readonly AccessCase[] = [
	{
		title: 'no record',
		result: null,
		advice: null,
		now: '2026-11-24T10:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'NO_RESULT', allowed: false }
	},
	{
		title: 'same day',
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: null,
		now: '2026-11-24T10:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'CLEARED_ALL', allowed: true }
	},
	{
		title: 'last valid day, late evening local',
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: null,
		now: '2027-11-23T23:30:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'CLEARED_ALL', allowed: true }
	},
	{
		title: 'anniversary day',
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: null,
		now: '2027-11-24T00:30:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'EXPIRED', allowed: false }
	},
	{
		title: 'UTC already next day but local still last valid day (Los Angeles)',
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2026-11-24',
			timeZone: 'America/Los_Angeles',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: null,
		now: '2027-11-24T05:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'CLEARED_ALL', allowed: true }
	},
	{
		title: '29 Feb screen: 27 Feb next year valid',
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2028-02-29',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: null,
		now: '2029-02-27T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'CLEARED_ALL', allowed: true }
	},
	{
		title: 'device clock set back before the screen',
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: null,
		now: '2026-11-20T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'EXPIRED', allowed: false }
	},
	{
		title: 'rule set major changed',
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 0,
			invalidated: false,
			consent: true
		},
		advice: null,
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'RESCREEN', allowed: false }
	},
	{
		title: 'health change declared',
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: true,
			consent: true
		},
		advice: null,
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'RESCREEN', allowed: false }
	},
	{
		title: 'consent withdrawn',
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: false
		},
		advice: null,
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'NO_RESULT', allowed: false }
	},
	{
		title: 'seek advice, no advice',
		result: {
			status: 'SEEK_ADVICE',
			reasons: ['R-JOINT'],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: null,
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'SEEK_ADVICE', allowed: false }
	},
	{
		title: 'advice covers all, walk only',
		result: {
			status: 'SEEK_ADVICE',
			reasons: ['R-JOINT'],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: { givenOn: '2026-11-28', covers: ['R-JOINT'], scope: 'walk', role: 'doctor' },
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'CLEARED_WALK', allowed: true }
	},
	{
		title: 'advice covers one of two reasons',
		result: {
			status: 'SEEK_ADVICE',
			reasons: ['R-JOINT', 'R-BP-HIGH'],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: { givenOn: '2026-11-28', covers: ['R-JOINT'], scope: 'all', role: 'doctor' },
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'SEEK_ADVICE', allowed: false }
	},
	{
		title: 'older advice for a known condition, within 12 months',
		result: {
			status: 'CLEARED_WALK',
			reasons: ['R-CMR-ACTIVE'],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: { givenOn: '2026-08-01', covers: ['R-CMR-ACTIVE'], scope: 'walkrun', role: 'doctor' },
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'CLEARED_ALL', allowed: true }
	},
	{
		title: 'advice dated in the future',
		result: {
			status: 'SEEK_ADVICE',
			reasons: ['R-JOINT'],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: { givenOn: '2027-01-01', covers: ['R-JOINT'], scope: 'all', role: 'doctor' },
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'SEEK_ADVICE', allowed: false }
	},
	{
		title: 'advice cannot lift WAIT',
		result: {
			status: 'WAIT',
			reasons: ['R-ILL'],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: { givenOn: '2026-11-28', covers: ['R-ILL'], scope: 'all', role: 'doctor' },
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: false,
		expected: { code: 'WAIT', allowed: false }
	},
	{
		title: "cleared, but ill at today's check-in",
		result: {
			status: 'CLEARED_ALL',
			reasons: [],
			completedOn: '2026-11-24',
			timeZone: 'Europe/Dublin',
			major: 1,
			invalidated: false,
			consent: true
		},
		advice: null,
		now: '2026-12-01T12:00:00+00:00',
		currentMajor: 1,
		illToday: true,
		expected: { code: 'WAIT', allowed: false }
	}
];
