import { courseOf, type Course, type NoCourse } from '../guidance/expected/course.ts';
import { guide, type Guidance } from '../guidance/guide.ts';
import { walkedMile } from '../guidance/mile-capacity.ts';
import type { RunnerProfile } from '../guidance/profile.ts';
import { emptyProfile } from '../guidance/profile.ts';
import { pulseBasis, type OpenAccess } from '../guidance/pulse-basis.ts';
import { speedCapacityOf } from '../guidance/runner-capacity.ts';
import type { CapacityBasis, SpeedCapacity } from '../physiology/capacity.ts';
import type { Access } from '../screening/access.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Signed } from './auth.ts';
import * as bandsSet from './bands-set.ts';
import { gate } from './gate.ts';
import type { House } from './open-house.ts';
import * as profiles from './profiles.ts';
import * as walks from './walks.ts';

export interface Fitness {
	readonly capacity: SpeedCapacity;
	readonly on: LocalDate | null;
}

/** What a runner may see of their own bands, and what their coaches set. */
export interface EffortBands {
	readonly access: Access;
	/** Closed guidance holds no number. */
	readonly guidance: Guidance;
	/** The fitness that speeds are worked out from, and when it was measured where that is known. */
	readonly fitness: Fitness | null;
	/** Empty with closed guidance. */
	readonly set: readonly bandsSet.BandSet[];
	/** What the expected pulse of an outing is worked out from. */
	readonly course: Course | NoCourse;
}

/**
 * A runner's own bands now.
 * @param today the runner's own date
 */
export async function of(
	house: Pick<House, 'database' | 'vault'>,
	runner: Signed | null,
	now: number,
	today: LocalDate
): Promise<EffortBands> {
	const access = await gate(house, runner, now);
	if (!access.allowed || runner === null) {
		const course = { kind: 'no-course', why: 'closed' } as const;
		return { access, guidance: guide(access, emptyProfile, []), set: [], fitness: null, course };
	}
	const kept = await profiles.load(house.database, house.vault, runner.runnerId);
	const walked = walks.daysSince(await walks.list(house.database, runner.runnerId), today);
	const set = await bandsSet.forRunner(house.database, runner.runnerId);
	const guidance = guidanceFrom(access, kept, set, walked);
	const course = courseFrom(access, kept, set, walked);
	return { access, guidance, set, fitness: fitnessOf(access, kept), course };
}

function fitnessOf(access: OpenAccess, kept: profiles.Profile): Fitness | null {
	const profile = profileFor(kept);
	const capacity = speedCapacityOf(access, profile, pulseBasis(access, profile));
	if (capacity === null) return null;
	const days: Partial<Record<CapacityBasis, LocalDate | undefined>> = {
		'mile-walk': kept.mileWalk?.on,
		'walk-check': kept.walkCheck?.on
	};
	return { capacity, on: days[capacity.basis] ?? null };
}

/** The one way from what is stored of a runner to what may be shown of it. */
export function guidanceFrom(
	access: Access,
	kept: profiles.Profile,
	set: readonly bandsSet.BandSet[],
	daysSinceEachWalk: readonly number[]
): Guidance {
	if (!access.allowed) return guide(access, emptyProfile, []);
	return guide(access, profileFor(kept), daysSinceEachWalk, set);
}

/** What the expected pulse of an outing is worked out from, by the same way. */
export function courseFrom(
	access: Access,
	kept: profiles.Profile,
	set: readonly bandsSet.BandSet[],
	daysSinceEachWalk: readonly number[]
): Course | NoCourse {
	return courseOf(access, profileFor(kept), daysSinceEachWalk, set);
}

function profileFor(kept: profiles.Profile): RunnerProfile {
	return {
		...emptyProfile,
		mornings: kept.mornings.map(({ bpm }) => bpm),
		supervisedMaximumBpm: kept.supervisedMaximumBpm,
		supervisedCapacity: kept.supervisedCapacity,
		walkCheck: kept.walkCheck?.walks ?? null,
		mileWalk: kept.mileWalk === null ? null : walkedMile(kept.mileWalk),
		questions: questionsOf(kept)
	};
}

function questionsOf(kept: profiles.Profile): RunnerProfile['questions'] {
	const { sex, heightCentimetres, weightKilograms, activityLevel } = kept;
	if (sex === null || heightCentimetres === null) return null;
	if (weightKilograms === null || activityLevel === null) return null;
	return {
		sex: sex === 'woman' ? 'female' : 'male',
		bodyMassIndex: weightKilograms / (heightCentimetres / 100) ** 2,
		activityLevel
	};
}
