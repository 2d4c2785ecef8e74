import { roundHalfUp } from '../../physiology/units.ts';
import { phaseKinds } from '../../outing/phase.ts';
import type { Course, ShareRange } from './course.ts';

/**
 * The course of a runner as a coach's page may hold it: enough for a picture. With all its digits a
 * spread would tell the reserve, for the spread of a maximum from age is known; and the reserve, with
 * the beats of a band, would tell the pulse at rest, the maximum and so the age. So would a limit in
 * beats as an exact share. An upper edge is cut down, never up. Where a capacity comes from is the
 * runner's own matter: the answers of a questionnaire, a test in a laboratory.
 */
export function deskCourse(course: Course): Course {
	const { capacity } = course;
	return {
		...course,
		ranges: Object.fromEntries(
			phaseKinds.map((kind) => [kind, inHundredths(course.ranges[kind])])
		) as Course['ranges'],
		restingSpread: roundHalfUp(course.restingSpread, 2),
		maximumSpread: roundHalfUp(course.maximumSpread, 2),
		capacity: capacity && {
			mlPerKgPerMinute: roundHalfUp(capacity.mlPerKgPerMinute, 0),
			spread: roundHalfUp(capacity.spread, 0)
		}
	};
}

function inHundredths(range: ShareRange): ShareRange {
	const high = roundHalfUp(Math.floor(range.high * 100 + TINY) / 100, 2);
	const low = range.low === null ? null : roundHalfUp(range.low, 2);
	return { low: low !== null && low < high ? low : null, high };
}

/** So that 0.57, which a computer keeps a little under itself, stays 0.57. */
const TINY = 1e-9;
