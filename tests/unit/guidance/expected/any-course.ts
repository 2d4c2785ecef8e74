import fc from 'fast-check';
import { courseOf, type Course } from '$lib/guidance/expected/course.ts';
import { emptyProfile, type RunnerProfile } from '$lib/guidance/profile.ts';
import type { OpenAccess } from '$lib/guidance/pulse-basis.ts';
import { anyAccess, anyProfile, wideOpen } from '../open-accesses.ts';
import { anyEntries } from '../any-setting.ts';

/** Rest 70, maximum 180 from a supervised test: a reserve of 110. Capacity as given. */
export function profileWith(supervisedCapacity: number | null): RunnerProfile {
	return { ...emptyProfile, mornings: [70], supervisedMaximumBpm: 180, supervisedCapacity };
}

export function courseWith(
	supervisedCapacity: number | null,
	access: Partial<OpenAccess> = {},
	daysSinceEachWalk: readonly number[] = []
): Course {
	const profile = profileWith(supervisedCapacity);
	const course = courseOf({ ...wideOpen, ...access }, profile, daysSinceEachWalk);
	if (course.kind !== 'course') throw new Error(course.why);
	return course;
}

/**
 * Every course that there can be, but for how long runs may last: what holds of a phase would not
 * hold where its length is another one. Runs that are cut have a law of their own.
 */
export const anyCourse: fc.Arbitrary<Course> = fc
	.record({
		access: anyAccess,
		profile: anyProfile,
		walks: fc.array(fc.nat({ max: 90 }), { maxLength: 12 }),
		set: anyEntries
	})
	.map(({ access, profile, walks, set }) => courseOf(access, profile, walks, set))
	.filter((course): course is Course => course.kind === 'course')
	.map((course) => ({ ...course, longestRunSeconds: null }));
