import type { Kysely } from 'kysely';
import type { Outing } from '../outing/outing.ts';
import { ownPlace } from '../outing/programme/own-place.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import * as memberSteps from './member-steps.ts';
import { outingOf } from './outing-shape.ts';
import { Unreadable } from './vault.ts';

/** An outing of a programme and its place there, from 1. */
export interface NumberedOuting {
	readonly number: number;
	readonly outing: Outing;
}

/** The next day on which a group has an outing. */
export interface NextDay {
	readonly onDate: LocalDate;
	/** Of the group; null for an outing by itself. */
	readonly number: number | null;
	readonly outing: Outing;
	/** Of the programme that the group follows, by number; none for an outing by itself. */
	readonly numbered: readonly { readonly number: number; readonly outing: string }[];
	readonly programmeId: string | null;
}

/** What somebody does on that day, at their own step. */
export interface OwnNext extends Pick<NextDay, 'onDate' | 'number' | 'outing'> {
	/** Outings behind the group below zero, ahead of it above. */
	readonly outingsAhead: number;
}

/**
 * The next outing of each member of a group, at the step where they stand: three queries, however
 * many they are. Null where nothing is planned or it cannot be read, and for who is not a coach of it.
 *
 * @param today the date where the group is
 */
export async function ofMembers(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	today: LocalDate
): Promise<(memberId: string) => OwnNext | null> {
	const day = await nextDay(database, coachId, groupId, today).catch(nullIfUnreadable);
	if (day === null) return () => null;
	const steps = await memberSteps.list(database, coachId, groupId);
	const aheadOf = new Map(steps.map((one) => [one.memberId, one.outingsAhead]));
	const known = new Map<number, OwnNext | null>();
	return (memberId) => {
		const ahead = day.number === null ? 0 : (aheadOf.get(memberId) ?? 0);
		if (!known.has(ahead)) known.set(ahead, ownNextOrNull(day, ahead));
		return known.get(ahead) ?? null;
	};
}

function ownNextOrNull(day: NextDay, outingsAhead: number): OwnNext | null {
	try {
		return ownNext(day, outingsAhead);
	} catch (error) {
		return nullIfUnreadable(error);
	}
}

function nullIfUnreadable(error: unknown): null {
	if (error instanceof Unreadable) return null;
	throw error;
}

/**
 * The next outing of a group, of its programme or by itself.
 *
 * @param which 'of-programme' leaves out what is planned by itself
 * @throws Unreadable
 */
export async function nextDay(
	database: Kysely<Database>,
	coachId: string,
	groupId: string,
	today: LocalDate,
	which: 'any' | 'of-programme' = 'any'
): Promise<NextDay | null> {
	let rows = ofGroup(database, coachId, groupId)
		.where('state', '=', 'planned')
		.where('on_date', '>=', today);
	if (which === 'of-programme') rows = rows.where('number', 'is not', null);
	const next = await rows
		.select(['on_date', 'number', 'outing', 'programme_id'])
		.orderBy('on_date')
		.limit(1)
		.executeTakeFirst();
	if (next === undefined) return null;
	const numbered =
		next.programme_id === null
			? []
			: await ofGroup(database, coachId, groupId)
					.where('programme_id', '=', next.programme_id)
					.select(['number', 'outing'])
					.orderBy('number')
					.orderBy('on_date')
					.execute();
	return {
		onDate: next.on_date,
		number: next.number,
		outing: outingOf(next.outing, 'planned_outing'),
		numbered: numbered.flatMap(({ number, outing }) =>
			number === null ? [] : [{ number, outing }]
		),
		programmeId: next.programme_id
	};
}

/** @throws Unreadable */
export function ownNext(day: NextDay, outingsAhead: number): OwnNext {
	const { onDate, number, outing, numbered } = day;
	const own =
		number === null || outingsAhead === 0 ? null : ownPlace(numbered, number, outingsAhead);
	if (own === null || number === null) return { onDate, number, outing, outingsAhead: 0 };
	return {
		onDate,
		number: own.number,
		outing: outingOf(own.outing, 'planned_outing'),
		outingsAhead: own.number - number
	};
}

function ofGroup(database: Kysely<Database>, coachId: string, groupId: string) {
	return database
		.selectFrom('planned_outing')
		.where('group_id', '=', groupId)
		.where('group_id', 'in', groups.idsOf(database, coachId));
}
