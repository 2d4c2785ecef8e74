import { describe, expect, it } from 'vitest';
import * as audit from '$lib/server/audit.ts';
import * as passkeys from '$lib/server/passkeys.ts';
import * as sessions from '$lib/server/sessions.ts';
import { Browser, ORIGIN } from './browser.ts';
import { DATABASES, DAY, inHouse, MINUTE } from './in-house.ts';
import { PasskeyDevice } from './passkey-device.ts';

// Our own rules, no source, but where one is named. The library reads the real clock.

const COOKIE = '__Secure-breathmark.session_token';

describe.each(DATABASES)('a runner without a name on %s', (type) => {
	const here = inHouse(type);
	const browser = (origin?: string | null) => new Browser(here.database, origin);

	it('is nobody without a cookie, or with one that was made up', async () => {
		const visitor = browser();
		expect(await visitor.auth.session(visitor.headers())).toBeNull();
		visitor.keep(COOKIE, 'made.up', {});
		expect(await visitor.auth.session(visitor.headers())).toBeNull();
	});

	it('signs in from a form, and is the same one at the next page', async () => {
		const visitor = browser();
		const signed = await visitor.auth.signInAnonymous(visitor.headers());
		expect(await visitor.auth.session(visitor.headers())).toEqual(signed);
		expect(await visitor.auth.signInAnonymous(visitor.headers())).toEqual(signed);
		expect(await browser().auth.signInAnonymous(new Headers())).not.toEqual(signed);
	});

	// RFC 6265bis 5.5 (M): browsers keep a cookie for at most 400 days. MDN (M): the attributes.
	it('keeps a cookie for 400 days that no script and no other site can use', async () => {
		const visitor = browser();
		await visitor.auth.signInAnonymous(visitor.headers());
		expect([...visitor.jar.keys()]).toEqual([COOKIE]);
		expect(visitor.jar.get(COOKIE)?.options).toMatchObject({
			maxAge: 400 * 24 * 60 * 60,
			httpOnly: true,
			secure: true,
			sameSite: 'lax',
			path: '/'
		});
	});

	it('has a plain cookie only on this computer', async () => {
		const visitor = browser(null);
		await visitor.auth.signInAnonymous(visitor.headers());
		expect(visitor.jar.get('breathmark.session_token')?.options['secure']).toBeFalsy();
	});

	it('stays signed in by coming: the session slides along once a day', async () => {
		const visitor = browser();
		const signed = await visitor.auth.signInAnonymous(visitor.headers());
		const ends = async () => {
			const row = await here.database
				.selectFrom('session')
				.select('expiresAt')
				.where('id', '=', signed.sessionId)
				.executeTakeFirstOrThrow();
			return new Date(row.expiresAt).getTime();
		};
		const first = await ends();
		visitor.jar.get(COOKIE);
		await visitor.auth.session(visitor.headers());
		expect(await ends()).toBe(first);
		// As if the last visit had been two days ago.
		await here.database
			.updateTable('session')
			.set({ expiresAt: new Date(first - 2 * DAY) })
			.where('id', '=', signed.sessionId)
			.execute();
		const cookie = visitor.headers();
		visitor.jar.clear();
		expect(await visitor.auth.session(cookie)).toEqual(signed);
		expect(await ends()).toBeGreaterThanOrEqual(first);
		expect(visitor.jar.get(COOKIE)?.options['maxAge']).toBe(400 * 24 * 60 * 60);
	});

	it('is signed out once the session has ended', async () => {
		const visitor = browser();
		const { sessionId } = await visitor.auth.signInAnonymous(visitor.headers());
		await here.database
			.updateTable('session')
			.set({ expiresAt: new Date(Date.now() - 1) })
			.where('id', '=', sessionId)
			.execute();
		expect(await visitor.auth.session(visitor.headers())).toBeNull();
		expect(visitor.jar.size).toBe(0);
	});

	it('signs out: the cookie goes, and a copy of it opens nothing', async () => {
		const visitor = browser();
		await visitor.auth.signInAnonymous(visitor.headers());
		const copy = visitor.headers();
		await visitor.auth.signOut(visitor.headers());
		expect(visitor.jar.size).toBe(0);
		expect(await visitor.auth.session(copy)).toBeNull();
	});

	it('leaves no address of the network, and an e-mail that nobody can have', async () => {
		const visitor = browser();
		const { runnerId } = await visitor.auth.signInAnonymous(
			visitor.headers({ 'x-forwarded-for': '192.0.2.7', 'x-breathmark-address': '192.0.2.7' })
		);
		const row = await here.database
			.selectFrom('user')
			.innerJoin('session', 'session.userId', 'user.id')
			.select(['email', 'ipAddress', 'userAgent'])
			.where('user.id', '=', runnerId)
			.executeTakeFirstOrThrow();
		// RFC 2606, 2: .invalid never resolves.
		expect(row.email).toMatch(/@runner\.invalid$/);
		expect(row).toMatchObject({ ipAddress: '', userAgent: 'A browser' });
	});

	it('sees the devices that are signed in, and signs one out', async () => {
		const [phone, tablet] = [browser(), browser()];
		const one = await phone.auth.signInAnonymous(phone.headers());
		const { code } = await phone.auth.createDeviceCode(one.runnerId, Date.now());
		const two = await tablet.auth.redeemDeviceCode(code, tablet.headers(), Date.now());
		if (!two) throw new Error('not redeemed');
		const listed = await sessions.list(here.database, one.runnerId, Date.now());
		expect(listed.map(({ id }) => id).sort()).toEqual([one.sessionId, two.sessionId].sort());
		expect(JSON.stringify(listed)).not.toContain('token');
		const revoked = await sessions.revoke(here.database, one.runnerId, two.sessionId, Date.now());
		expect(revoked).toBe('revoked');
		expect(await tablet.auth.session(tablet.headers())).toBeNull();
		expect(await phone.auth.session(phone.headers())).toEqual(one);
	});

	it('signs every other device out at once', async () => {
		const [phone, tablet] = [browser(), browser()];
		const one = await phone.auth.signInAnonymous(phone.headers());
		const { code } = await phone.auth.createDeviceCode(one.runnerId, Date.now());
		await tablet.auth.redeemDeviceCode(code, tablet.headers(), Date.now());
		const count = await sessions.revokeOthers(
			here.database,
			one.runnerId,
			one.sessionId,
			Date.now()
		);
		expect(count).toBe(1);
		expect(await tablet.auth.session(tablet.headers())).toBeNull();
		expect(await phone.auth.session(phone.headers())).toEqual(one);
	});
});

