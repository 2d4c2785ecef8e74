import { phasesOf, type Outing } from '../../outing/outing.ts';
import type { Course, NoCourse } from './course.ts';
import { asDone } from './course-steps.ts';
import { askedOf, courseWay, type Asked } from './course-way.ts';
import { medianCurve, momentsOf, type GroupPoint } from './median-curve.ts';
import { whatToChange, type Change } from './what-to-change.ts';

/** A group through an outing. An illustration. */
export interface GroupOuting {
	/** How many have a curve, and how many of these walk where others run. */
	readonly drawn: number;
	readonly walkInstead: number;
	/** How many have none, by reason; over-reserve is a run that is too much for any estimate. */
	readonly notDrawn: Readonly<Record<NotDrawn, number>>;
	/** Empty where nobody has a curve. */
	readonly points: readonly GroupPoint[];
	readonly changes: readonly Change[];
}

export type NotDrawn = NoCourse['why'] | 'over-reserve';

/**
 * @param outing without issues, or empty
 * @param everySeconds between two points; 20 keeps two hundred runners light enough to drag under
 */
export function groupOuting(
	courses: readonly (Course | NoCourse)[],
	outing: Outing,
	everySeconds: number
): GroupOuting {
	const notDrawn = { closed: 0, 'pulse-off': 0, 'pulse-not-known': 0, 'over-reserve': 0 };
	const known = new Map<string, Asked>();
	/** The outing as these runners do it, told apart once for all who do it alike. */
	const askedBy = (course: Course): Asked => {
		const alike = course.runs ? `${course.longestRunSeconds}` : 'walks';
		const asked = known.get(alike) ?? askedOf(asDone(course, outing));
		known.set(alike, asked);
		return asked;
	};
	let walkInstead = 0;
	const ways = courses.flatMap((course) => {
		if (course.kind === 'no-course') {
			notDrawn[course.why] += 1;
			return [];
		}
		const way = courseWay(course, askedBy(course));
		if (way === null) {
			notDrawn['over-reserve'] += 1;
			return [];
		}
		if (!course.runs) walkInstead += 1;
		return [way];
	});
	return {
		drawn: ways.length,
		walkInstead,
		notDrawn,
		points: medianCurve(ways, momentsOf(phasesOf(outing), everySeconds)),
		changes: whatToChange(outing, ways)
	};
}
