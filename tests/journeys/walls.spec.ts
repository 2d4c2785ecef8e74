import { randomUUID } from 'node:crypto';
import { expect, test as base, type APIRequestContext } from '@playwright/test';
import { House } from './house.ts';
import { ADDRESS_HEADER } from './lantern-street.ts';
import { ask, isLook, pathOf, type Question, type Told } from './walls/ask.ts';
import { Snapshot } from './walls/snapshot.ts';
import { tabletWalls } from './walls/tablet-walls.ts';
import { anybody, persons, type Ids, type Outcome, type Person, type Walls } from './walls/wall.ts';
import { walls } from './walls/walls.ts';
import { makeWorld, type World } from './walls/world.ts';

// What guards the gate has one try.
base.describe.configure({ retries: 0 });

/*
 * Who may read, who may write, and who may know that it is there: every page, form and address of the
 * app, asked by everybody. What is not yours is answered as what does not exist. That the table has a
 * line for each is looked at in tests/server/walls/routes.test.ts. Our own rules, no source.
 */

interface Here {
	readonly url: string;
	readonly world: World;
	readonly snapshot: Snapshot;
}

const test = base.extend<{ here: Here }>({
	here: async ({ playwright }, use) => {
		const house = await House.build({ env: { ADDRESS_HEADER } });
		const opened: APIRequestContext[] = [];
		const world = await makeWorld(house, async () => {
			const extraHTTPHeaders = { [ADDRESS_HEADER]: randomUUID() };
			const context = await playwright.request.newContext({ extraHTTPHeaders });
			opened.push(context);
			return context;
		});
		const snapshot = new Snapshot(house);
		await use({ url: house.url, world, snapshot });
		snapshot.close();
		for (const context of opened) await context.dispose();
		await house.tearDown();
	}
});

const linesOf = (table: Walls) =>
	Object.entries(table).flatMap(([route, ways]) =>
		Object.entries(ways).flatMap(([way, wall]) =>
			// A page can be asked for as its data, too.
			(way === 'page' ? ['page', 'data'] : [way]).map((one) => ({ route, way: one, wall }))
		)
	);
const lines = linesOf(walls);

for (const [title, isThere] of [
	['what is looked at', isLook],
	['what is sent', (way: string) => !isLook(way)]
] as const) {
	test(`the walls of every route: ${title}`, async ({ here }) => {
		test.setTimeout(240_000);
		for (const line of lines.filter(({ way }) => isThere(way))) {
			await keepsItsWalls({ ...line, url: here.url }, here);
		}
	});
}

test('the walls of a tablet while it is shared, in the hands of everybody', async ({ here }) => {
	test.setTimeout(120_000);
	const { world } = here;
	const onTablet: World = {
		...world,
		marks: world.marks.filter((mark) => !world.toldOnTablet.includes(mark)),
		cookies: Object.fromEntries(
			persons.map((one) => [one, `${world.cookies[one]}; ${world.tabletCookie}`])
		) as World['cookies']
	};
	const page = { url: here.url, route: '/tablet/[group]', way: 'page', wall: anybody() };
	const shared = await ask(page, world.ids, onTablet.cookies.nobody);
	expect(shared.text, 'it is on').toContain('Lantern Street beginners');
	for (const line of linesOf(tabletWalls)) {
		await keepsItsWalls({ ...line, url: here.url }, { ...here, world: onTablet });
	}
});

