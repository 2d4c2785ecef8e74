import type { APIRequestContext } from '@playwright/test';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { plusDays, todayIn } from './days.ts';
import type { House } from './house.ts';
import { expect, LanternStreet, inHouseOfItsOwn } from './lantern-street.ts';
import { didAnOuting } from './past-outing.ts';
import { Phone } from './phone.ts';
import { routes } from './routes.ts';
import { rowsOf } from './rows.ts';
import { leaves, sentData } from './sent-data.ts';
import { leadsTo, type Answers } from './walk.ts';

// What a coach never sees, on any page of theirs, of a group that has everybody. Our own rules, no
// source. People are invented.

const test = inHouseOfItsOwn();

test.describe.configure({ timeout: 240_000 });

/** Ages, a pulse at rest and a limit in beats that no other number here comes near. */
const RESTING = 43;
const LIMIT = 193;
const answers = {
	Ines: { ...leadsTo.mayRun, 'age.years': 71 },
	Dagny: { ...leadsTo.settlingIn, 'age.years': 37 },
	Tobias: { ...leadsTo.mayWalk, 'age.years': 73 },
	Rashid: { ...leadsTo.byTalk, 'age.years': 74 },
	Pia: { ...leadsTo.mayRun, 'age.years': 76 },
	Noor: { ...leadsTo.askFirst, 'age.years': 72 },
	Gwen: { ...leadsTo.askFirst, 'age.years': 69 },
	Vera: { ...leadsTo.askToday, 'age.years': 68 },
	Ivo: { ...leadsTo.notToday, 'age.years': 67 },
	Oren: { ...leadsTo.askAboutInjury, 'age.years': 66 },
	Emma: { ...leadsTo.mayRun, 'age.years': 64 },
	Lev: { ...leadsTo.mayRun, 'age.years': 63 },
	Mei: { ...leadsTo.mayRun, 'age.years': 61 },
	Una: { ...leadsTo.mayRun, 'age.years': 47 },
	Viktor: { ...leadsTo.mayRun, 'age.years': 53 }
} satisfies Record<string, Answers>;
/** What two of them told about themselves: a capacity follows, from questions and from a laboratory. */
const aboutThem: Readonly<Record<string, Readonly<Record<string, string>>>> = {
	Una: { sex: 'woman', heightCentimetres: '203.5', weightKilograms: '141.5', activityLevel: '6' },
	Viktor: { sex: 'man', supervisedCapacity: '31.4', supervisedMaximumBpm: '211' }
};
const EXPIRED: Answers = { 'age.years': 58 };

const notToday = ['Gwen', 'Vera', 'Ivo', 'Oren', 'Emma', 'Lev'] as const;
const answerAgain = ['Mei', 'Xaver'] as const;

const ages = [...Object.values(answers), EXPIRED].map((one) => Number(one['age.years']));
const thisYear = Number(todayIn('UTC').slice(0, 4));
const years = ages.flatMap((age) => [thisYear - age, thisYear - age - 1]);
/** The maximum that follows from an age: Tanaka 2001, 208 minus 0.7 for each year. */
const maxima = ages.map((age) => 208 - 0.7 * age);
/** Dagny's age, and so her maximum, are like other numbers of such a page. */
const secrets = [
	...ages.filter((age) => age > 40),
	...years,
	RESTING,
	LIMIT,
	203.5,
	141.5,
	31.4,
	211
];

const forbidden: readonly RegExp[] = [
	/\b(CLEARED_\w+|SEEK_ADVICE|EMERGENCY|WAIT|NOT_ELIGIBLE|INCOMPLETE|NO_RESULT|RESCREEN|EXPIRED)\b/,
	/\b[RHSACG]-[A-Z]{3,}/,
	/\b(age|plan|act|ill|signs|chest|dizzy|faint|joint|recent|limits|cond|heart|bp|meds|preg)\.[a-z]+/,
	/walkOnlyByPain|ageYears|reasonIds|restingBpm|maximumBpm|runnerId/,
	/\bread(y|iness)\b/i,
	/years old|\bage\b|\bborn\b/i,
	/medicin|beta.?block|tablet for|blood pressure|diabet|insulin|asthma|pregnan/i,
	/\b(ankles?|shin|ill today|illness)\b/i,
	/midwife|physiotherap|pharmac|professional|\bnurses?\b/i
];
const wordIn = (text: string) =>
	forbidden.map((pattern) => pattern.exec(text)).find((hit) => hit !== null) ?? null;

