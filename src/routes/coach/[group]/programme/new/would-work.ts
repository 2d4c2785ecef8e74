import type { LocalDate } from '$lib/calendar/local-date.ts';
import type { DayIssue } from '$lib/outing/programme/days.ts';
import { nearestWeekdays } from '$lib/outing/programme/nearest-days.ts';
import type { NearestPossible } from '$lib/outing/programme/programme.ts';
import type { RefusalReason } from '$lib/outing/programme/week-amounts.ts';
import type { ProgrammeGoal } from '$lib/outing/programme/wishes.ts';
import { minutesAndSeconds } from '$words/dates.ts';
import { programme } from '$words/programme.ts';
import { programmeForm } from '$words/programme-pages.ts';
import { held } from './fill-in.ts';

/** A button that fills in what would work, under its field. */
export interface WouldWork {
	readonly field: 'weeks' | 'goalKind' | 'firstRun' | 'weekdays' | 'startsOn';
	readonly value: string;
	readonly text: string;
}

const words = programme.nearest;

/** Under which field a refusal stands. */
export const fieldOfReason: Record<RefusalReason, WouldWork['field']> = {
	'goal-already-reached': 'goalKind',
	'first-week-too-far': 'firstRun',
	'not-in-band': 'goalKind',
	'longest-run-grows-too-fast': 'weeks',
	'week-grows-too-fast': 'weeks',
	'too-hard-at-first': 'firstRun'
};

/** What could be wished for instead, each on its own. */
export function wishesThatWork(nearest: NearestPossible): readonly WouldWork[] {
	const { weeks, goal, firstRunSeconds } = nearest;
	const found: WouldWork[] = [];
	if (weeks !== null) {
		found.push({ field: 'weeks', value: held({ weeks: `${weeks}` }), text: words.weeks(weeks) });
	}
	if (goal !== null) found.push(goalThatWorks(goal));
	if (firstRunSeconds !== null) {
		const time = minutesAndSeconds(firstRunSeconds);
		found.push({
			field: 'firstRun',
			value: held({ firstRun: time }),
			text: words.firstRun(time)
		});
	}
	return found;
}

function goalThatWorks(goal: ProgrammeGoal): WouldWork {
	const field = 'goalKind';
	switch (goal.kind) {
		case 'minutes':
			return {
				field,
				value: held({ goalKind: goal.kind, goalMinutes: `${goal.minutes}` }),
				text: words.minutes(goal.minutes)
			};
		case 'distance':
			return {
				field,
				value: held({ goalKind: goal.kind, goalKilometres: `${goal.kilometres}` }),
				text: words.distance(`${goal.kilometres}`)
			};
		case 'walk-and-run': {
			const time = minutesAndSeconds(goal.longestRunSeconds);
			return {
				field,
				value: held({ goalKind: goal.kind, goalRun: time }),
				text: words['walk-and-run'](time)
			};
		}
	}
}

/** Days that would do, for those that would not. */
export function daysThatWork(
	issues: readonly DayIssue[],
	{ weekdays, outingsAWeek }: { weekdays: readonly number[]; outingsAWeek: number },
	today: LocalDate
): readonly WouldWork[] {
	const found: WouldWork[] = [];
	if (issues.some(({ field }) => field === 'weekdays')) {
		const days = nearestWeekdays(weekdays, outingsAWeek).map(String);
		const names = days.map((day) => programmeForm.weekdays[day] ?? day);
		const last = names.pop() ?? '';
		const text = [names.join(programmeForm.comma), last].filter(Boolean).join(programmeForm.and);
		found.push({
			field: 'weekdays',
			value: held({ weekdays: days }),
			text: programmeForm.nearestWeekdays(text)
		});
	}
	if (issues.some(({ code }) => code === 'in-the-past' || code === 'too-far')) {
		found.push({
			field: 'startsOn',
			value: held({ startsOn: today }),
			text: programmeForm.nearestStart
		});
	}
	return found;
}
