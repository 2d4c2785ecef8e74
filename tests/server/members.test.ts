import { describe, expect, it } from 'vitest';
import * as account from '$lib/server/account.ts';
import * as attendance from '$lib/server/attendance.ts';
import * as audit from '$lib/server/audit.ts';
import * as members from '$lib/server/members.ts';
import * as memberships from '$lib/server/memberships.ts';
import { enter, makeCoach, makeGroup, makeHelper, nameAlone } from './coached-group.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';

describe.each(DATABASES)('the list of a group on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const owner = await makeCoach(here);
		return { coachId: owner.coachId, groupId: await makeGroup(here, owner) };
	}

	it('is empty at first', async () => {
		const { coachId, groupId } = await led();
		expect(await members.list(here.database, coachId, groupId)).toEqual([]);
	});

	it('has names alone and runners, by name, in whatever script', async () => {
		const { coachId, groupId } = await led();
		for (const name of ['Zoë', 'راشد', "D'Arcy", 'émile', 'Anna', 'Emil']) {
			await nameAlone(here, groupId, name);
		}
		const runner = await here.runner();
		await enter(here, groupId, runner, 'Dagny');
		const list = await members.list(here.database, coachId, groupId);
		expect(list.map(({ name }) => name)).toEqual([
			'Anna',
			"D'Arcy",
			'Dagny',
			'Emil',
			'émile',
			'Zoë',
			'راشد'
		]);
		expect(list.find(({ name }) => name === 'Dagny')).toMatchObject({
			runnerId: runner,
			joinedAt: NOW,
			sharedSince: NOW
		});
		expect(list.find(({ name }) => name === 'Anna')).toMatchObject({
			runnerId: null,
			joinedAt: null,
			sharedSince: null
		});
	});

	it('is nobody’s but its coaches’', async () => {
		const { database } = here;
		const { coachId, groupId } = await led();
		const other = await led();
		const id = await nameAlone(here, groupId, 'Ines');
		const runner = await here.runner();
		const own = await enter(here, groupId, runner, 'Tobias');
		for (const who of [other.coachId, runner, 'nobody']) {
			expect(await members.list(database, who, groupId)).toEqual([]);
			for (const member of [id, own]) {
				expect(await members.find(database, who, groupId, member)).toBeNull();
				expect(await members.rename(database, who, groupId, member, 'x')).toBe('not-found');
				expect(await members.remove(database, who, groupId, member, NOW)).toBe('not-found');
			}
		}
		// Nor is it reached through another group of the same coach.
		expect(await members.find(database, other.coachId, other.groupId, id)).toBeNull();
		expect(await members.find(database, coachId, groupId, id)).toMatchObject({ name: 'Ines' });
	});

	it('may be seen and mended by a helper; only an owner takes off it', async () => {
		const { database } = here;
		const { groupId } = await led();
		const helper = await makeHelper(here, groupId);
		const id = await nameAlone(here, groupId, 'Inez');
		expect(await members.rename(database, helper.coachId, groupId, id, 'Ines')).toBe('renamed');
		expect(await members.remove(database, helper.coachId, groupId, id, NOW)).toBe('not-found');
		expect(await members.find(database, helper.coachId, groupId, id)).toMatchObject({
			name: 'Ines'
		});
	});

	it('takes no name that somebody else on it has, in whatever letters', async () => {
		const { database } = here;
		const { coachId, groupId } = await led();
		const [id] = [
			await nameAlone(here, groupId, 'Ines'),
			await nameAlone(here, groupId, 'Gwen Able')
		];
		expect(await members.rename(database, coachId, groupId, id, 'gwen  able')).toBe('known');
		expect(await members.find(database, coachId, groupId, id)).toMatchObject({ name: 'Ines' });
		expect(await members.rename(database, coachId, groupId, id, 'INES')).toBe('renamed');
	});

	it('loses a name, and keeps that it was there', async () => {
		const { database } = here;
		const { coachId, groupId } = await led();
		const id = await nameAlone(here, groupId, 'Ines');
		await attendance.mark(database, coachId, groupId, id, '2026-11-24', NOW);
		expect(await members.remove(database, coachId, groupId, id, NOW)).toBe('removed');
		expect(await members.remove(database, coachId, groupId, id, NOW)).toBe('not-found');
		expect(await attendance.list(database, coachId, groupId)).toEqual([
			{ name: 'Ines', onDate: '2026-11-24', memberId: null }
		]);
	});

	it('loses a runner, who keeps the account and reads that it happened', async () => {
		const { database } = here;
		const { coachId, groupId } = await led();
		const runner = await here.runner();
		await withPasskey(runner);
		const id = await enter(here, groupId, runner, 'Ines');
		expect(await members.remove(database, coachId, groupId, id, NOW)).toBe('removed');
		expect(await members.find(database, coachId, groupId, id)).toBeNull();
		expect(await memberships.list(database, runner)).toEqual([]);
		expect(await audit.list(database, runner)).toContainEqual(
			expect.objectContaining({ what: 'group.removed', detail: { groupId, memberId: id } })
		);
	});

	it('loses a runner of a shared tablet, and with them all that nobody could reach', async () => {
		const { database } = here;
		const { coachId, groupId } = await led();
		const elsewhere = await led();
		const runner = await here.runner();
		const [id, there] = [
			await enter(here, groupId, runner, 'Ines'),
			await enter(here, elsewhere.groupId, runner, 'Ines')
		];
		await members.remove(database, coachId, groupId, id, NOW);
		expect(await memberships.list(database, runner)).toHaveLength(1);
		await members.remove(database, elsewhere.coachId, elsewhere.groupId, there, NOW);
		const left = database.selectFrom('user').select('id').where('id', '=', runner);
		expect(await left.execute()).toEqual([]);
	});

	it('no longer has a runner who deleted the account; the attendance stays', async () => {
		const { database } = here;
		const { coachId, groupId } = await led();
		const runner = await here.runner();
		const id = await enter(here, groupId, runner, 'Ines');
		await attendance.mark(database, coachId, groupId, id, '2026-11-24', NOW);
		await account.deleteAll(database, runner);
		expect(await members.list(database, coachId, groupId)).toEqual([]);
		expect(await members.find(database, coachId, groupId, id)).toBeNull();
		expect(await attendance.list(database, coachId, groupId)).toMatchObject([{ name: 'Ines' }]);
		const rows = database.selectFrom('member').select('id').where('id', '=', id);
		expect(await rows.execute()).toEqual([]);
	});

	async function withPasskey(userId: string) {
		const key = { publicKey: 'x', credentialID: userId, counter: 0, deviceType: 'singleDevice' };
		await here.database
			.insertInto('passkey')
			.values({ ...key, id: `${userId}-p`, userId, backedUp: false, createdAt: new Date(NOW) })
			.execute();
	}
});
