import { randomUUID } from 'node:crypto';
import { CompiledQuery } from 'kysely';
import type { Signed } from '$lib/server/auth.ts';
import type { Coach } from '$lib/server/coaches.ts';
import type { House } from '$lib/server/open-house.ts';
import { makeCoach, makeGroup, makeHelper, join, type InGroup } from '../coached-group.ts';
import type { InHouse } from '../in-house.ts';
import { keepAll, type Kept } from './kept.ts';

/** Who may ask. The runner and the owner are Ines and Odile; what is walled in is theirs. */
export const persons = [
	'nobody',
	'runner',
	'otherRunner',
	'owner',
	'helper',
	'otherCoach',
	'host'
] as const;
export type Person = (typeof persons)[number];

/** Somebody as the functions want them: by id, as a coach, or as a runner of a session. */
export interface Acting {
	readonly id: string;
	readonly coach: Coach;
	readonly signed: Signed;
}

/** Where the asked-for stands. */
export interface Place {
	readonly groupId: string;
	readonly memberId: string;
}

/** A group with its people, and beside it another group with its own. */
export interface World extends Kept {
	readonly acting: Readonly<Record<Person, Acting>>;
	readonly here: InHouse;
	readonly db: InHouse['database'];
	readonly vault: InHouse['vault'];
	/** What of a house these functions ask for. */
	readonly house: House;
	readonly ines: InGroup;
	/** The group of the asked-for. */
	readonly at: Place;
	/** The same runner, asked for through the other coach's own group. */
	readonly askedFromElsewhere: Place;
	/** What only Ines, Odile and their group have: nobody else may read one of these. */
	readonly marks: readonly string[];
}

export async function makeWorld(here: InHouse): Promise<World> {
	// What an earlier world left behind goes first: a house has one host.
	for (const table of ['house_setting', 'running_group', 'user'] as const) {
		await here.database.deleteFrom(table).execute();
	}
	const owner = await makeCoach(here, `Odile ${randomUUID()}`);
	const groupId = await makeGroup(here, owner, `Lantern Street ${randomUUID()}`);
	const helper = await makeHelper(here, groupId);
	const otherCoach = await makeCoach(here, 'Cleo Tarn');
	const elsewhere = await makeGroup(here, otherCoach, 'Mill Lane walkers');
	const host = await makeHost(here);
	const ines = await join(here, groupId, {}, `Ines ${randomUUID()}`);
	const other = await join(here, elsewhere, {}, 'Mei-Lin');
	const kept = await keepAll(here, { owner, helper, groupId, ines });
	const group = await here.database
		.selectFrom('running_group')
		.select('name')
		.where('id', '=', groupId)
		.executeTakeFirstOrThrow();
	const member = await here.database
		.selectFrom('member')
		.select('name')
		.where('id', '=', ines.memberId)
		.executeTakeFirstOrThrow();
	return {
		...kept,
		here,
		db: here.database,
		vault: here.vault,
		house: here as unknown as House,
		ines,
		at: { groupId, memberId: ines.memberId },
		askedFromElsewhere: { groupId: elsewhere, memberId: ines.memberId },
		acting: {
			nobody: actingAs(randomUUID()),
			runner: actingAs(ines.runnerId, null, kept.sessionId),
			otherRunner: actingAs(other.runnerId),
			owner: actingAs(owner.coachId, owner),
			helper: actingAs(helper.coachId, helper),
			otherCoach: actingAs(otherCoach.coachId, otherCoach),
			host: actingAs(host.coachId, host)
		},
		marks: [...kept.marks, groupId, ...Object.values(ines), owner.coachId].concat(
			owner.name,
			group.name,
			member.name
		)
	};
}

function actingAs(
	id: string,
	coach: Coach | null = null,
	sessionId: string = randomUUID()
): Acting {
	return {
		id,
		coach: coach ?? { coachId: id, name: 'Somebody', qualification: null, isHost: false },
		signed: { runnerId: id, sessionId }
	};
}

async function makeHost(here: InHouse): Promise<Coach> {
	const coach = await makeCoach(here, 'Hana Orme');
	await here.database
		.updateTable('coach')
		.set({ is_host: 1 })
		.where('coach_id', '=', coach.coachId)
		.execute();
	await here.database
		.insertInto('house_setting')
		.values({ name: 'host', value: coach.coachId })
		.execute();
	return { ...coach, isHost: true };
}

/** Every row of the database that names something of theirs, as text. */
export async function rowsOfTheirs({ db, marks }: World): Promise<readonly string[]> {
	const tables = await db.introspection.getTables();
	const rows: string[] = [];
	for (const { name } of tables) {
		const all = await db.executeQuery(CompiledQuery.raw(`select * from "${name}"`));
		rows.push(...all.rows.map((row) => `${name} ${asText(row)}`));
	}
	return rows.filter((row) => marks.some((mark) => row.includes(mark))).sort();
}

/**
 * What is different between two such lists, but for what is about this person alone: whoever asks
 * for themselves may change what is theirs.
 */
export function changesBetween(
	before: readonly string[],
	after: readonly string[],
	{ marks, acting }: World,
	person: Person
): string[] {
	const [was, is] = [new Set(before), new Set(after)];
	const others = marks.filter((mark) => mark !== acting[person].id);
	const isOthers = (row: string) => others.some((mark) => row.includes(mark));
	return [
		...before.filter((row) => !is.has(row)).map((row) => `gone: ${row}`),
		...after.filter((row) => !was.has(row)).map((row) => `new: ${row}`)
	].filter(isOthers);
}

/** An answer as text, for a look at what it tells. */
export const asText = (answer: unknown): string =>
	JSON.stringify(answer, (_, part: unknown) => plain(part)) ?? '';

function plain(part: unknown): unknown {
	if (part instanceof Map) return [...part];
	return typeof part === 'bigint' ? String(part) : part;
}