async function keepsItsWalls(question: Question, here: Here) {
	const { wall, route, way } = question;
	const { world, snapshot } = here;
	for (const person of persons) {
		const asked = `${route} ${way} by ${person}`;
		const outcome = wall.gets[person];
		const isInside = wall.inside.includes(person);
		const answer = await ask(question, world.ids, world.cookies[person]);
		const changes = snapshot.changes();
		if (changes.length > 0) snapshot.putBack();

		expect.soft(toldBy(answer), asked).toMatch(expected(outcome, way, world.ids));
		if (!isInside) {
			if (!wall.toldTo?.includes(person)) {
				expect.soft(marksTold(answer, world, person), `${asked}: reads`).toEqual([]);
			}
			expect.soft(ofTheirs(changes, world, person), `${asked}: changes of theirs`).toEqual([]);
			if (outcome !== 'done' && !wall.byLink)
				await isAnsweredAsIfNothingWereThere(question, answer, person, here);
		}
		if (isLook(way)) continue;
		const isChange = isInside && outcome === 'done' && !wall.onlyReads;
		if (isChange) expect.soft(changes.length, `${asked}: changes something`).toBeGreaterThan(0);
		if (outcome !== 'done' || wall.onlyReads) {
			expect.soft(changes.filter(isKept), `${asked}: changes`).toEqual([]);
		}
	}
	if (route.includes('[group]')) await keepsThroughAnotherGroup(question, here);
}

/** Somebody who is shut out cannot tell what is there from what nobody ever made. */
async function isAnsweredAsIfNothingWereThere(
	question: Question,
	real: Told,
	person: Person,
	{ world: { ids, cookies } }: Here
) {
	const none = Object.fromEntries(
		Object.entries(ids).map(([name, id]) => [name, name === 'today' ? id : randomUUID()])
	) as Ids;
	const answer = await ask(question, none, cookies[person]);
	const used = [...Object.values(ids), ...Object.values(none)];
	const plain = (told: Told) =>
		used.reduce((all, id) => all.replaceAll(id, 'an id'), `${toldBy(told)}\n${told.text}`);
	expect
		.soft(plain(real), `${question.route} ${question.way} by ${person}: there or not`)
		.toBe(plain(answer));
}

/** The other coach asks for what is Odile's by way of the group that is their own. */
async function keepsThroughAnotherGroup(question: Question, { world, snapshot }: Here) {
	const ids = { ...world.ids, group: world.otherGroup };
	const answer = await ask(question, ids, world.cookies.otherCoach);
	const changes = snapshot.changes();
	if (changes.length > 0) snapshot.putBack();
	const asked = `${question.route} ${question.way} through another group`;
	expect.soft(answer.status, asked).toBeLessThan(500);
	expect.soft(marksTold(answer, world, 'otherCoach'), asked).toEqual([]);
	expect.soft(ofTheirs(changes, world, 'otherCoach'), asked).toEqual([]);
}

const toldBy = ({ status, to }: Told) => (status === 303 ? `303 ${to}` : String(status));

function expected(outcome: Outcome, way: string, ids: Ids): RegExp {
	const leads = (path: string) => new RegExp(`^303 ${RegExp.escape(path)}$`);
	switch (outcome) {
		case 'done':
		case 'in vain':
			return isLook(way) ? /^200$/ : /^(200|303 .*)$/;
		case 'door':
			return isLook(way) ? leads('/coach/sign-in') : /^403$/;
		case 'gate':
			return isLook(way) ? leads('/screening/result') : /^403$/;
		case '400':
		case '403':
		case '404':
			return new RegExp(`^${outcome}$`);
		default:
			return leads(pathOf(outcome.slice('to '.length), ids));
	}
}

/** What an answer says of theirs, but for what was sent with the question. */
const marksTold = ({ text, to, sent }: Told, world: World, person: Person) =>
	marksFor(world, person).filter((mark) => `${to} ${text}`.includes(mark) && !sent.includes(mark));

const ofTheirs = (changes: readonly string[], world: World, person: Person) =>
	changes.filter((row) => marksFor(world, person).some((mark) => row.includes(mark)));

/** Whoever asks may be told who they are themselves. */
const marksFor = ({ marks, self }: World, person: Person) =>
	marks.filter((mark) => !self[person]?.includes(mark));

/** Tries to sign in are counted, and readings written down for the runner, whatever comes of it. */
const isKept = (change: string) => !/^\S+ \S+ (rateLimit|result_reading):/.test(change);