describe.each(DATABASES)('a code for another device on %s', (type) => {
	const here = inHouse(type);
	const phoneAndTablet = async () => {
		const [phone, tablet] = [new Browser(here.database), new Browser(here.database)];
		const runner = await phone.auth.signInAnonymous(phone.headers());
		const create = (now = Date.now()) => phone.auth.createDeviceCode(runner.runnerId, now);
		const redeem = (code: string, now = Date.now()) =>
			tablet.auth.redeemDeviceCode(code, tablet.headers(), now);
		return { phone, tablet, runner, create, redeem };
	};

	it('opens a session of its own for the same runner', async () => {
		const { phone, tablet, runner, create, redeem } = await phoneAndTablet();
		const { code } = await create();
		const signed = await redeem(code);
		expect(signed?.runnerId).toBe(runner.runnerId);
		expect(signed?.sessionId).not.toBe(runner.sessionId);
		expect(await tablet.auth.session(tablet.headers())).toEqual(signed);
		expect(await phone.auth.session(phone.headers())).toEqual(runner);
		expect(tablet.jar.get(COOKIE)?.options).toMatchObject({ httpOnly: true, secure: true });
		const history = await audit.list(here.database, runner.runnerId);
		expect(history[0]).toMatchObject({
			what: 'device.linked',
			detail: { sessionId: signed?.sessionId }
		});
	});

	it('ends the session that the device had before', async () => {
		const { tablet, create, redeem } = await phoneAndTablet();
		await tablet.auth.signInAnonymous(tablet.headers());
		const before = tablet.headers();
		await redeem((await create()).code);
		expect(await tablet.auth.session(before)).toBeNull();
	});

	it('is eight letters and numbers that nobody misreads', async () => {
		const { create } = await phoneAndTablet();
		for (let i = 0; i < 20; i += 1) {
			expect((await create()).code).toMatch(/^[2-9A-HJKMNP-TW-Z]{4}-[2-9A-HJKMNP-TW-Z]{4}$/);
		}
	});

	it('is taken in small letters, with spaces or without the hyphen', async () => {
		const { create, redeem } = await phoneAndTablet();
		const { code } = await create();
		expect(await redeem(` ${code.toLowerCase().replace('-', ' ')} `)).not.toBeNull();
	});

	it('that is wrong, used, ended, replaced or empty gets one and the same answer', async () => {
		const { create, redeem, tablet } = await phoneAndTablet();
		const now = Date.now();
		const replaced = await create(now);
		const ended = await create(now);
		expect(await redeem(replaced.code, now)).toBeNull();
		expect(await redeem(ended.code, now + 10 * MINUTE)).toBeNull();
		const used = await create(now);
		expect(await redeem(used.code, now + 10 * MINUTE - 1)).not.toBeNull();
		expect(await redeem(used.code, now)).toBeNull();
		expect(await redeem('2222-2222', now)).toBeNull();
		expect(await redeem('', now)).toBeNull();
		tablet.jar.clear();
		expect(await redeem(used.code, now)).toBeNull();
		expect(tablet.jar.size).toBe(0);
	});

	it('is taken once, even when two devices send it at once', async () => {
		const { create, redeem } = await phoneAndTablet();
		const { code } = await create();
		const taken = await Promise.all([redeem(code), redeem(code), redeem(code)]);
		expect(taken.filter((signed) => signed !== null)).toHaveLength(1);
	});

	it('is blocked after twenty wrong tries, wherever they come from', async () => {
		const { create, redeem } = await phoneAndTablet();
		const [survives, blocked] = [await create(), 20];
		for (let i = 0; i < blocked - 1; i += 1) await redeem('2222-2222');
		expect(await redeem(survives.code)).not.toBeNull();
		const { code } = await create();
		for (let i = 0; i < blocked; i += 1) await redeem('2222-2222');
		expect(await redeem(code)).toBeNull();
		expect(await redeem((await create()).code)).not.toBeNull();
	});

	it('is not in the database, and not to be found by trying all codes without the key', async () => {
		const { create, runner } = await phoneAndTablet();
		const { code } = await create();
		const row = await here.database
			.selectFrom('device_code')
			.selectAll()
			.where('runner_id', '=', runner.runnerId)
			.executeTakeFirstOrThrow();
		const plain = code.replace('-', '');
		expect(JSON.stringify(row)).not.toContain(plain);
		const digest = await crypto.subtle.digest('SHA-256', Buffer.from(plain));
		expect(row.code_hash).not.toBe(Buffer.from(digest).toString('base64url'));
	});
});

