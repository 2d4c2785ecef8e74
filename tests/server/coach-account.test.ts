import { beforeAll, describe, expect, it } from 'vitest';
import { signUpForm, signInForm } from '$lib/forms/coach-account.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as coaches from '$lib/server/coaches.ts';
import * as houseSettings from '$lib/server/house-settings.ts';
import { Browser, type Kept } from './browser.ts';
import { from, PASSWORD, words } from './coach.ts';
import { DATABASES, DAY, emptyDatabase, inHouse, NOW } from './in-house.ts';
import { migrate } from '$lib/server/database/migrate.ts';
import { sweep } from '$lib/server/sweep.ts';

// Our own rules, no source, but where one is named. The library reads the real clock.

const SESSION = '__Secure-breathmark.session_token';
const SHORT = '__Secure-breathmark.dont_remember';

const typed = (email: string, password = PASSWORD, stay = true) => ({ email, password, stay });

describe.each(DATABASES)('an empty house on %s', (type) => {
	it('makes its first coach the host, signs them in, and then asks for invitations', async () => {
		const { database, drop } = await emptyDatabase(type);
		await migrate(database);
		const visitor = new Browser(database);
		expect(await houseSettings.signUp(database)).toBe('first');
		expect(await visitor.auth.signUpCoach(words('host@example.org'), null, from(visitor))).toBe(
			'host'
		);
		const { coach, runner } = await visitor.auth.asking(visitor.headers());
		expect(runner).toBeNull();
		expect(await coaches.find(database, coach?.coachId ?? '')).toMatchObject({
			name: 'Odile Marr',
			isHost: true
		});
		expect(await houseSettings.signUp(database)).toBe('invitation');
		const second = new Browser(database);
		expect(await second.auth.signUpCoach(words('b@example.org'), null, from(second))).toBe(
			'closed'
		);
		await drop();
	});

	it('has one host when two come at once', async () => {
		const { database, drop } = await emptyDatabase(type);
		await migrate(database);
		const answers = await Promise.all(
			['a@example.org', 'b@example.org', 'c@example.org'].map((email) => {
				const visitor = new Browser(database);
				return visitor.auth.signUpCoach(words(email), null, from(visitor));
			})
		);
		expect(answers.sort()).toEqual(['closed', 'closed', 'host']);
		const rows = await database.selectFrom('user').select('id').execute();
		expect(rows).toHaveLength(1);
		await drop();
	});
});

