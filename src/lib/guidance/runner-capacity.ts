import {
	measuredCapacity,
	type Capacity,
	type CapacityAnswer,
	type SpeedCapacity
} from '../physiology/capacity.ts';
import { jacksonCapacity } from '../physiology/questions-capacity.ts';
import { walkCheck } from '../physiology/walk-check.ts';
import { mileCapacity } from './mile-capacity.ts';
import type { RunnerProfile } from './profile.ts';
import { maximumOf, type OpenAccess, type PulseBasis } from './pulse-basis.ts';

/**
 * The surest capacity from which a speed may be set: measured, then the mile walk, then the walk
 * check. The last two read the pulse, so with pulse off neither counts. Null where none is known.
 */
export function speedCapacityOf(
	access: OpenAccess,
	profile: RunnerProfile,
	basis: PulseBasis
): SpeedCapacity | null {
	const { supervisedCapacity, mileWalk: mile, walkCheck: stages } = profile;
	const measured = supervisedCapacity === null ? null : known(measuredCapacity(supervisedCapacity));
	if (measured !== null || basis.kind === 'off') return measured;
	const fromMile = mile === null ? null : known(mileCapacity(mile, access.ageYears));
	if (fromMile !== null || stages === null) return fromMile;
	return known(walkCheck(stages, maximumOf(access, profile)));
}

/** The surest capacity for an expected curve: where nothing better is known, that from questions. */
export function curveCapacityOf(
	access: OpenAccess,
	profile: RunnerProfile,
	basis: PulseBasis
): Capacity | null {
	const forSpeed = speedCapacityOf(access, profile, basis);
	if (forSpeed !== null || profile.questions === null) return forSpeed;
	return known(jacksonCapacity({ ...profile.questions, ageYears: access.ageYears }));
}

function known<Kind extends Capacity>(answer: CapacityAnswer<Kind>): Kind | null {
	return answer.kind === 'capacity' ? answer.capacity : null;
}
