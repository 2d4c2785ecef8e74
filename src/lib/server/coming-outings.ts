import type { Kysely } from 'kysely';
import { runnerOuting } from '../guidance/runner-outing.ts';
import type { HelpHere } from '../outing/kept.ts';
import type { Outing } from '../outing/outing.ts';
import { ownPlace } from '../outing/programme/own-place.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Signed } from './auth.ts';
import type { Database } from './database/tables.ts';
import * as effortBands from './effort-bands.ts';
import { HELP_COLUMNS, helpOf } from './help-columns.ts';
import type { House } from './open-house.ts';
import { outingOf } from './outing-shape.ts';
import { plannedOf, type PlannedState } from './programme-rows.ts';

/** An outing of a group that lies ahead of one of its runners, as that runner may do it. */
export interface ComingOuting {
	/** Of the planned outing. */
	readonly id: string;
	readonly groupId: string;
	readonly groupName: string;
	readonly onDate: LocalDate;
	/** The place in the programme at which the runner stands that day; null for an outing by itself. */
	readonly number: number | null;
	readonly outing: Outing;
	/** True where runs became brisk walks. */
	readonly walksInstead: boolean;
	/** How long its runs are at most where some had to end sooner; else null. */
	readonly shortenedToSeconds: number | null;
	/** What became of the group's day. */
	readonly state: PlannedState;
	readonly help: HelpHere;
}

/**
 * A runner's outings from one date to another, both included, over all groups that they share their
 * result with, by date. Each is cut to what the runner may do at this moment, and with a closed gate
 * there is none.
 *
 * Nothing of a group without an emergency number leaves the house: also of what was planned before
 * that was the rule, and of what stands there when the number is taken away again.
 *
 * @param at the moment, and the runner's own date then
 */
export async function forRunner(
	house: Pick<House, 'database' | 'vault'>,
	runner: Signed,
	from: LocalDate,
	until: LocalDate,
	at: { readonly now: number; readonly today: LocalDate }
): Promise<ComingOuting[]> {
	const { access, guidance } = await effortBands.of(house, runner, at.now, at.today);
	if (!access.allowed || !guidance.open) return [];
	const rows = await rowsFor(house.database, runner.runnerId, from, until)
		.where('emergency_number', 'is not', null)
		.execute();
	const elsewhere = await outingsAt(house.database, rows);
	return rows.map((row) => {
		const planned = plannedOf(row);
		const own = elsewhere(row) ?? { number: planned.number, outing: planned.outing };
		return {
			id: planned.id,
			groupId: row.group_id,
			groupName: row.group_name,
			onDate: planned.onDate,
			number: own.number,
			...runnerOuting(own.outing, access, guidance),
			state: planned.state,
			help: helpOf(row)
		};
	});
}

/** The groups of a runner that have outings planned then and no emergency number, by name. */
export async function waitingForNumber(
	database: Kysely<Database>,
	runnerId: string,
	from: LocalDate,
	until: LocalDate
): Promise<string[]> {
	const rows = await rowsFor(database, runnerId, from, until)
		.where('emergency_number', 'is', null)
		.where('planned_outing.state', '=', 'planned')
		.execute();
	return [...new Set(rows.map(({ group_name }) => group_name))].sort();
}

function rowsFor(database: Kysely<Database>, runnerId: string, from: LocalDate, until: LocalDate) {
	return database
		.selectFrom('member')
		.innerJoin('planned_outing', 'planned_outing.group_id', 'member.group_id')
		.innerJoin('running_group', 'running_group.id', 'member.group_id')
		.leftJoin('member_step', (join) =>
			join
				.onRef('member_step.member_id', '=', 'member.id')
				.onRef('member_step.programme_id', '=', 'planned_outing.programme_id')
		)
		.where('member.runner_id', '=', runnerId)
		.where('member.left_at', 'is', null)
		.where('member.shared_since', 'is not', null)
		.where('planned_outing.on_date', '>=', from)
		.where('planned_outing.on_date', '<=', until)
		.selectAll('planned_outing')
		.select(HELP_COLUMNS)
		.select(['running_group.name as group_name', 'member_step.outings_ahead'])
		.orderBy('planned_outing.on_date')
		.orderBy('group_name')
		.orderBy('planned_outing.id');
}

type Row = Awaited<ReturnType<ReturnType<typeof rowsFor>['executeTakeFirstOrThrow']>>;
type At = { readonly number: number; readonly outing: Outing };

/** The outings of those who stand elsewhere than the group; a programme begins and ends for them too. */
async function outingsAt(
	database: Kysely<Database>,
	rows: readonly Row[]
): Promise<(row: Row) => At | null> {
	const programmes = rows.flatMap((row) => (row.outings_ahead ? (row.programme_id ?? []) : []));
	if (programmes.length === 0) return () => null;
	const numbered = await database
		.selectFrom('planned_outing')
		.select(['programme_id', 'number', 'outing'])
		.where('programme_id', 'in', programmes)
		.orderBy('number')
		.orderBy('on_date')
		.execute();
	return ({ programme_id, number, outings_ahead }) => {
		if (number === null || !outings_ahead) return null;
		const own = numbered.flatMap((one) =>
			one.programme_id === programme_id && one.number !== null
				? [{ number: one.number, outing: one.outing }]
				: []
		);
		const found = ownPlace(own, number, outings_ahead);
		if (!found) return null;
		return { number: found.number, outing: outingOf(found.outing, 'planned_outing') };
	};
}