describe.each(DATABASES)("a coach's account on %s", (type) => {
	const here = inHouse(type);
	const browser = () => new Browser(here.database);
	const signUp = async (email: string, more = {}) => {
		const visitor = browser();
		return visitor.auth.signUpCoach({ ...words(email), ...more }, null, from(visitor));
	};
	const signIn = async (email: string, password?: string, stay?: boolean) => {
		const visitor = browser();
		const signed = await visitor.auth.signInCoach(typed(email, password, stay), from(visitor));
		return { visitor, signed };
	};

	beforeAll(async () => {
		const visitor = browser();
		await visitor.auth.signUpCoach(words('host@example.org'), null, from(visitor));
		const { coach } = await visitor.auth.asking(visitor.headers());
		await houseSettings.setSignUp(here.database, coach?.coachId ?? '', 'open');
	});

	it('is one, however the capitals of its e-mail are typed', async () => {
		const form = new FormData();
		for (const [field, text] of Object.entries(words(' Ana.Lima@Example.ORG ')))
			form.set(field, text ?? '');
		const read = readForm(form, signUpForm);
		if (!read.ok) throw new Error(JSON.stringify(read.issues));
		expect(read.value.email).toBe('ana.lima@example.org');
		expect(await signUp(read.value.email)).toBe('made');
		const again = readForm(form, signInForm);
		expect(again.ok && again.value.email).toBe('ana.lima@example.org');
		expect((await signIn('ana.lima@example.org')).signed).toHaveProperty('coachId');
	});

	it('keeps a plus sign: what stands after it is another e-mail', async () => {
		await signUp('bo+one@example.org', { name: 'One' });
		await signUp('bo@example.org', { name: 'Two', password: 'another good one' });
		const { signed } = await signIn('bo+one@example.org');
		expect(await coaches.find(here.database, Object(signed).coachId)).toMatchObject({
			name: 'One'
		});
		expect((await signIn('bo@example.org')).signed).toBe('wrong');
	});

	it('does not tell that an e-mail is taken, and does not touch the account', async () => {
		await signUp('cy@example.org');
		expect(await signUp('cy@example.org', { password: 'somebody elses' })).toBe('made');
		expect((await signIn('cy@example.org', 'somebody elses')).signed).toBe('wrong');
		expect((await signIn('cy@example.org')).signed).toHaveProperty('coachId');
	});

	it('does not come to be with a password that is easy to guess', async () => {
		const issue = async (password: string) => signUp('di@example.org', { password });
		expect(await issue('short')).toEqual({ issue: 'too-short' });
		expect(await issue('x'.repeat(129))).toEqual({ issue: 'too-long' });
		expect(await issue('Password-2026')).toEqual({ issue: 'too-common' });
		expect(await issue('di@example.org')).toEqual({ issue: 'is-you' });
		expect((await signIn('di@example.org')).signed).toBe('wrong');
	});

	it('answers alike, and about as slowly, for nobody and for a wrong password', async () => {
		await signUp('ed@example.org');
		const times: Record<string, number[]> = { known: [], unknown: [] };
		for (let round = 0; round < 5; round += 1) {
			for (const [kind, email] of [
				['known', 'ed@example.org'],
				['unknown', 'nobody@example.org']
			] as const) {
				const start = performance.now();
				const { visitor, signed } = await signIn(email, 'not the password');
				times[kind]?.push(performance.now() - start);
				expect(signed).toBe('wrong');
				expect(visitor.jar.size).toBe(0);
				expect(visitor.reports).toEqual([]);
			}
		}
		const middle = (kind: string) => times[kind]?.sort((a, b) => a - b)[2] ?? 0;
		const ratio = middle('unknown') / middle('known');
		expect(ratio).toBeGreaterThan(0.4);
		expect(ratio).toBeLessThan(2.5);
	});

	it('is never a runner, and a runner is never a coach', async () => {
		await signUp('fay@example.org');
		const { visitor } = await signIn('fay@example.org');
		expect(await visitor.auth.session(visitor.headers())).toBeNull();
		const runner = browser();
		const { runnerId } = await runner.auth.signInAnonymous(runner.headers());
		expect((await runner.auth.asking(runner.headers())).coach).toBeNull();
		expect(await coaches.find(here.database, runnerId)).toBeNull();
		// The e-mail of a runner opens nothing: it has no password.
		const { email } = await here.database
			.selectFrom('user')
			.select('email')
			.where('id', '=', runnerId)
			.executeTakeFirstOrThrow();
		expect((await signIn(email)).signed).toBe('wrong');
	});

	it('ends with the window unless they want to stay, and after a day in any case', async () => {
		await signUp('gil@example.org');
		const { visitor, signed } = await signIn('gil@example.org', PASSWORD, false);
		expect(visitor.jar.get(SESSION)?.options['maxAge']).toBeUndefined();
		const ends = async () => {
			const row = await here.database
				.selectFrom('session')
				.select('expiresAt')
				.where('id', '=', Object(signed).sessionId)
				.executeTakeFirstOrThrow();
			return new Date(row.expiresAt).getTime();
		};
		expect(Math.abs((await ends()) - Date.now() - DAY)).toBeLessThan(60_000);
		const before = await ends();
		expect((await visitor.auth.asking(visitor.headers())).coach).toEqual(signed);
		expect(await ends()).toBe(before);
	});

	it('does not shorten the session of whoever comes next in the same browser', async () => {
		await signUp('hal@example.org');
		const { visitor, signed } = await signIn('hal@example.org', PASSWORD, false);
		expect(visitor.jar.has(SHORT)).toBe(true);
		const runner = await visitor.auth.signInAnonymous(visitor.headers());
		expect(visitor.jar.has(SHORT)).toBe(false);
		expect(visitor.jar.get(SESSION)?.options['maxAge']).toBe(400 * 24 * 60 * 60);
		expect(await visitor.auth.session(visitor.headers())).toEqual(runner);
		const row = here.database.selectFrom('session').select('id');
		expect(await row.where('id', '=', Object(signed).sessionId).execute()).toEqual([]);
	});

	it('takes the place of what the browser had, and leaves it alone when it does not open', async () => {
		await signUp('ida@example.org');
		const { visitor, signed } = await signIn('ida@example.org', PASSWORD, false);
		const jar = new Map<string, Kept>(visitor.jar);
		await visitor.auth.signInCoach(typed('ida@example.org', 'not this one'), from(visitor));
		expect(visitor.jar).toEqual(jar);
		expect((await visitor.auth.asking(visitor.headers())).coach).toEqual(signed);
		const again = await visitor.auth.signInCoach(typed('ida@example.org'), from(visitor));
		expect((await visitor.auth.asking(visitor.headers())).coach).toEqual(again);
		expect(visitor.jar.has(SHORT)).toBe(false);
		const row = here.database.selectFrom('session').select('id');
		expect(await row.where('id', '=', Object(signed).sessionId).execute()).toEqual([]);
	});

	it('signs out, and a copy of the cookie opens nothing', async () => {
		await signUp('jo@example.org');
		const { visitor } = await signIn('jo@example.org', PASSWORD, false);
		const copy = visitor.headers();
		await visitor.auth.signOut(copy);
		expect(visitor.jar.size).toBe(0);
		expect((await browser().auth.asking(copy)).coach).toBeNull();
	});

	it('is slowed down by wrong passwords from one address, and opens again later', async () => {
		await signUp('kim@example.org');
		const at = async (now: number, address: string, password: string) => {
			const visitor = browser();
			const { signed } = {
				signed: await visitor.auth.signInCoach(
					typed('kim@example.org', password),
					from(visitor, now, address)
				)
			};
			return signed;
		};
		for (let i = 0; i < 10; i += 1)
			expect(await at(NOW, '192.0.2.60', 'wrong wrong')).toBe('wrong');
		expect(await at(NOW, '192.0.2.60', PASSWORD)).toBe('too-many');
		expect(await at(NOW, '192.0.2.61', PASSWORD)).toHaveProperty('coachId');
		expect(await at(NOW + 15 * 60_000, '192.0.2.60', PASSWORD)).toHaveProperty('coachId');
		// Nothing that is counted names an e-mail or an address.
		const keys = await here.database.selectFrom('rateLimit').select('key').execute();
		expect(keys.map(({ key }) => key).join()).not.toMatch(/@|192\.0/);
	});

	it('is not made more than twenty times an hour from one address', async () => {
		const at = async (email: string, address: string, now = NOW) => {
			const visitor = browser();
			return visitor.auth.signUpCoach(words(email), null, from(visitor, now, address));
		};
		for (let i = 0; i < 20; i += 1) {
			expect(await at(`many${i}@example.org`, '192.0.2.80')).not.toBe('too-many');
		}
		expect(await at('more@example.org', '192.0.2.80')).toBe('too-many');
		expect(await at('more@example.org', '192.0.2.81')).not.toBe('too-many');
		expect(await at('more@example.org', '192.0.2.80', NOW + 61 * 60_000)).not.toBe('too-many');
	});

	it('is not guessed from many addresses at once', async () => {
		await signUp('lu@example.org');
		const answers = new Set<unknown>();
		for (let i = 0; i < 51; i += 1) {
			const visitor = browser();
			const there = from(visitor, NOW, `198.51.100.${i}`);
			answers.add(await visitor.auth.signInCoach(typed('lu@example.org', 'wrong wrong'), there));
		}
		expect(answers).toEqual(new Set(['wrong', 'too-many']));
	});

	it('is never swept', async () => {
		await signUp('may@example.org');
		const { signed } = await signIn('may@example.org');
		const coachId: string = Object(signed).coachId;
		const old = new Date(NOW - 900 * DAY);
		await here.database
			.updateTable('user')
			.set({ createdAt: old })
			.where('id', '=', coachId)
			.execute();
		await here.database.deleteFrom('session').where('userId', '=', coachId).execute();
		await sweep(here.database, NOW);
		expect(await coaches.find(here.database, coachId)).not.toBeNull();
	});
});
