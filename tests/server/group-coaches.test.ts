import { describe, expect, it } from 'vitest';
import * as groupCoaches from '$lib/server/group-coaches.ts';
import * as groups from '$lib/server/groups.ts';
import { makeCoach, makeGroup, makeHelper } from './coached-group.ts';
import { DATABASES, inHouse } from './in-house.ts';

describe.each(DATABASES)('the coaches of a group on %s', (type) => {
	const here = inHouse(type);

	async function ledGroup() {
		const owner = await makeCoach(here);
		const groupId = await makeGroup(here, owner);
		return { owner, groupId, helper: await makeHelper(here, groupId) };
	}

	it('see one another, and nobody else sees them', async () => {
		const { owner, groupId, helper } = await ledGroup();
		const seen = await groupCoaches.list(here.database, helper.coachId, groupId);
		expect(seen.map(({ name, role }) => [name, role]).sort()).toEqual([
			['Bram Holt', 'helper'],
			['Odile Marr', 'owner']
		]);
		const other = await makeCoach(here);
		expect(await groupCoaches.list(here.database, other.coachId, groupId)).toEqual([]);
		expect(await groupCoaches.list(here.database, owner.coachId, groupId)).toEqual(seen);
	});

	it('are made owner or helper by an owner alone', async () => {
		const { database } = here;
		const { owner, groupId, helper } = await ledGroup();
		const other = await makeCoach(here);
		for (const who of [helper.coachId, other.coachId]) {
			const done = groupCoaches.setRole(database, who, groupId, helper.coachId, 'owner');
			expect(await done).toBe('not-found');
			expect(await groupCoaches.dismiss(database, who, groupId, owner.coachId)).toBe('not-found');
		}
		const done = groupCoaches.setRole(database, owner.coachId, groupId, helper.coachId, 'owner');
		expect(await done).toBe('changed');
		expect(await groups.ofCoach(database, helper.coachId, groupId)).toMatchObject({
			role: 'owner'
		});
		const stranger = groupCoaches.setRole(database, owner.coachId, groupId, other.coachId, 'owner');
		expect(await stranger).toBe('not-found');
	});

	it('leave, or are taken off, and then see nothing', async () => {
		const { database } = here;
		const { owner, groupId, helper } = await ledGroup();
		const second = await makeHelper(here, groupId);
		expect(await groupCoaches.leave(database, helper.coachId, groupId)).toBe('changed');
		expect(await groupCoaches.dismiss(database, owner.coachId, groupId, second.coachId)).toBe(
			'changed'
		);
		for (const { coachId } of [helper, second]) {
			expect(await groups.ofCoach(database, coachId, groupId)).toBeNull();
			expect(await groupCoaches.leave(database, coachId, groupId)).toBe('not-found');
		}
	});

	it('always have an owner among them', async () => {
		const { database } = here;
		const { owner, groupId, helper } = await ledGroup();
		expect(await groupCoaches.leave(database, owner.coachId, groupId)).toBe('last-owner');
		expect(await groupCoaches.dismiss(database, owner.coachId, groupId, owner.coachId)).toBe(
			'last-owner'
		);
		expect(
			await groupCoaches.setRole(database, owner.coachId, groupId, owner.coachId, 'helper')
		).toBe('last-owner');
		await groupCoaches.setRole(database, owner.coachId, groupId, helper.coachId, 'owner');
		expect(await groupCoaches.leave(database, owner.coachId, groupId)).toBe('changed');
		expect(await groupCoaches.leave(database, helper.coachId, groupId)).toBe('last-owner');
	});

	it('of whom two owners leave at once keep one', async () => {
		const { database } = here;
		const { owner, groupId, helper } = await ledGroup();
		await groupCoaches.setRole(database, owner.coachId, groupId, helper.coachId, 'owner');
		const left = await Promise.all([
			groupCoaches.leave(database, owner.coachId, groupId),
			groupCoaches.leave(database, helper.coachId, groupId)
		]);
		expect(left.sort()).toEqual(['changed', 'last-owner']);
	});
});