describe.each(DATABASES)('the sign-in endpoints on %s', (type) => {
	const here = inHouse(type);

	it.each([
		['POST', '/api/auth/sign-up/email'],
		['POST', '/api/auth/sign-in/email'],
		['POST', '/api/auth/sign-in/social'],
		['POST', '/api/auth/update-user'],
		['POST', '/api/auth/delete-user'],
		['POST', '/api/auth/delete-anonymous-user'],
		['POST', '/api/auth/change-email'],
		['GET', '/api/auth/list-sessions'],
		['POST', '/api/auth/revoke-sessions'],
		['POST', '/api/auth/passkey/update-passkey'],
		['POST', '/api/auth/open-runner-session'],
		['POST', '/api/auth/runner-session'],
		['POST', '/api/auth/openRunnerSession'],
		['GET', '/api/auth/ok'],
		['GET', '/api/auth/error'],
		['GET', '/api/auth/'],
		['GET', '/api/auth'],
		['GET', '/api/auth/get-session/'],
		['GET', '/api/auth//get-session'],
		['POST', '/api/auth/get-session'],
		['GET', '/api/auth/sign-out'],
		['GET', '/get-session'],
		['GET', '/other/api/auth/get-session']
	])('that the app does not use are not there: %s %s', async (method, path) => {
		const visitor = new Browser(here.database);
		await visitor.auth.signInAnonymous(visitor.headers());
		const body = method === 'POST' ? {} : undefined;
		expect((await visitor.ask(method, path, body)).status).toBe(404);
	});

	it('answer a script as they answer a form', async () => {
		const visitor = new Browser(here.database);
		expect(await (await visitor.ask('GET', '/api/auth/get-session')).json()).toBeNull();
		expect((await visitor.ask('POST', '/api/auth/sign-in/anonymous', {})).status).toBe(200);
		const signed = await visitor.auth.session(visitor.headers());
		expect(await (await visitor.ask('GET', '/api/auth/get-session')).json()).toMatchObject({
			user: { id: signed?.runnerId }
		});
		expect((await visitor.ask('POST', '/api/auth/sign-out', {})).status).toBe(200);
		expect(visitor.jar.size).toBe(0);
	});

	it('refuse another site', async () => {
		const visitor = new Browser(here.database);
		await visitor.auth.signInAnonymous(visitor.headers());
		for (const origin of ['https://evil.example', 'null', 'http://run.example.org']) {
			const answer = await visitor.ask('POST', '/api/auth/sign-out', {}, { origin });
			expect(answer.status).toBe(403);
		}
		expect(await visitor.auth.session(visitor.headers())).not.toBeNull();
	});

	it('report in one line what went wrong, without a cookie or a row', async () => {
		const visitor = new Browser(here.database);
		await visitor.auth.signInAnonymous(visitor.headers());
		const { value } = visitor.jar.get(COOKIE) ?? { value: '' };
		const broken = new Browser(here.database.withSchema('no_such_schema'));
		broken.keep(COOKIE, value, {});
		await expect(broken.auth.session(broken.headers())).rejects.toThrow();
		expect(broken.reports).not.toEqual([]);
		const said = broken.reports.join();
		expect(said).toMatch(/^sign-in: [^\n]+$/);
		expect(said).not.toContain(value.slice(0, 8));
	});

	it('slow down one address, however it calls itself, and not another', async () => {
		const visitor = new Browser(here.database);
		const ask = (address: string, i: number) =>
			visitor.ask(
				'POST',
				'/api/auth/passkey/verify-authentication',
				{ response: {} },
				{
					address,
					headers: {
						'x-forwarded-for': `198.51.100.${i}`,
						'x-breathmark-address': `198.51.100.${i}`
					}
				}
			);
		const seen = new Set<number>();
		for (let i = 0; i < 61; i += 1) seen.add((await ask('192.0.2.50', i)).status);
		expect(seen.has(429)).toBe(true);
		expect((await ask('192.0.2.51', 0)).status).not.toBe(429);
	});
});

