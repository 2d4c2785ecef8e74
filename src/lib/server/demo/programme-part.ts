import { addDays, type LocalDate } from '../../calendar/local-date.ts';
import { weekdayOf } from '../../calendar/weekday.ts';
import { generateProgramme } from '../../outing/programme/generate.ts';
import { planAhead } from '../../outing/programme/plan-ahead.ts';
import { unknownPulse, type ProgrammeWishes } from '../../outing/programme/wishes.ts';
import * as programmes from '../programmes.ts';
import { DEMO_DAYS } from './make-group.ts';
import { noonOf, type DemoPart } from './parts.ts';

/** Tuesday, Thursday and Saturday. */
const WEEKDAYS = [2, 4, 6];
const WEEKS_BEHIND = 4;

/** From walking to half an hour, with somebody in the group who has to settle in. */
const wishes: ProgrammeWishes = {
	weeks: 16,
	outingsAWeek: 3,
	firstRunSeconds: 25,
	goal: { kind: 'minutes', minutes: 30 },
	settlingIn: true,
	pulse: unknownPulse
};

/** The days on which the group met in the four weeks before today, oldest first: twelve. */
export function metOn(today: LocalDate): readonly LocalDate[] {
	const count = 7 * WEEKS_BEHIND;
	const before = Array.from({ length: count }, (_, i) => addDays(today, i - count));
	return before.filter((date) => WEEKDAYS.includes(weekdayOf(date)));
}

/** Sixteen weeks, of which four lie behind the group, and the next outing is today or soon. */
export const programmeOfGroup: DemoPart = async ({
	database,
	vault,
	coach,
	groupId,
	words,
	today
}) => {
	const answer = generateProgramme(wishes, words.outingName);
	if (answer.kind !== 'programme') throw new Error(`no programme came of it: ${answer.kind}`);
	const startsOn = metOn(today)[0] ?? today;
	const days = { startsOn, weekdays: WEEKDAYS, holidays: [] };
	const planned = planAhead(answer.weeks, days, [], startsOn);
	const making = { words: { inputs: { ...wishes }, ...days }, planned };
	const madeAt = noonOf(addDays(today, -DEMO_DAYS));
	const made = await programmes.make(database, vault, coach, groupId, making, madeAt);
	if (made.kind !== 'made') throw new Error(`the programme was not made: ${made.kind}`);
};