const keyNames =
	/age|birth|born|reason|answer|question|medic|resting|maximum|capacity|status|code$|ruleset|sex$|weight|height|sign(s|$)|pain|limitBpm|pulseOff|covers|event|basis/i;
/** Keys that look like one of those, and what they are. */
const harmless: Readonly<Record<string, string>> = {
	restingSpread: 'how unsure a picture is, in hundredths of the reserve',
	maximumSpread: 'the same',
	capacity: 'none here; whole millilitres, which the speeds beside it tell as well'
};

/** Where a capacity comes from. */
const bases = ['measured', 'past-outings', 'mile-walk', 'walk-check', 'questions'];

/** A number by itself: no part of an id, of a decimal or of a longer number. */
const alone = (number: number) => new RegExp(`(?<![\\w.,:-])${number}(?![\\w:-]|[.,]\\d)`);

const drawn = / (?:d|points|x|y|[xyc][12xy]|r|width|height|viewBox|style|class|transform)="[^"]*"/g;
/** The page as it is read, with every attribute but those of drawings, without files of the app. */
const readable = (page: string) =>
	page
		.replace(/<script[\s\S]*?<\/script>/g, ' ')
		.replace(/<link[^>]*>/g, ' ')
		.replaceAll(drawn, ' ');

/** Expected shares of the reserve of the group or a runner, 0 to 100: any number may stand there. */
const groupShares = /\/outings\/[\w-]+(\?runner=.*)?$/;

const UNITS = { speedUnits: 'km/h', paceUnits: 'min/km' };

interface Place {
	readonly lantern: LanternStreet;
	readonly outing: string;
	readonly members: readonly string[];
}

const ofGroup = (part: string) => (at: Place) => [at.lantern.path + part];
const ofMember = (part: string) => (at: Place) =>
	at.members.map((id) => `${at.lantern.path}/members/${id}${part}`);
/** Without anybody of a group on it: nothing is asked of the house. */
const nobody = (path: string) => () => [path];

/** Every route of the desk, with all its addresses: a new one has to be told here. */
const addresses: Readonly<Record<string, (at: Place) => readonly string[]>> = {
	'/coach': nobody('/coach'),
	'/coach/new': nobody('/coach/new'),
	'/coach/account': nobody('/coach/account'),
	'/coach/sign-up': nobody('/coach/sign-up'),
	'/coach/sign-in': nobody('/coach/sign-in'),
	'/coach/forgot': nobody('/coach/forgot'),
	'/coach/reset': nobody('/coach/reset'),
	'/coach/gone': nobody('/coach/gone'),
	'/coach/invited/[token]': nobody('/coach/invited/none'),
	'/coach/[group]': ofGroup(''),
	'/coach/[group]/attendance': ofGroup('/attendance'),
	'/coach/[group]/contact/[member]': (at) =>
		at.members.map((id) => `${at.lantern.path}/contact/${id}`),
	'/coach/[group]/export.csv': ofGroup('/export.csv'),
	'/coach/[group]/export.json': ofGroup('/export.json'),
	'/coach/[group]/import': ofGroup('/import'),
	'/coach/[group]/invite': ofGroup('/invite'),
	'/coach/[group]/members/[member]': ofMember(''),
	'/coach/[group]/members/[member]/bands': ofMember('/bands'),
	'/coach/[group]/bands': (at) =>
		['warm-up-walk', 'brisk-walk', 'steady-run', 'recovery-walk', 'cool-down-walk'].map(
			(part) => `${at.lantern.path}/bands?part=${part}`
		),
	'/coach/[group]/print': ofGroup('/print'),
	'/coach/[group]/cards': ofGroup('/cards'),
	'/coach/[group]/wall': ofGroup('/wall'),
	'/coach/[group]/stop-signs': ofGroup('/stop-signs'),
	'/coach/[group]/cues': (at) =>
		['', `?day=${plusDays(todayIn('Europe/Dublin'), 2)}`].map(
			(which) => `${at.lantern.path}/cues${which}`
		),
	'/coach/[group]/outings': ofGroup('/outings'),
	'/coach/[group]/outings/[outing]': (at) => [
		at.outing,
		...at.members.map((id) => `${at.outing}?runner=${id}`)
	],
	'/coach/[group]/programme': ofGroup('/programme'),
	'/coach/[group]/programme/new': ofGroup('/programme/new'),
	'/coach/[group]/settings': ofGroup('/settings')
};

/**
 * Signs to stop, and what to ask about after an outing, are the same for everybody. They stand on
 * their sheet, on the back of cards, and where a programme is made. An invitation names what no page
 * shows.
 */
