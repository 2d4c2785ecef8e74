import { describe, expect, it } from 'vitest';
import { signInLibrary } from '$lib/server/sign-in.ts';
import { Browser } from './browser.ts';
import { DATABASES, inHouse } from './in-house.ts';

// Our own rules, no source, but where one is named. The library reads the real clock.

const COOKIE = '__Secure-breathmark.session_token';

describe.each(DATABASES)('the sign-in endpoints on %s', (type) => {
	const here = inHouse(type);

	it('are these four, of all that the library and its plugins bring', async () => {
		const visitor = new Browser(here.database);
		await visitor.auth.signInAnonymous(visitor.headers());
		const { api } = signInLibrary({
			database: here.database,
			origin: null,
			port: 3000,
			secret: 'a-secret-for-tests-alone-a-secret-for-tests',
			requestEvent: () => ({}) as never,
			report: () => undefined
		});
		const paths = Object.values(api as object as Record<string, { path?: string }>).flatMap(
			({ path }) => path ?? []
		);
		expect(paths).toEqual(
			expect.arrayContaining(['/sign-up/email', '/get-session', '/passkey/delete-passkey'])
		);
		const open = [];
		for (const path of new Set(paths)) {
			for (const method of ['GET', 'POST']) {
				const body = method === 'POST' ? {} : undefined;
				const { status } = await visitor.ask(method, `/api/auth${path}`, body);
				if (status !== 404) open.push(`${method} ${path}`);
			}
		}
		expect(open.sort()).toEqual([
			'GET /passkey/generate-authenticate-options',
			'GET /passkey/generate-register-options',
			'POST /passkey/verify-authentication',
			'POST /passkey/verify-registration'
		]);
	});

	it.each([
		['GET', '/api/auth/'],
		['GET', '/api/auth'],
		['GET', '/api/auth/passkey/generate-register-options/'],
		['GET', '/api/auth//passkey/generate-register-options'],
		['POST', '/api/auth/passkey/generate-register-options'],
		['GET', '/api/auth/passkey/verify-authentication'],
		['PUT', '/api/auth/passkey/verify-authentication'],
		['POST', '/api/auth/openRunnerSession'],
		['GET', '/passkey/generate-register-options'],
		['GET', '/other/api/auth/passkey/generate-register-options']
	])('are not there by another way: %s %s', async (method, path) => {
		const visitor = new Browser(here.database);
		await visitor.auth.signInAnonymous(visitor.headers());
		const body = method === 'GET' ? undefined : {};
		expect((await visitor.ask(method, path, body)).status).toBe(404);
	});

	it('refuse another site', async () => {
		const visitor = new Browser(here.database);
		await visitor.auth.signInAnonymous(visitor.headers());
		for (const origin of ['https://evil.example', 'null', 'http://run.example.org']) {
			const path = '/api/auth/passkey/verify-registration';
			const answer = await visitor.ask('POST', path, { response: {} }, { origin });
			expect(answer.status).toBe(403);
		}
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
