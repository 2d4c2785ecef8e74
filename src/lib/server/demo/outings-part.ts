import { addDays, type LocalDate } from '../../calendar/local-date.ts';
import { weekdayOf } from '../../calendar/weekday.ts';
import { tanakaMaximum } from '../../physiology/maximum.ts';
import * as attendance from '../attendance.ts';
import * as memberSteps from '../member-steps.ts';
import * as pains from '../pains.ts';
import * as pastOutings from '../past-outings.ts';
import * as plannedOutings from '../planned-outings.ts';
import { DEMO_ZONE } from './make-group.ts';
import { nextMorningEntry, outingEntries } from './outing-entries.ts';
import { noonOf, type DemoGroup, type DemoPart } from './parts.ts';
import { demoRunners, type DemoRunnerId } from './people.ts';
import { ways } from './ways.ts';

const HOUR_MS = 3_600_000;
const startOf = (date: LocalDate): number => noonOf(date) + 6.5 * HOUR_MS;
const morningAfter = (date: LocalDate): number => noonOf(addDays(date, 1)) - 4.5 * HOUR_MS;

/** On Thursdays the group is on treadmills, else on its path. */
const THURSDAY = 4;
/** Up to this day of the twelve nobody was told to go slower. */
const EARLY_DAYS = 8;
/** Settling in took Ines a day longer than the group: she stands one outing behind it from here. */
const INES_BEHIND = { from: 7, outingsAhead: -1 };

/** Who finds the question about the morning after the last outing. */
const NOT_YET_ASKED = 'ines';

/** Four weeks day by day: who was there, what they may do that day, and what their phones wrote. */
export const outingsTogether: DemoPart = async (group) => {
	const { database, coach, groupId, today } = group;
	const until = addDays(today, -1);
	const behind = { from: addDays(today, -28), until };
	const days = await plannedOutings.list(database, coach.coachId, groupId, behind);
	for (const [i, { id, onDate }] of days.entries()) {
		if (i === INES_BEHIND.from) await standBehind(group, noonOf(onDate));
		for (const person of group.runners.keys()) {
			await comeTo(group, person, { i, onDate, isLast: i === days.length - 1 });
		}
		const endedAt = startOf(onDate) + HOUR_MS;
		await plannedOutings.mark(database, coach.coachId, groupId, id, 'done', endedAt);
	}
};

interface Day {
	/** Which of the twelve, from 0. */
	readonly i: number;
	readonly onDate: LocalDate;
	readonly isLast: boolean;
}

async function comeTo(group: DemoGroup, person: DemoRunnerId, day: Day): Promise<void> {
	const { database, vault, coach, groupId, runners } = group;
	const runner = runners.get(person);
	const { missed } = demoRunners[person];
	if (runner === undefined || person === 'gwen' || missed === null) return;
	const { sore } = ways[person];
	if (sore?.goneBy === day.i) await pains.gone(database, runner.runnerId, noonOf(day.onDate));
	if (missed.includes(day.i)) return;
	const startedAt = startOf(day.onDate);
	await attendance.mark(database, coach.coachId, groupId, runner.memberId, day.onDate, startedAt);
	const at = { now: startedAt, today: day.onDate };
	const asking = { runnerId: runner.runnerId, sessionId: 'none' };
	const [mine] = await plannedOutings.forRunner(group, asking, day.onDate, day.onDate, at);
	if (mine === undefined) throw new Error(`${person} may do nothing on ${day.onDate}`);
	const entries = outingEntries({
		outing: mine.outing,
		plannedId: mine.id,
		place: weekdayOf(day.onDate) === THURSDAY ? 'treadmill' : 'outdoors',
		startedAt,
		way: ways[person],
		isEarly: day.i < EARLY_DAYS,
		heart: heartOf(person),
		seed: `${group.today} ${person} ${day.i}`
	});
	const told = { now: startedAt + HOUR_MS, timeZone: DEMO_ZONE };
	await pastOutings.append(database, vault, runner.runnerId, entries, told);
	const last = entries.at(-1);
	const now = morningAfter(day.onDate);
	const isOpen = day.isLast && person === NOT_YET_ASKED;
	if (isOpen || now > group.now || last === undefined) return;
	const hurts = sore?.after === day.i;
	const pain = hurts ? ({ level: 'new', where: 'shin' } as const) : nothing;
	const morning = nextMorningEntry(last, now, pain);
	await pastOutings.append(database, vault, runner.runnerId, [morning], { ...told, now });
}

const nothing = { level: 'none', where: null } as const;

function heartOf(person: DemoRunnerId) {
	const { answers, mornings } = demoRunners[person];
	const years = Number(answers['age.years']);
	return { restingBpm: mornings[0] ?? 68, maximumBpm: tanakaMaximum(years) };
}

async function standBehind({ database, coach, groupId, runners }: DemoGroup, now: number) {
	const memberId = runners.get('ines')?.memberId;
	if (memberId === undefined) return;
	const step = { memberId, outingsAhead: INES_BEHIND.outingsAhead };
	await memberSteps.set(database, coach, groupId, step, now);
}
