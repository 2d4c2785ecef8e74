import type { Kysely } from 'kysely';
import { deskView, type DeskView } from '../guidance/desk-view.ts';
import type { Course, NoCourse } from '../guidance/expected/course.ts';
import { deskCourse } from '../guidance/expected/desk-course.ts';
import type { RosterState } from '../guidance/roster-next.ts';
import { rosterWord } from '../guidance/roster-word.ts';
import { localDate } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import * as bandsSet from './bands-set.ts';
import type { Of } from './by-runner.ts';
import type { Coach } from './coaches.ts';
import type { Database } from './database/tables.ts';
import * as effortBands from './effort-bands.ts';
import * as groups from './groups.ts';
import * as members from './members.ts';
import * as profiles from './profiles.ts';
import * as readings from './readings.ts';
import { standings, type Standing } from './standing.ts';
import { Unreadable, type Vault } from './vault.ts';
import * as walks from './walks.ts';

/** A member as a coach may see their bands. */
export interface MemberBands {
	readonly id: string;
	readonly name: string;
	readonly today: RosterState;
	/** Null unless the result is open: a row that is not for today has no number. */
	readonly desk: DeskView | null;
	/** For the expected pulse of an outing, in shares of the reserve. */
	readonly course: Course | NoCourse;
}

export type Asking = Pick<Coach, 'coachId' | 'name'>;

export interface Stores {
	readonly database: Kysely<Database>;
	readonly vault: Vault;
}

/** Everybody on the group's list, by name. Null for a group that is not the coach's. */
export async function list(
	stores: Stores,
	coach: Asking,
	groupId: string,
	now: number
): Promise<MemberBands[] | null> {
	const group = await groups.ofCoach(stores.database, coach.coachId, groupId);
	if (group === null) return null;
	const present = await members.list(stores.database, coach.coachId, groupId);
	return look(stores, coach, group, present, now);
}

/** One of them. Null for who is not in the group, or not the coach's to know. */
export async function find(
	stores: Stores,
	coach: Asking,
	groupId: string,
	memberId: string,
	now: number
): Promise<MemberBands | null> {
	const group = await groups.ofCoach(stores.database, coach.coachId, groupId);
	const member = await members.find(stores.database, coach.coachId, groupId, memberId);
	if (group === null || member === null) return null;
	return (await look(stores, coach, group, [member], now))[0] ?? null;
}

/** Looks, and writes down for each runner that the coach did. */
async function look(
	stores: Stores,
	coach: Asking,
	group: groups.GroupOf,
	present: readonly members.Member[],
	now: number
): Promise<MemberBands[]> {
	const runners = present.flatMap(sharingRunner);
	if (runners.length === 0) return present.map(bareName);
	await readings.record(stores.database, { coach, group }, runners, 'bands', now);
	const { database, vault } = stores;
	const kept: Kept = {
		standing: await standings(database, vault, runners, now),
		profile: await profiles.loadMany(database, vault, runners),
		set: await bandsSet.forRunners(database, runners),
		walked: await walks.listOfMany(database, runners)
	};
	const today = localDate(now, group.timeZone);
	return present.map((member) => {
		const [runnerId] = sharingRunner(member);
		if (runnerId === undefined) return bareName(member);
		return { id: member.id, name: member.name, ...seenOf(kept, runnerId, today) };
	});
}

interface Kept {
	readonly standing: Of<Standing>;
	readonly profile: Of<profiles.Profile>;
	readonly set: Of<readonly bandsSet.BandSet[]>;
	readonly walked: Of<readonly LocalDate[]>;
}

type Seen = Pick<MemberBands, 'today' | 'desk' | 'course'>;

const CLOSED: NoCourse = { kind: 'no-course', why: 'closed' };

const UNREADABLE: Seen = {
	today: { open: false, word: 'not-today' },
	desk: null,
	course: CLOSED
};

/** What cannot be read is closed, and closes nobody else's row. */
function seenOf(
	{ standing, profile, set, walked }: Kept,
	runnerId: string,
	today: LocalDate
): Seen {
	const access = standing(runnerId);
	const days = walks.daysSince(walked(runnerId), today);
	const word = rosterWord(access, today, days);
	if (!access.allowed) return { today: word, desk: null, course: CLOSED };
	try {
		const from = [access, profile(runnerId), set(runnerId), days] as const;
		const guidance = effortBands.guidanceFrom(...from);
		return {
			today: word,
			desk: guidance.open ? deskView(access, guidance) : null,
			course: coarse(effortBands.courseFrom(...from))
		};
	} catch (error) {
		if (error instanceof Unreadable) return UNREADABLE;
		throw error;
	}
}

const coarse = (course: Course | NoCourse) =>
	course.kind === 'course' ? deskCourse(course) : course;

function bareName({ id, name, runnerId }: members.Member): MemberBands {
	const word = runnerId === null ? 'not-joined' : 'not-shared';
	return { id, name, today: { open: false, word }, desk: null, course: CLOSED };
}

/** The runner behind a name, where they agree that coaches see it. */
function sharingRunner({ runnerId, sharedSince }: members.Member): string[] {
	return runnerId === null || sharedSince === null ? [] : [runnerId];
}
