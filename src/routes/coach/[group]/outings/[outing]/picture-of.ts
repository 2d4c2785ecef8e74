import type { MemberBands } from '$lib/server/member-bands.ts';

/**
 * What the picture of an outing needs, and no more: everybody's course without a name and in an order
 * that tells nothing, and the one runner who was chosen.
 */
export function pictureOf(seen: readonly MemberBands[], chosenId: string | null) {
	const drawable = seen.filter(({ course }) => course.kind === 'course');
	const chosen = drawable.find(({ id }) => id === chosenId);
	const written = drawable.map(({ course }) => JSON.stringify(course)).sort();
	return {
		courses: written.map((course) => JSON.parse(course) as MemberBands['course']),
		choices: drawable.map(({ id, name }) => ({ id, name })),
		chosenId: chosen?.id ?? null,
		runner: chosen ? { name: chosen.name, course: chosen.course } : null
	};
}
