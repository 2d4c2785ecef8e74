import { limits } from '../physiology/limits.ts';
import { ageMaximum, testedMaximum, type Maximum } from '../physiology/maximum.ts';
import type { Resting } from '../physiology/reserve.ts';
import { meanOfMornings, restingFromMornings } from '../physiology/resting.ts';
import type { Access } from '../screening/access.ts';
import type { RunnerProfile } from './profile.ts';

export type OpenAccess = Extract<Access, { allowed: true }>;

type PulseProfile = Pick<RunnerProfile, 'mornings' | 'supervisedMaximumBpm'>;

/** Whether this person may see beats a minute, and what they are reckoned from. */
export type PulseBasis =
	| {
			readonly kind: 'off';
			/** Rule ids. The runner reads them; nobody else does. */
			readonly reasons: readonly string[];
			/** The only pulse that may be shown while pulse is off. */
			readonly careTeamLimitBpm: number | null;
	  }
	| {
			readonly kind: 'not-yet';
			readonly why: 'not-known' | 'measure-again';
			/** It counts from the day on which it was given, whatever else is known. */
			readonly careTeamLimitBpm: number | null;
	  }
	| {
			readonly kind: 'on';
			readonly resting: Resting;
			readonly maximum: Maximum;
			readonly careTeamLimitBpm: number | null;
	  };

/**
 * Screening decides first, the resting pulse second. A maximum from a supervised test replaces the
 * one predicted from age.
 */
export function pulseBasis(access: OpenAccess, profile: PulseProfile): PulseBasis {
	if (!access.pulse.on) return { kind: 'off', ...offFor(access.pulse) };
	const { careTeamLimitBpm } = access.pulse;
	const resting = restingFromMornings(profile.mornings);
	switch (resting.kind) {
		case 'ask-first':
			// A doctor or nurse looked at it: then this pulse is the runner's own.
			return access.coveredReasons.includes('H-REST')
				? withMaximum(meanOfMornings(profile.mornings), access, profile)
				: { kind: 'off', reasons: ['H-REST'], careTeamLimitBpm };
		case 'not-known':
		case 'measure-again':
			return { kind: 'not-yet', why: resting.kind, careTeamLimitBpm };
		case 'known':
			return withMaximum(resting.resting, access, profile);
	}
}

function offFor(pulse: { reasons: readonly string[]; careTeamLimitBpm: number | null }) {
	return { reasons: pulse.reasons, careTeamLimitBpm: pulse.careTeamLimitBpm };
}

function withMaximum(resting: Resting, access: OpenAccess, profile: PulseProfile): PulseBasis {
	const maximum = maximumOf(access, profile);
	const { careTeamLimitBpm } = access.pulse;
	const reserveBpm = maximum.bpm - resting.bpm;
	return reserveBpm < limits.reserveBpm.plausible.low
		? { kind: 'not-yet', why: 'measure-again', careTeamLimitBpm }
		: { kind: 'on', resting, maximum, careTeamLimitBpm };
}

/** The maximum of a supervised test, or else the one predicted from age. */
export function maximumOf(
	{ ageYears }: Pick<OpenAccess, 'ageYears'>,
	{ supervisedMaximumBpm }: Pick<RunnerProfile, 'supervisedMaximumBpm'>
): Maximum {
	return supervisedMaximumBpm === null ? ageMaximum(ageYears) : testedMaximum(supervisedMaximumBpm);
}
