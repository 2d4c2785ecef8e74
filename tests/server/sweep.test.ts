import { describe, expect, it, vi } from 'vitest';
import * as consents from '$lib/server/consents.ts';
import * as deviceCodes from '$lib/server/device-codes.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as readings from '$lib/server/readings.ts';
import { sweep, sweepDaily } from '$lib/server/sweep.ts';
import { enter, makeCoach, makeGroup } from './coached-group.ts';
import { DATABASES, DAY, inHouse, makeUser, NOW } from './in-house.ts';

// Our own rules, no source.

describe.each(DATABASES)('the sweep on %s', (type) => {
	const here = inHouse(type);
	const exists = async (table: 'user' | 'session' | 'verification' | 'rateLimit', id: string) =>
		(await here.database.selectFrom(table).select('id').where('id', '=', id).execute()).length ===
		1;
	const session = async (userId: string, seenAt: number, expiresAt = NOW + 400 * DAY) => {
		const id = crypto.randomUUID();
		const times = { createdAt: new Date(seenAt), updatedAt: new Date(seenAt) };
		await here.database
			.insertInto('session')
			.values({ id, userId, token: id, expiresAt: new Date(expiresAt), ...times })
			.execute();
		return id;
	};

	it('takes accounts that were never used for a week, or that nobody can open, and no others', async () => {
		const old = () => makeUser(here.database, NOW - 8 * DAY);
		const unused = await old();
		await session(unused, NOW - 8 * DAY);
		const young = await makeUser(here.database, NOW - 6 * DAY);
		const consented = await old();
		await consents.give(here.database, consented, NOW - 8 * DAY);
		const tookBack = await old();
		await consents.give(here.database, tookBack, NOW - 8 * DAY);
		await consents.withdraw(here.database, tookBack, NOW - 8 * DAY);
		for (const kept of [consented, tookBack]) await session(kept, NOW - 8 * DAY);
		const lost = await old();
		await consents.give(here.database, lost, NOW - 8 * DAY);
		const seen = await old();
		await session(seen, NOW - DAY);
		const withPasskey = await old();
		const key = { publicKey: 'x', credentialID: 'x', counter: 0, deviceType: 'singleDevice' };
		await here.database
			.insertInto('passkey')
			.values({ ...key, id: withPasskey, userId: withPasskey, backedUp: true })
			.execute();

		const inGroup = await old();
		await session(inGroup, NOW - 8 * DAY);
		const groupId = await makeGroup(here, await makeCoach(here));
		await enter(here, groupId, inGroup, 'Ines');
		const ofTablet = await old();
		await enter(here, groupId, ofTablet, 'Dagny');
		const hasLeft = await old();
		const memberId = await enter(here, groupId, hasLeft, 'Tobias');
		await memberships.leave(here.database, hasLeft, memberId, NOW - DAY);

		await sweep(here.database, NOW);
		expect(await exists('user', unused)).toBe(false);
		// Nobody can open it again: no session, no passkey.
		expect(await exists('user', lost)).toBe(false);
		expect(await exists('user', hasLeft)).toBe(false);
		for (const kept of [young, consented, tookBack, seen, withPasskey, inGroup, ofTablet]) {
			expect(await exists('user', kept)).toBe(true);
		}
	});

	it('takes the notes of who looked, once no result that was read can still count', async () => {
		const coach = await makeCoach(here);
		const group = { id: 'g', name: 'Lantern Street beginners', timeZone: 'Europe/Dublin' };
		const runner = await here.runner();
		for (const at of [NOW - 400 * DAY, NOW - 399 * DAY]) {
			await readings.record(here.database, { coach, group }, [runner], 'result', at);
		}
		await sweep(here.database, NOW);
		const left = await readings.list(here.database, runner);
		expect(left.map(({ at }) => at)).toEqual([NOW - 399 * DAY]);
	});

	it('takes sessions, codes, challenges and counters that have ended', async () => {
		const runner = await here.runner();
		const [ended, living] = [await session(runner, NOW, NOW), await session(runner, NOW, NOW + 1)];
		const challenge = async (id: string, expiresAt: number) => {
			const at = new Date(NOW);
			const row = { identifier: id, value: '{}', createdAt: at, updatedAt: at };
			await here.database
				.insertInto('verification')
				.values({ id, expiresAt: new Date(expiresAt), ...row })
				.execute();
		};
		const [over, open] = [`${runner}-1`, `${runner}-2`];
		await challenge(over, NOW);
		await challenge(open, NOW + 1);
		const counter = (id: string, lastRequest: number) =>
			here.database
				.insertInto('rateLimit')
				.values({ id, key: id, count: 1, lastRequest })
				.execute();
		await counter(over, NOW - DAY);
		await counter(open, NOW - DAY + 1);
		await deviceCodes.create(here.database, Buffer.alloc(32), runner, NOW - DAY);

		await sweep(here.database, NOW);
		expect(await exists('session', ended)).toBe(false);
		expect(await exists('session', living)).toBe(true);
		for (const table of ['verification', 'rateLimit'] as const) {
			expect(await exists(table, over)).toBe(false);
			expect(await exists(table, open)).toBe(true);
		}
		expect(await here.database.selectFrom('device_code').select('id').execute()).toEqual([]);
	});
});

describe('the daily sweep', () => {
	const here = inHouse('sqlite');

	it('sweeps at once and every day, until it is stopped', async () => {
		vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
		try {
			const clock = vi.fn(() => NOW);
			const stop = sweepDaily(here.database, clock);
			expect(clock).toHaveBeenCalledTimes(1);
			vi.advanceTimersByTime(2 * DAY);
			expect(clock).toHaveBeenCalledTimes(3);
			await stop();
			vi.advanceTimersByTime(2 * DAY);
			expect(clock).toHaveBeenCalledTimes(3);
		} finally {
			vi.useRealTimers();
		}
	});
});
