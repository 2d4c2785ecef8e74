import { describe, expect, it } from 'vitest';
import { Browser } from './browser.ts';
import { DATABASES, inHouse } from './in-house.ts';

// Our own rules, no source, but where one is named. The library reads the real clock.

const COOKIE = '__Secure-breathmark.session_token';

describe.each(DATABASES)('the sign-in endpoints on %s', (type) => {
	const here = inHouse(type);

	it.each([
		['POST', '/api/auth/sign-up/email'],
		['POST', '/api/auth/sign-in/email'],
		['POST', '/api/auth/sign-in/social'],
		['POST', '/api/auth/request-password-reset'],
		['POST', '/api/auth/reset-password'],
		['POST', '/api/auth/change-password'],
		['POST', '/api/auth/verify-password'],
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
