import { sql } from 'kysely';
import { beforeAll, describe, expect, it } from 'vitest';
import { DATABASES, inHouse } from '../in-house.ts';
import { demoRows } from './demo-rows.ts';
import { groupRows } from './group-rows.ts';
import { houseRows } from './house-rows.ts';
import { noPerson } from './no-person.ts';
import {
	asText,
	changesBetween,
	makeWorld,
	persons,
	rowsOfTheirs,
	type Person,
	type World
} from './people.ts';
import { NOTHING_OF_THEIRS, type Row } from './row.ts';
import { runnerRows } from './runner-rows.ts';

/*
 * Who may read, who may write, and who may know that it is there: every function of the server, asked
 * by everybody. What is not yours is answered as what does not exist.
 */

const rows: readonly Row[] = [...groupRows, ...runnerRows, ...houseRows, ...demoRows];

/** Migrations run at start, from `migrate` alone; that no page reaches them is looked at below. */
const files = import.meta.glob<Record<string, unknown>>(
	['/src/lib/server/**/*.ts', '!/src/lib/server/database/migrations/**'],
	{ eager: true }
);
/** Whatever a request goes through before it comes to the server's functions. */
const sources = import.meta.glob<string>(
	['/src/routes/**/*.ts', '/src/perimeter/*.ts', '/src/hooks.server.ts'],
	{ eager: true, query: '?raw', import: 'default' }
);

/** Every exported function by file and name; one that a second file hands on counts once. */
function functionsOfTheServer(): string[] {
	const found = new Map<unknown, string>();
	for (const [path, exported] of Object.entries(files)) {
		const file = path.slice('/src/lib/server/'.length, -'.ts'.length);
		for (const [name, part] of Object.entries(exported)) {
			const isFunction = typeof part === 'function' && !String(part).startsWith('class');
			const isOwn = !found.has(part) || isDefinedIn(path, name);
			if (isFunction && isOwn) found.set(part, `${file}.${name}`);
		}
	}
	return [...found.values()];
}

const texts = import.meta.glob<string>('/src/lib/server/**/*.ts', {
	eager: true,
	query: '?raw',
	import: 'default'
});
const isDefinedIn = (path: string, name: string) =>
	new RegExp(`^export (async )?(function|const) ${name}\\b`, 'm').test(texts[path] ?? '');

describe('the table of walls', () => {
	const known = functionsOfTheServer();

	it('finds the functions of the server', () => {
		expect(known.length).toBeGreaterThan(150);
		expect(known).toEqual(expect.arrayContaining(['members.list', 'results.newest', 'gate.gate']));
		// In its folders as well.
		expect(known).toEqual(
			expect.arrayContaining(['demo/load.loadDemo', 'database/migrate.migrate'])
		);
	});

	it('has a line for every function, or the reason why nobody asks it', () => {
		const listed = new Set([...rows.map(functionOf), ...Object.keys(noPerson)]);
		const missing = known.filter((name) => !listed.has(name));
		expect(missing, 'say in tests/server/walls for whom each is').toEqual([]);
	});

	it('has no line for what is not there', () => {
		const listed = [...rows.map(functionOf), ...Object.keys(noPerson)];
		expect(listed.filter((name) => !known.includes(name))).toEqual([]);
		expect(rows.map(functionOf).filter((name) => name in noPerson)).toEqual([]);
	});

	it('keeps what is asked behind a wall out of the pages', () => {
		const inner = Object.keys(noPerson).filter((name) => noPerson[name] === 'inner');
		const called = inner.filter((name) => {
			const [file = '', exported = ''] = name.split('.');
			const noun = (file.split('/').at(-1) ?? '').replaceAll(/-(\w)/g, (_, letter: string) =>
				letter.toUpperCase()
			);
			const use = new RegExp(
				`\\b${noun}\\.${exported}\\(|\\{[^}]*\\b${exported}\\b[^}]*\\}.*server/${file}\\.ts`
			);
			return Object.values(sources).some((text) => use.test(text));
		});
		expect(called).toEqual([]);
	});

	it('keeps the database itself out of the pages: a page has types of it alone', () => {
		const reached = Object.entries(sources).filter(([, text]) =>
			/^import (?!type\b).*server\/database\//m.test(text)
		);
		expect(reached.map(([path]) => path)).toEqual([]);
	});
});

describe.each(DATABASES)('walls on %s', (type) => {
	const here = inHouse(type);
	let world: World | null = null;

	// Hundreds of small worlds are made and thrown away: none has to wait for the disk.
	beforeAll(async () => {
		if (type === 'sqlite') await sql`pragma synchronous = off`.execute(here.database);
	});

	/** The same as before where nothing was changed in it. */
	async function worldFor({ first }: Row): Promise<World> {
		world ??= await makeWorld(here);
		const made = world;
		if (first !== undefined) {
			world = null;
			await first(made);
		}
		return made;
	}

	it.each(rows.map((row) => [row.name, row] as const))('%s', async (_, row) => {
		let to = await worldFor(row);
		let before = await rowsOfTheirs(to);
		// Those who own nothing of it are looked at together: the database is read as a whole.
		for (const people of [strangers, ['runner'], ['owner']] as const) {
			const shutOut = people.filter((one) => isShutTo(row, one));
			for (const person of shutOut) await isRefused(row, person, to);
			if (shutOut.length === 0) continue;
			const after = await rowsOfTheirs(to);
			const changed = changesBetween(before, after, to, shutOut[0] ?? 'nobody');
			expect(changed, `${shutOut.join(' or ')} changes`).toEqual([]);
			before = after;
		}
		for (const person of row.open) {
			const answer = await answerOf(row, person, to);
			const after = await rowsOfTheirs(to);
			const isChanged = asText(after) !== asText(before);
			if ('gets' in row) expect(answer, person).toEqual(row.gets);
			else {
				const sees = to.marks.some((mark) => asText(answer).includes(mark));
				expect(sees || isChanged, `${person} reads it, or changes it: ${asText(answer)}`).toBe(
					true
				);
			}
			if (!isChanged) continue;
			world = null;
			to = await worldFor(row);
			before = await rowsOfTheirs(to);
		}
	});
});

const strangers: readonly Person[] = ['nobody', 'otherRunner', 'helper', 'otherCoach', 'host'];

/** Asked where it is, and through a group of their own: the answer says nothing of what is not theirs. */
async function isRefused(row: Row, person: Person, to: World): Promise<void> {
	const answer = await answerOf(row, person, to);
	const refusal = row.but && person in row.but ? row.but[person] : row.shut;
	if (refusal !== NOTHING_OF_THEIRS) expect(answer, person).toEqual(refusal);
	const elsewhere = await answerOf(row, person, { ...to, at: to.askedFromElsewhere });
	const text = asText([answer, elsewhere]);
	const told = to.marks.filter((mark) => text.includes(mark) && !isOf(to, person, mark));
	expect(told, `${person} reads`).toEqual([]);
}

const functionOf = ({ name }: Row) => name.split(':')[0] ?? '';

const isShutTo = ({ open, among = persons }: Row, person: Person) =>
	among.includes(person) && !open.includes(person);

/** A person of the group may be told who they are themselves. */
const isOf = ({ acting }: World, person: Person, mark: string) => acting[person].id === mark;

/** What it answers, or the name of what it throws. */
async function answerOf({ call }: Row, person: Person, to: World): Promise<unknown> {
	try {
		return await call(to.acting[person], to);
	} catch (error) {
		return { thrown: error instanceof Error ? error.name : 'something' };
	}
}
