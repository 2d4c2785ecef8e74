import { describe, expect, it } from 'vitest';
import * as sessions from '$lib/server/sessions.ts';
import { Browser } from './browser.ts';
import { DATABASES, DAY, inHouse } from './in-house.ts';

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
