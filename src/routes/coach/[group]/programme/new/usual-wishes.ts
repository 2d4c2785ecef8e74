import { addDays, type LocalDate } from '$lib/calendar/local-date.ts';
import { weekdayOf } from '$lib/calendar/weekday.ts';
import type { Typed } from '$lib/forms/read-form.ts';
import type { ProgrammeStart } from '$lib/guidance/expected/programme-start.ts';
import { speedToType, type SpeedUnit } from '$lib/outing/typed-speed.ts';
import { minutesAndSeconds } from '$words/dates.ts';

/** What stands in the form at first. All of it is our own choice, no source, but for the group's. */
export function usualWishes(start: ProgrammeStart, unit: SpeedUnit, today: LocalDate): Typed {
	return {
		weeks: '16',
		outingsAWeek: '3',
		firstRun: minutesAndSeconds(start.firstRunSeconds),
		// Where half an hour in the band is not expected, walking and running in turn is the full goal.
		goalKind: start.pulse.staysInBand === 'no' ? 'walk-and-run' : 'minutes',
		goalMinutes: '30',
		goalKilometres: '4',
		goalSpeed: speedToType(7.2, unit),
		goalRun: '3:00',
		settlingIn: start.settlingIn ? 'yes' : '',
		startsOn: addDays(today, 8 - weekdayOf(today)),
		weekdays: ['1', '3', '6'],
		holidayFrom: [],
		holidayUntil: []
	};
}