describe.each(DATABASES)('a passkey on %s', (type) => {
	const here = inHouse(type);
	const path = '/api/auth/passkey';

	async function withPasskey() {
		const phone = new Browser(here.database);
		const device = new PasskeyDevice(ORIGIN);
		const runner = await phone.auth.signInAnonymous(phone.headers());
		const options = await (await phone.ask('GET', `${path}/generate-register-options`)).json();
		const response = device.register(options);
		const made = await phone.ask('POST', `${path}/verify-registration`, {
			response,
			name: 'Phone'
		});
		return { phone, device, runner, options, made };
	}

	it('is made for a runner who is signed in, also a year after signing in', async () => {
		const phone = new Browser(here.database);
		const runner = await phone.auth.signInAnonymous(phone.headers());
		await here.database
			.updateTable('session')
			.set({ createdAt: new Date(Date.now() - 365 * DAY) })
			.where('id', '=', runner.sessionId)
			.execute();
		expect((await phone.ask('GET', `${path}/generate-register-options`)).status).toBe(200);
		phone.jar.clear();
		expect((await phone.ask('GET', `${path}/generate-register-options`)).status).toBe(401);
	});

	it('signs the runner in on a browser that knows nothing', async () => {
		const { device, runner, options, made } = await withPasskey();
		expect(made.status).toBe(200);
		expect(options).toMatchObject({ rp: { id: 'run.example.org' } });
		const other = new Browser(here.database);
		const asked = await (await other.ask('GET', `${path}/generate-authenticate-options`)).json();
		const response = device.authenticate(asked);
		const answer = await other.ask('POST', `${path}/verify-authentication`, { response });
		expect(answer.status).toBe(200);
		expect((await other.auth.session(other.headers()))?.runnerId).toBe(runner.runnerId);
	});

	it('made on another site is refused', async () => {
		const phone = new Browser(here.database);
		await phone.auth.signInAnonymous(phone.headers());
		const options = await (await phone.ask('GET', `${path}/generate-register-options`)).json();
		const response = new PasskeyDevice('https://evil.example').register(options);
		const answer = await phone.ask('POST', `${path}/verify-registration`, { response });
		expect(answer.ok).toBe(false);
	});

	it('answer cannot be used twice', async () => {
		const { device } = await withPasskey();
		const other = new Browser(here.database);
		const asked = await (await other.ask('GET', `${path}/generate-authenticate-options`)).json();
		const response = device.authenticate(asked);
		const challenge = new Map(other.jar);
		await other.ask('POST', `${path}/verify-authentication`, { response });
		const thief = new Browser(here.database);
		for (const [name, kept] of challenge) thief.jar.set(name, kept);
		const again = await thief.ask('POST', `${path}/verify-authentication`, { response });
		expect(again.ok).toBe(false);
	});

	it('is listed and removed by its runner, by script or by form, and by nobody else', async () => {
		const { phone, runner } = await withPasskey();
		const [listed] = await passkeys.list(here.database, runner.runnerId);
		expect(listed).toEqual({ id: expect.any(String), name: 'Phone', addedAt: expect.any(Number) });
		const id = listed?.id ?? '';
		expect(await (await phone.ask('GET', `${path}/list-user-passkeys`)).json()).toMatchObject([
			{ id }
		]);
		const other = new Browser(here.database);
		await other.auth.signInAnonymous(other.headers());
		expect((await other.ask('POST', `${path}/delete-passkey`, { id })).ok).toBe(false);
		expect((await phone.ask('POST', `${path}/delete-passkey`, { id })).status).toBe(200);
		expect(await passkeys.list(here.database, runner.runnerId)).toEqual([]);
		expect(await passkeys.remove(here.database, runner.runnerId, id, Date.now())).toBe('not-found');
	});
});
