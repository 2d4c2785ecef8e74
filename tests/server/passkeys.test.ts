import { describe, expect, it } from 'vitest';
import * as passkeys from '$lib/server/passkeys.ts';
import { Browser, ORIGIN } from './browser.ts';
import { signedIn } from './coach.ts';
import { DATABASES, DAY, inHouse } from './in-house.ts';
import { PasskeyDevice } from './passkey-device.ts';

// Our own rules, no source, but where one is named. The library reads the real clock.

const SHORT = '__Secure-breathmark.dont_remember';

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

	it('takes the place of a coach who was signed in until the window closes', async () => {
		const { device, runner } = await withPasskey();
		const { browser: other, sessionId } = await signedIn(
			here.database,
			'host@example.org',
			null,
			{},
			false
		);
		expect(other.jar.has(SHORT)).toBe(true);
		const asked = await (await other.ask('GET', `${path}/generate-authenticate-options`)).json();
		const response = device.authenticate(asked);
		await other.ask('POST', `${path}/verify-authentication`, { response });
		expect((await other.auth.session(other.headers()))?.runnerId).toBe(runner.runnerId);
		expect(other.jar.has(SHORT)).toBe(false);
		expect(other.jar.get('__Secure-breathmark.session_token')?.options['maxAge']).toBe(
			400 * 24 * 60 * 60
		);
		const rows = here.database.selectFrom('session').select('id').where('id', '=', sessionId);
		expect(await rows.execute()).toEqual([]);
	});

	it('that does not fit leaves the session that is there', async () => {
		const { browser, ...coach } = await signedIn(here.database, 'host@example.org');
		const stranger = new PasskeyDevice(ORIGIN);
		const asked = await (await browser.ask('GET', `${path}/generate-authenticate-options`)).json();
		const response = stranger.authenticate(asked);
		const answer = await browser.ask('POST', `${path}/verify-authentication`, { response });
		expect(answer.ok).toBe(false);
		expect((await browser.auth.asking(browser.headers())).coach).toEqual(coach);
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

	it('is listed and removed by its runner, and by nobody else', async () => {
		const { runner } = await withPasskey();
		const [listed] = await passkeys.list(here.database, runner.runnerId);
		expect(listed).toEqual({ id: expect.any(String), name: 'Phone', addedAt: expect.any(Number) });
		const id = listed?.id ?? '';
		const remove = (runnerId: string) => passkeys.remove(here.database, runnerId, id, Date.now());
		const other = new Browser(here.database);
		const { runnerId: others } = await other.auth.signInAnonymous(other.headers());
		expect(await passkeys.list(here.database, others)).toEqual([]);
		expect(await remove(others)).toBe('not-found');
		expect(await remove(runner.runnerId)).toBe('removed');
		expect(await passkeys.list(here.database, runner.runnerId)).toEqual([]);
		expect(await remove(runner.runnerId)).toBe('not-found');
	});
});
