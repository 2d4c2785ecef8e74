import type { Selectable } from 'kysely';
import { z } from 'zod';
import type { Outing } from '../outing/outing.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Database } from './database/tables.ts';
import { outingOf } from './outing-shape.ts';
import { programmeInputs, type ProgrammeInputs } from './programme-inputs.ts';
import { readJson } from './readable.ts';
import { localDate } from './shapes.ts';
import { Unreadable, type Place, type Vault } from './vault.ts';

export type { ProgrammeInputs } from './programme-inputs.ts';

export interface ProgrammeWords {
	readonly inputs: ProgrammeInputs;
	readonly startsOn: LocalDate;
	/** 1 for Monday to 7 for Sunday, in order. */
	readonly weekdays: readonly number[];
	/** Dates on which there is no outing, in order. */
	readonly holidays: readonly LocalDate[];
}

export interface Programme extends Omit<ProgrammeWords, 'inputs'> {
	readonly id: string;
	/** Null where it cannot be read: its days stand, and no rule moves them. */
	readonly inputs: ProgrammeInputs | null;
	/** Counts up from 1 with each change. */
	readonly revision: number;
	readonly changedAt: number;
	readonly changedByName: string;
}

export type PlannedState = Database['planned_outing']['state'];

/** An outing of a group on a day, as it was when it was planned. */
export interface PlannedOuting {
	readonly id: string;
	readonly programmeId: string | null;
	/** Its place in the programme, from 1; null for an outing by itself. */
	readonly number: number | null;
	readonly week: number | null;
	readonly onDate: LocalDate;
	readonly outing: Outing;
	readonly state: PlannedState;
}

const days = z.strictObject({
	weekdays: z.array(z.int().min(1).max(7)).min(1).max(7),
	holidays: z.array(localDate).max(400)
});

/** @throws Unreadable */
export function programmeOf(row: Selectable<Database['programme']>, vault: Vault): Programme {
	return {
		...daysOf(row),
		id: row.id,
		inputs: inputsOf(row, vault),
		startsOn: row.starts_on,
		revision: row.revision,
		changedAt: row.changed_at,
		changedByName: row.changed_by_name
	};
}

/**
 * The days of the week and those without an outing.
 * @throws Unreadable
 */
export function daysOf(row: Pick<Selectable<Database['programme']>, 'weekdays' | 'holidays'>) {
	const read = days.safeParse({
		weekdays: readJson(row.weekdays, 'programme'),
		holidays: readJson(row.holidays, 'programme')
	});
	if (!read.success) throw new Unreadable('programme');
	return read.data;
}

/** What it was made from holds the shares of the runner in the middle of the group: it is sealed. */
export const inputsPlace = (groupId: string, programmeId: string): Place => ({
	table: 'programme',
	owner: groupId,
	row: programmeId
});

function inputsOf(
	row: Pick<Selectable<Database['programme']>, 'id' | 'group_id' | 'inputs'>,
	vault: Vault
): ProgrammeInputs | null {
	try {
		return vault.unseal(inputsPlace(row.group_id, row.id), row.inputs, programmeInputs);
	} catch {
		return null;
	}
}

/** @throws ZodError for what is no programme */
export function programmeColumns(
	{ startsOn, inputs, ...rest }: ProgrammeWords,
	place: Place,
	vault: Vault
) {
	const { weekdays, holidays } = days.parse(rest);
	return {
		starts_on: localDate.parse(startsOn),
		inputs: vault.seal(place, programmeInputs.parse(inputs)),
		weekdays: JSON.stringify(weekdays),
		holidays: JSON.stringify(holidays)
	};
}

type PlannedRow = Pick<
	Selectable<Database['planned_outing']>,
	'id' | 'programme_id' | 'number' | 'week' | 'on_date' | 'outing' | 'state'
>;

/** @throws Unreadable */
export function plannedOf(row: PlannedRow): PlannedOuting {
	return {
		id: row.id,
		programmeId: row.programme_id,
		number: row.number,
		week: row.week,
		onDate: row.on_date,
		outing: outingOf(row.outing, 'planned_outing'),
		state: row.state
	};
}