const generalWords = /\/(stop-signs|cards|cues(\?day=.*)?|programme\/new|invite)$/;

test('every route of the desk is looked at', () => {
	const ofDesk = routes.map(({ id }) => id).filter((id) => /^\/coach(\/|$)/.test(id));
	expect(Object.keys(addresses).sort()).toEqual(ofDesk.sort());
});

test('no page of a coach tells an age, a reason, an answer, a medicine or a pulse at rest', async ({
	house,
	stranger
}) => {
	const at = await everybody(house, stranger);
	const { coach } = at.lantern;
	const found: string[] = [];
	for (const [id, of] of Object.entries(addresses)) {
		const isPage = routes.find((route) => route.id === id)?.isPage === true;
		for (const path of of(at)) {
			found.push(...(await inPage(coach, path)), ...(isPage ? await inData(coach, path) : []));
		}
	}
	expect([...new Set(found)]).toEqual([]);
});

test('what is not for today is one state, in the roster’s data, on the runner’s page and on that of their bands', async ({
	house,
	stranger
}) => {
	const { lantern } = await everybody(house, stranger);
	const { coach, path } = lantern;
	const idOf = (name: string) => lantern.runners.get(name)?.memberId ?? '';
	const plain = (text: string, name: string) =>
		text.replaceAll(idOf(name), 'ID').replaceAll(name, 'NAME');
	const lists: unknown[] = [];
	for (const part of ['', '/bands', '/attendance', '/cards', '/programme']) {
		const data = await coach.get(`${path}${part}/__data.json`);
		expect(data.status(), part).toBe(200);
		lists.push(sentData(await data.text()));
	}
	const rows = (name: string) => plain(JSON.stringify(about(lists, idOf(name))), name);
	const seen = async (name: string, part: string) => {
		const answer = await coach.get(`${path}/members/${idOf(name)}${part}`);
		expect(answer.status(), name + part).toBe(200);
		return plain(await answer.text(), name).replaceAll(/nonce="[^"]*"|nonce-[\w+/=]+/g, '');
	};
	const everything = async (name: string) => ({
		rows: rows(name),
		page: await seen(name, ''),
		data: await seen(name, '/__data.json'),
		bands: await seen(name, '/bands'),
		bandsData: await seen(name, '/bands/__data.json')
	});
	for (const [first, ...others] of [notToday, answerAgain]) {
		const one = await everything(first);
		expect(one.rows).toContain(first === 'Gwen' ? '"not-today"' : '"answer-again"');
		for (const name of others) expect(await everything(name), name).toEqual(one);
	}
});

/** Everything that names somebody: the objects of which a part is the id. */
function about(value: unknown, id: string): readonly unknown[] {
	if (typeof value !== 'object' || value === null) return [];
	const parts = Object.values(value);
	return [...(parts.includes(id) ? [value] : []), ...parts.flatMap((part) => about(part, id))];
}

async function inPage(coach: Phone, path: string): Promise<readonly string[]> {
	const page = await coach.get(path);
	expect([200, 303, 404], path).toContain(page.status());
	const text = readable(await page.text());
	const words = generalWords.test(path) ? null : wordIn(text);
	const numbers = groupShares.test(path) ? [] : secrets.map((one) => alone(one).exec(text));
	return [words, ...numbers].flatMap((hit) => (hit ? [`${path}: ${around(text, hit)}`] : []));
}

async function inData(coach: Phone, path: string): Promise<readonly string[]> {
	const [bare, query = ''] = path.split('?');
	const data = await coach.get(`${bare}/__data.json?${query}`);
	if (data.status() !== 200) return [];
	const all = sentData(await data.text()).flatMap((node) => leaves(node));
	const wrong = all.filter(({ at, leaf }) => {
		const key = at.split('.').at(-1)?.replaceAll('[]', '') ?? '';
		const isKey = keyNames.test(key) && harmless[key] === undefined;
		const isSaid = !generalWords.test(path) && wordIn(String(leaf)) !== null;
		// All the digits of a share would tell a pulse at rest and a maximum, and so an age.
		const isExact = typeof leaf === 'number' && !/^-?\d+(\.\d{1,2})?$/.test(String(leaf));
		const isBasis = typeof leaf === 'string' && bases.includes(leaf);
		const isSecret = typeof leaf === 'number' && [...secrets, ...maxima].includes(leaf);
		return isKey || isSaid || isExact || isBasis || isSecret;
	});
	return wrong.map(({ at, leaf }) => `${path} data${at}: ${String(leaf)}`);
}

