import { MILE_WALK_AGE_YEARS } from '../physiology/mile-walk.ts';
import type { OpenAccess, PulseBasis } from './pulse-basis.ts';

/** Whether somebody may do the mile walk now, and why not. */
export type MileWalkOpen =
	'open' | 'pulse-off' | 'not-for-now' | 'care-team-limit' | 'outside-study';

/**
 * A mile as fast as one can walk is hard effort: only for whoever may run, and is used to hard effort
 * by the questions (start level vigorous). Not under a limit from a care team, which nobody keeps at
 * full speed, and not outside the ages that were measured. The walk check is there for everybody else.
 */
export function mileWalkOpen(access: OpenAccess, basis: PulseBasis): MileWalkOpen {
	if (basis.kind === 'off') return 'pulse-off';
	const isHardOpen = access.ceiling === 'vigorous' && access.startEffort === 'vigorous';
	if (!access.run || !isHardOpen) return 'not-for-now';
	if (access.pulse.careTeamLimitBpm !== null) return 'care-team-limit';
	const { low, high } = MILE_WALK_AGE_YEARS;
	return access.ageYears < low || access.ageYears > high ? 'outside-study' : 'open';
}
