import type { ProgrammeWeek } from '../../outing/programme/programme.ts';
import { expectedMean } from '../../physiology/pulse-response.ts';
import type { Course, NoCourse } from './course.ts';
import { START_SHARE, courseSteps } from './course-steps.ts';

/** What the pulse is expected to do in one week of a programme, in shares of the reserve. */
export interface WeekPulse {
	readonly number: number;
	/** Of how many runners the medians are; each has a curve for every outing of the week. */
	readonly runners: number;
	/** Of how many there is no estimate, as a run of the week asks for more than can be reckoned with. */
	readonly withoutEstimate: number;
	/** The highest of the week, and the mean over all its outings. Null without any. */
	readonly peakShare: number | null;
	readonly meanShare: number | null;
}

/**
 * Expected peak and mean of each week, of one runner or of a group's middle. An illustration of the
 * programme as it is written: who settles in now, or whose runs are short for now, is taken to run
 * with the others in its weeks with runs, for these lie ahead. Who may walk, walks in all of them.
 */
export function programmeTable(
	weeks: readonly ProgrammeWeek[],
	courses: readonly (Course | NoCourse)[]
): readonly WeekPulse[] {
	const known = courses.filter((course) => course.kind === 'course').map(inWeeksToCome);
	return weeks.map((week) => {
		const each = known.flatMap((course) => weekOf(week, course) ?? []);
		return {
			number: week.number,
			runners: each.length,
			withoutEstimate: known.length - each.length,
			peakShare: median(each.map(({ peakShare }) => peakShare)),
			meanShare: median(each.map(({ meanShare }) => meanShare))
		};
	});
}

function inWeeksToCome(course: Course): Course {
	const runs = course.runs || course.isSettlingIn;
	return { ...course, runs, longestRunSeconds: null };
}

function weekOf({ outings }: ProgrammeWeek, course: Course) {
	let [peakShare, area, seconds] = [0, 0, 0];
	for (const { outing } of outings) {
		const way = courseSteps(course, outing);
		if (way.kind === 'no-estimate') return null;
		const lasts = way.steps.reduce((sum, step) => sum + step.durationSeconds, 0);
		peakShare = Math.max(peakShare, ...way.phases.map((phase) => phase.peakShare));
		area += expectedMean(way.steps, START_SHARE) * lasts;
		seconds += lasts;
	}
	return { peakShare, meanShare: area / seconds };
}

function median(shares: readonly number[]): number | null {
	if (shares.length === 0) return null;
	const sorted = [...shares].sort((one, other) => one - other);
	const [below, above] = [(sorted.length - 1) >> 1, sorted.length >> 1];
	return (sorted[below]! + sorted[above]!) / 2;
}
