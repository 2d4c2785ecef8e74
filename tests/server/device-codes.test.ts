import { describe, expect, it } from 'vitest';
import * as audit from '$lib/server/audit.ts';
import { Browser } from './browser.ts';
import { DATABASES, inHouse, MINUTE } from './in-house.ts';

// Our own rules, no source, but where one is named. The library reads the real clock.

const COOKIE = '__Secure-breathmark.session_token';

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
