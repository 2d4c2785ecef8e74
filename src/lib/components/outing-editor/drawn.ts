import type { Course, NoCourse } from '$lib/guidance/expected/course.ts';
import type { Expected } from '$lib/guidance/expected/expected-outing.ts';
import { groupOuting } from '$lib/guidance/expected/group-outing.ts';
import { phasesOf, type Outing } from '$lib/outing/outing.ts';
import { phaseTargets } from '$lib/outing/phase.ts';

/** What the picture of an outing is drawn from: minutes, and levels on a scale. */
export interface Drawn {
	readonly minutes: number;
	readonly points: readonly {
		readonly at: number;
		readonly middle: number;
		readonly low: number;
		readonly high: number;
	}[];
	/** The highest that is expected, and when. */
	readonly peak: { readonly at: number; readonly level: number };
	readonly slots: readonly Slot[];
}

interface Slot {
	readonly from: number;
	readonly to: number;
	readonly low: number;
	readonly high: number;
	readonly isRun: boolean;
}

/** Between two points of a curve. Two hundred runners stay light enough to drag a length under. */
const OF_GROUP_SECONDS = 20;
/** Lengths are moved in steps of so much: so there is a point at the end of each phase. */
export const OF_RUNNER_SECONDS = 5;

/** The levels of a pulse at rest and at its maximum. */
export interface Scale {
	readonly rest: number;
	readonly maximum: number;
}

export const percentOfReserve: Scale = { rest: 0, maximum: 100 };

const percent = (share: number) => share * 100;

/** One runner: the expected course, and one spread about it. */
export function drawnOfExpected(expected: Expected, { rest, maximum }: Scale): Drawn {
	const level = (share: number) => rest + share * (maximum - rest);
	return {
		minutes: (expected.points.at(-1)?.seconds ?? 0) / 60,
		points: expected.points.map(({ seconds, share, spreadShare }) => ({
			at: seconds / 60,
			middle: level(share),
			low: level(Math.max(0, share - spreadShare)),
			high: level(Math.min(1, share + spreadShare))
		})),
		peak: { at: expected.peak.seconds / 60, level: level(expected.peak.share) },
		slots: expected.phases.map(({ phase, startSeconds, range }) => ({
			from: startSeconds / 60,
			to: (startSeconds + phase.seconds) / 60,
			low: level(range.low ?? 0),
			high: level(range.high),
			isRun: phaseTargets[phase.kind].gait === 'run'
		}))
	};
}

/** The group: its middle, where two in three of it are, and what does not fit some of them. */
export function drawnOfGroup(courses: readonly (Course | NoCourse)[], outing: Outing) {
	const group = groupOuting(courses, outing, OF_GROUP_SECONDS);
	let peak = { seconds: 0, median: 0 };
	for (const point of group.points) if (point.median > peak.median) peak = point;
	const drawn: Drawn = {
		minutes: (group.points.at(-1)?.seconds ?? 0) / 60,
		points: group.points.map(({ seconds, median, low, high }) => ({
			at: seconds / 60,
			middle: percent(median),
			low: percent(low),
			high: percent(high)
		})),
		peak: { at: peak.seconds / 60, level: percent(peak.median) },
		slots: usualSlots(outing)
	};
	return { drawn, group };
}

/** The bands as the outing is written, before any runner's own. */
function usualSlots(outing: Outing): Slot[] {
	let at = 0;
	return phasesOf(outing).map(({ kind, seconds, target }) => {
		const { reserve, gait } = phaseTargets[kind];
		const { low, high } = target ?? reserve;
		const from = at / 60;
		at += seconds;
		return {
			from,
			to: at / 60,
			low: percent(low ?? 0),
			high: percent(high),
			isRun: gait === 'run'
		};
	});
}
