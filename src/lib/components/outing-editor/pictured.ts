import type { Course, NoCourse } from '$lib/guidance/expected/course.ts';
import { expectedOuting, type Expected } from '$lib/guidance/expected/expected-outing.ts';
import type { GroupOuting } from '$lib/guidance/expected/group-outing.ts';
import { phasesOf, type Outing } from '$lib/outing/outing.ts';
import {
	drawnOfExpected,
	drawnOfGroup,
	OF_RUNNER_SECONDS,
	percentOfReserve,
	type Drawn
} from './drawn.ts';

/** What a coach's picture of an outing shows: one answer, whoever it is of. */
export type Pictured =
	/** There is no phase yet. */
	| { readonly kind: 'empty' }
	/** Nobody of the group, or not this runner, has a pulse that can be drawn. */
	| { readonly kind: 'nobody' }
	| { readonly kind: 'not-this-runner' }
	/** A run asks more than can be reckoned with: of all who could be drawn, or of this runner. */
	| { readonly kind: 'too-much-for-all'; readonly runners: number }
	| { readonly kind: 'too-much-for-this-runner' }
	| {
			readonly kind: 'group';
			readonly drawn: Drawn;
			/** Who could be drawn, and for how many of them a run asks too much. */
			readonly runners: number;
			readonly tooMuch: number;
	  }
	| { readonly kind: 'runner'; readonly drawn: Drawn; readonly expected: Expected };

/** The picture, and what does not fit some of the group, whoever the picture is of. */
export function pictured(
	courses: readonly (Course | NoCourse)[],
	runner: Course | NoCourse | null,
	outing: Outing
): { readonly pictured: Pictured; readonly changes: GroupOuting['changes'] } {
	if (phasesOf(outing).length === 0) return { pictured: { kind: 'empty' }, changes: [] };
	const { drawn, group } = drawnOfGroup(courses, outing);
	const ofOne = runner && ofRunner(runner, outing);
	return { pictured: ofOne ?? ofGroup(drawn, group), changes: group.changes };
}

function ofGroup(drawn: Drawn, group: GroupOuting): Pictured {
	const tooMuch = group.notDrawn['over-reserve'];
	const runners = group.drawn + tooMuch;
	if (runners === 0) return { kind: 'nobody' };
	if (group.drawn === 0) return { kind: 'too-much-for-all', runners };
	return { kind: 'group', drawn, runners, tooMuch };
}

function ofRunner(course: Course | NoCourse, outing: Outing): Pictured {
	const expected = expectedOuting(course, outing, OF_RUNNER_SECONDS);
	switch (expected.kind) {
		case 'expected':
			return { kind: 'runner', drawn: drawnOfExpected(expected, percentOfReserve), expected };
		case 'no-estimate':
			return { kind: 'too-much-for-this-runner' };
		case 'no-course':
			return { kind: 'not-this-runner' };
		case 'empty':
			return expected;
	}
}
