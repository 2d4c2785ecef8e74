import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { addDays, localDate } from '$lib/calendar/local-date.ts';
import * as adviceConfirmations from '$lib/server/advice-confirmations.ts';
import * as coachInvitations from '$lib/server/coach-invitations.ts';
import * as coaches from '$lib/server/coaches.ts';
import { demoOf, demoUsers, isEmptyHouse } from '$lib/server/demo/demo.ts';
import { loadDemo } from '$lib/server/demo/load.ts';
import { mayLoad } from '$lib/server/demo/may-change.ts';
import type { DemoPerson } from '$lib/server/demo/people.ts';
import { removeDemo } from '$lib/server/demo/remove.ts';
import { readEnvironment } from '$lib/server/environment.ts';
import * as groups from '$lib/server/groups.ts';
import * as houseSettings from '$lib/server/house-settings.ts';
import * as members from '$lib/server/members.ts';
import * as roster from '$lib/server/roster.ts';
import { openVault, VaultClosed } from '$lib/server/vault.ts';
import { lanternStreet } from '$words/demo.ts';
import { askedFrom } from './asked-from.ts';
import { Browser } from './browser.ts';
import { from, signedIn, words } from './coach.ts';
import { DATABASES, freshKey, inHouse, NOW, type InHouse } from './in-house.ts';

// Our own rules, no source.

const load = (here: InHouse, now = NOW) => loadDemo(here, lanternStreet, now);

/** Every row of every table as text, but for the migrations' own. */
async function everything({ database }: InHouse): Promise<Record<string, string[]>> {
	const tables = await database.introspection.getTables();
	const rows = tables
		.filter(({ name }) => !name.startsWith('kysely_'))
		.map(async ({ name }) => {
			const all = await sql`select * from ${sql.table(name)}`.execute(database);
			return [name, all.rows.map((row) => JSON.stringify(row)).sort()] as const;
		});
	return Object.fromEntries(await Promise.all(rows));
}

/** Where four weeks of a group leave something. */
const FILLED = [
	'advice',
	'attendance',
	'member_step',
	'member_step_change',
	'outing_plan',
	'outing_plan_version',
	'past_entry',
	'past_outing',
	'planned_outing',
	'programme',
	'runner_pain',
	'walk'
];

async function odile({ database }: InHouse) {
	const coach = await coaches.find(database, (await demoUsers(database)).get('odile') ?? '');
	const [group] = coach ? await groups.list(database, coach.coachId) : [];
	if (!coach || !group) throw new Error('no coach');
	return { coach, group };
}