const around = (text: string, found: RegExpExecArray) =>
	text.slice(Math.max(0, found.index - 60), found.index + 60).replaceAll(/\s+/g, ' ');

/** A group with a runner of every outcome. */
async function everybody(house: House, stranger: () => Promise<APIRequestContext>): Promise<Place> {
	// Xaver answered long ago, when the clock said so.
	await house.reopen({ daysAhead: -380 });
	const xaver = new Phone(await stranger(), house.url);
	await xaver.screen(EXPIRED);
	await house.reopen({ env: { ADDRESS_HEADER: 'x-phone-address' } });
	const lantern = await LanternStreet.found(new Phone(await stranger(), house.url));
	const { coach, path } = lantern;
	const today = todayIn(Intl.DateTimeFormat().resolvedOptions().timeZone);

	for (const [name, told] of Object.entries(answers)) {
		const phone = new Phone(await stranger(), house.url);
		await phone.screen(told);
		await phone.send('/bands/resting-pulse?/add', { beats: RESTING, seconds: 60, on: today });
		const more = aboutThem[name];
		if (more) await phone.lead('/bands/about-you', { name, ...UNITS, ...more });
		await phone.lead(lantern.link, { name, agree: 'yes' });
		lantern.runners.set(name, { phone, memberId: '' });
	}
	await xaver.lead(lantern.link, { name: 'Xaver', agree: 'yes' });
	lantern.runners.set('Xaver', { phone: xaver, memberId: '' });
	const begun = new Phone(await stranger(), house.url);
	await begun.begin();
	await begun.lead(lantern.link, { name: 'Bea', agree: 'yes' });
	lantern.runners.set('Bea', { phone: begun, memberId: '' });
	await coach.lead(`${path}?/add`, { name: 'Bram' });

	const roster = await (await coach.get(path)).text();
	for (const [name, { phone }] of lantern.runners) {
		const memberId = new RegExp(`/members/([\\w-]+)"[^>]*><bdi[^>]*>${name}<`).exec(roster)?.[1];
		expect(memberId, `${name} is on the list`).toBeTruthy();
		lantern.runners.set(name, { phone, memberId: memberId ?? '' });
	}
	const phoneOf = (name: string) => lantern.runners.get(name)?.phone ?? begun;

	const said = { role: 'doctor', covers: 'R-SIGN-ANKLES', scope: 'all', limitBpm: LIMIT };
	const byMidwife = { role: 'midwife', covers: 'R-AGE-45', scope: 'walk', limitBpm: '' };
	for (const [name, words] of [
		['Noor', said],
		['Tobias', byMidwife]
	] as const) {
		const known = rowsOf(house, 'advice').map(({ id }) => id);
		await phoneOf(name).lead('/screening/advice?/record', { ...words, givenOn: today });
		const added = rowsOf(house, 'advice').filter(({ id }) => !known.includes(id));
		expect(added, name).toHaveLength(1);
		const path = `${lantern.bandsOf(name)}?/confirm`;
		await coach.send(path, { advice: String(added[0]?.id) });
		const confirmed = rowsOf(house, 'advice_confirmation').map((row) => row['advice_id']);
		expect(confirmed, name).toContain(added[0]?.id);
	}
	await didAnOuting(phoneOf('Pia'), { more: [{ kind: 'pain', level: 'new', where: 'shin' }] });
	await phoneOf('Emma').lead('/screening?/answer', { urgent: 'chest' });
	await phoneOf('Mei').send('/screening/change', { sure: 'yes' });
	spoil(house, await runnerOf(phoneOf('Lev')));

	const outing = await coach.lead(`${path}/outings?/make`);
	await coach.lead(`${outing}?/plan`, { onDate: plusDays(todayIn('Europe/Dublin'), 2) });
	await coach.lead(`${path}?/start`);
	const members = rowsOf(house, 'member')
		.filter(({ group_id }) => group_id === lantern.groupId)
		.map(({ id }) => String(id));
	expect(members).toHaveLength(lantern.runners.size + 1);
	return { lantern, outing, members };
}

const runnerOf = async (phone: Phone) =>
	((await (await phone.get('/account/export')).json()) as { runnerId: string }).runnerId;

/** Damages the result of somebody, as a bad disk would: it is closed, and by us. */
function spoil({ dataFolder }: House, runnerId: string): void {
	const database = new DatabaseSync(join(dataFolder, 'breathmark.sqlite'), { timeout: 5000 });
	database
		.prepare(`update screening_result set sealed = 'spoilt' where runner_id = ?`)
		.run(runnerId);
	database.close();
}
