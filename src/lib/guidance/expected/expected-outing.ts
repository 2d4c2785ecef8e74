import type { Outing } from '../../outing/outing.ts';
import { outingTotals } from '../../outing/totals.ts';
import type { Intensity } from '../../physiology/intensity.ts';
import { secondsByIntensity } from '../../physiology/pulse-by-intensity.ts';
import { pulseForecast, type ForecastPoint } from '../../physiology/pulse-forecast.ts';
import type { Course, NoCourse } from './course.ts';
import {
	START_SHARE,
	courseSteps,
	sharesOf,
	type CoursePhase,
	type CourseSteps
} from './course-steps.ts';

/** A share of the reserve and one standard deviation of it. */
export interface ShareEstimate {
	readonly share: number;
	readonly spreadShare: number;
}

export interface SharePoint extends ShareEstimate {
	/** From the start of the outing. */
	readonly seconds: number;
}

/** The expected pulse of one runner through an outing, in shares of the reserve. An illustration. */
export interface Expected {
	readonly kind: 'expected';
	/** True where runs became brisk walks. */
	readonly walksInstead: boolean;
	readonly phases: readonly CoursePhase[];
	readonly points: readonly SharePoint[];
	readonly peak: SharePoint;
	readonly mean: ShareEstimate;
	readonly secondsByIntensity: Readonly<Record<Intensity, number>>;
}

export type ExpectedOuting =
	| Expected
	| NoCourse
	| Extract<CourseSteps, { kind: 'no-estimate' }>
	/** There is no phase yet. */
	| { readonly kind: 'empty' };

/**
 * @param outing without issues, or empty
 * @param everySeconds between two points of the curve
 */
export function expectedOuting(
	course: Course | NoCourse,
	outing: Outing,
	everySeconds: number
): ExpectedOuting {
	if (course.kind === 'no-course') return course;
	const through = courseSteps(course, outing);
	if (through.kind === 'no-estimate') return through;
	if (through.phases.length === 0) return { kind: 'empty' };
	const demands = through.phases.map(({ phase, demand }) => ({
		durationSeconds: phase.seconds,
		demand
	}));
	const forecast = pulseForecast(demands, sharesOf(course), {
		startReserveFraction: START_SHARE,
		everySeconds
	});
	if (forecast.kind === 'no-estimate') return forecast;
	const { mean } = forecast;
	return {
		kind: 'expected',
		walksInstead: !course.runs && outingTotals(outing).runningSeconds > 0,
		phases: through.phases,
		points: forecast.points.map(pointOf),
		peak: pointOf(forecast.peak),
		mean: { share: mean.bpm, spreadShare: mean.spreadBpm },
		secondsByIntensity: secondsByIntensity(through.steps, START_SHARE, {
			restingBpm: 0,
			maximumBpm: 1
		})
	};
}

function pointOf({ seconds, bpm, spreadBpm }: ForecastPoint): SharePoint {
	return { seconds, share: bpm, spreadShare: spreadBpm };
}