describe.each(DATABASES)('the made-up group on %s', (type) => {
	const here = inHouse(type);

	it('is what it is said to be, by the rules of real runners, on any day of the year', async () => {
		for (const now of [NOW, Date.UTC(2027, 5, 30, 23, 30), Date.UTC(2027, 9, 31, 0, 30)]) {
			expect(await load(here, now)).toBe('loaded');
			const { coach, group } = await odile(here);
			const rows = await roster.of(here.database, here.vault, { coach, group }, now);
			expect(Object.fromEntries(rows.map(({ name, state }) => [name, state.word]))).toEqual({
				Dagny: 'may-walk',
				Gwen: 'not-today',
				Ines: 'may-run',
				'Mei-Lin': 'may-run',
				Pavel: 'may-run',
				Rashid: 'may-run-by-talk',
				Tobias: 'may-walk'
			});
			const until = (who: string) => {
				const state = rows.find(({ name }) => name === who)?.state;
				return state?.open ? [state.validUntil, state.settlingInUntil] : null;
			};
			const nineDaysOn = addDays(localDate(now, group.timeZone), 9);
			expect(until('Pavel')).toEqual([nineDaysOn, null]);
			expect(until('Ines')?.[1]).toBeNull();
			await removeDemo(here.database);
		}
	});

	it('gives whoever is over 45 and may run advice that the coach confirmed', async () => {
		await load(here);
		const { coach, group } = await odile(here);
		const { database, vault } = here;
		const confirmed: string[] = [];
		for (const { id, name } of await members.list(database, coach.coachId, group.id)) {
			const seen = await adviceConfirmations.list(database, vault, coach.coachId, group.id, id);
			if (seen?.some(({ confirmedBy }) => confirmedBy.length === 1)) confirmed.push(name);
		}
		expect(confirmed).toEqual(['Ines', 'Rashid']);
		await removeDemo(database);
	});

	it('goes with everything that was done in it: every table is as before', async () => {
		const before = await everything(here);
		await load(here);
		const there = await everything(here);
		for (const table of FILLED) expect(there[table]?.length, table).toBeGreaterThan(0);
		const { coach, group } = await odile(here);
		const { database } = here;
		const browser = new Browser(database);
		await browser.auth.lookAs('ines', browser.headers());
		const ines = await browser.auth.session(browser.headers());
		await browser.auth.createDeviceCode(ines?.runnerId ?? '', NOW);
		await houseSettings.setSignUp(database, coach.coachId, 'open');
		await coachInvitations.create(database, coach.coachId, group.id, NOW);
		const { name: _, ...fields } = group;
		await groups.create(database, coach.coachId, { ...fields, name: 'A second one' }, NOW);
		expect((await groups.list(database, coach.coachId)).map(({ isDemo }) => isDemo)).toEqual([
			true,
			true
		]);
		await removeDemo(database);
		expect(await everything(here)).toEqual(before);
		expect(await isEmptyHouse(database)).toBe(true);
		// Twice changes nothing.
		await removeDemo(database);
		expect(await everything(here)).toEqual(before);
	});

	it('comes in once, and never beside somebody real', async () => {
		const both = await Promise.all([load(here), load(here)]);
		expect(both.sort()).toEqual(['already', 'loaded']);
		expect((await demoUsers(here.database)).size).toBe(8);
		await removeDemo(here.database);

		const real = await here.stranger();
		const before = await everything(here);
		expect(await load(here)).toBe('not-empty');
		expect(await everything(here)).toEqual(before);
		await removeDemo(here.database);
		expect(await everything(here)).toEqual(before);
		await here.database.deleteFrom('user').where('id', '=', real).execute();
	});

	it('leaves nothing behind when the key is wrong, or when it breaks off', async () => {
		const before = await everything(here);
		const wrong = await openVault(here.database, freshKey());
		const shut = loadDemo({ ...here, vault: wrong }, lanternStreet, NOW);
		await expect(shut).rejects.toThrow(VaultClosed);
		const tooLong = { ...lanternStreet.contacts[0], name: 'x'.repeat(61) };
		const broken = { ...lanternStreet, contacts: [tooLong] };
		await expect(loadDemo(here, broken, NOW)).rejects.toThrow();
		expect(await everything(here)).toEqual(before);
	});

	it('keeps everybody real out: no account, no sign-up, not even by an invitation', async () => {
		await load(here);
		const browser = new Browser(here.database);
		await expect(browser.auth.signInAnonymous(browser.headers())).rejects.toThrow();
		const { coach } = await odile(here);
		await houseSettings.setSignUp(here.database, coach.coachId, 'open');
		const invited = await coachInvitations.create(here.database, coach.coachId, null, NOW);
		expect(invited).not.toBeNull();
		for (const invitation of [null, invited?.token ?? '']) {
			const said = words('bram@example.org');
			expect(await browser.auth.signUpCoach(said, invitation, from(browser))).toBe('closed');
		}
		expect(await here.database.selectFrom('user').select('id').execute()).toHaveLength(8);
		await removeDemo(here.database);
	});

	it('is seen as each of its people, and back', async () => {
		await load(here);
		const madeUp = await demoUsers(here.database);
		const browser = new Browser(here.database);
		for (const [person, userId] of madeUp) {
			expect(await browser.auth.lookAs(person, browser.headers())).toBe(true);
			const { runner, coach } = await browser.auth.asking(browser.headers());
			expect(runner?.runnerId ?? coach?.coachId).toBe(userId);
			expect((await demoOf(here.database, userId))?.as).toBe(person);
			// One session a browser.
			expect(await here.database.selectFrom('session').select('id').execute()).toHaveLength(1);
		}
		await removeDemo(here.database);
		expect(await browser.auth.asking(browser.headers())).toEqual({ runner: null, coach: null });
	});

	it('opens no account but its own, whatever is sent, and ends no real session', async () => {
		const real = await signedIn(here.database, 'bram@example.org');
		const before = await everything(here);
		const browser = new Browser(here.database);
		const tries: readonly string[] = [real.coachId, 'bram@example.org', 'odile', 'ines', '', '%'];
		for (const person of tries) {
			expect(await browser.auth.lookAs(person, browser.headers())).toBe(false);
		}
		expect(browser.jar.size).toBe(0);
		expect(await everything(here)).toEqual(before);
		// Even where a row says that there is a made-up group, a real account is none of its people.
		await here.database
			.insertInto('house_setting')
			.values({ name: 'demo', value: 'whole' })
			.execute();
		for (const person of tries) {
			expect(await browser.auth.lookAs(person, browser.headers())).toBe(false);
		}
		const made = await here.stranger();
		const as: DemoPerson = 'ines';
		await here.database.insertInto('demo_person').values({ user_id: made, person: as }).execute();
		expect(await real.browser.auth.lookAs(as, real.browser.headers())).toBe(false);
		expect((await real.browser.auth.asking(real.browser.headers())).coach).not.toBeNull();
		await removeDemo(here.database);
		expect((await real.browser.auth.asking(real.browser.headers())).coach).not.toBeNull();
		await here.database.deleteFrom('user').execute();
		await here.database.deleteFrom('house_setting').execute();
	});

	it('is offered on the computer of the server alone, and only where nobody is', async () => {
		const local = { ...here, environment: readEnvironment({}) };
		const reachable = {
			...here,
			environment: readEnvironment({ ORIGIN: 'https://run.example.org' })
		};
		const proxied = {
			...here,
			environment: readEnvironment({ ADDRESS_HEADER: 'X-Forwarded-For' })
		};
		const home = askedFrom('127.0.0.1');
		expect(await mayLoad(local, home)).toBe(true);
		expect(await mayLoad(local, askedFrom('127.0.0.1', 'https://run.example.org'))).toBe(false);
		expect(await mayLoad(local, askedFrom('192.168.1.7'))).toBe(false);
		expect(await mayLoad(reachable, home)).toBe(false);
		expect(await mayLoad(proxied, home)).toBe(false);
		await load(here);
		expect(await mayLoad(local, home)).toBe(false);
		await removeDemo(here.database);
		expect(await mayLoad(local, home)).toBe(true);
	});
});
