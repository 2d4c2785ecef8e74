import { daysToCome } from '$lib/outing/programme/days-to-come.ts';
import { generateProgramme } from '$lib/outing/programme/generate.ts';
import type { ProgrammeWeek } from '$lib/outing/programme/programme.ts';
import type { ProgrammeWishes } from '$lib/outing/programme/wishes.ts';
import type { Planner } from '$lib/server/programmes.ts';
import { programme } from '$words/programme.ts';

/** The weeks of a programme that was kept; null where its wishes cannot be met any more. */
export function weeksFrom(inputs: ProgrammeWishes): readonly ProgrammeWeek[] | null {
	const answer = generateProgramme(inputs, programme.outingName);
	return answer.kind === 'programme' ? answer.weeks : null;
}

/** The days of a group's programme. */
export const planner: Planner = ({ inputs, ...days }, calendar, today) => {
	const weeks = weeksFrom(inputs);
	return weeks === null ? null : daysToCome(weeks, days, calendar, today);
};
