import { programmeTable } from '$lib/guidance/expected/programme-table.ts';
import type { ProgrammeWeek } from '$lib/outing/programme/programme.ts';
import type { MemberBands } from '$lib/server/member-bands.ts';
import type { WeekRows } from './week-row.ts';

/** What a table of weeks needs, and no more: medians of the group, and nothing of one runner. */
export function weekRows(
	weeks: readonly ProgrammeWeek[],
	seen: readonly Pick<MemberBands, 'course'>[]
): WeekRows {
	const pulses = programmeTable(
		weeks,
		seen.map(({ course }) => course)
	);
	return {
		runners: seen.filter(({ course }) => course.kind === 'course').length,
		isOfAll: pulses.every(({ withoutEstimate }) => withoutEstimate === 0),
		rows: weeks.map((week, nth) => ({
			number: week.number,
			isSettlingIn: week.kind === 'settling-in',
			runningSeconds: week.runningSeconds,
			longestRunSeconds: week.longestRunSeconds,
			growth: week.growth,
			runners: pulses[nth]?.runners ?? 0,
			meanShare: pulses[nth]?.meanShare ?? null,
			peakShare: pulses[nth]?.peakShare ?? null,
			last: week.outings.at(-1)?.outing ?? null
		}))
	};
}
