import type { Course, NoCourse } from '$lib/guidance/expected/course.ts';
import type { PulseBasis } from '$lib/guidance/pulse-basis.ts';

/** What a runner's own picture of an outing is worked out from. */
export type OwnPicture =
	| {
			readonly kind: 'drawn';
			readonly course: Course;
			readonly restingBpm: number;
			readonly maximumBpm: number;
	  }
	/** With pulse off there is no beat and no curve on the page. */
	| { readonly kind: 'none'; readonly why: NoCourse['why'] };

export function ownPictureOf(rules: {
	readonly course: Course | NoCourse;
	readonly pulse: PulseBasis;
}): OwnPicture {
	const { course, pulse } = rules;
	if (course.kind === 'no-course') return { kind: 'none', why: course.why };
	if (pulse.kind !== 'on') return { kind: 'none', why: 'pulse-off' };
	const [restingBpm, maximumBpm] = [pulse.resting.bpm, pulse.maximum.bpm];
	return { kind: 'drawn', course, restingBpm, maximumBpm };
}
