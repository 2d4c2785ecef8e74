import { describe, expect, it } from 'vitest';
import * as groupInvitations from '$lib/server/group-invitations.ts';
import * as groups from '$lib/server/groups.ts';
import * as joining from '$lib/server/joining.ts';
import { makeCoach, makeGroup, makeHelper } from './coached-group.ts';
import { DATABASES, DAY, inHouse, NOW } from './in-house.ts';

describe.each(DATABASES)('a link for runners on %s', (type) => {
	const here = inHouse(type);

	async function invited(endsOn = '2026-12-23') {
		const owner = await makeCoach(here);
		const groupId = await makeGroup(here, owner);
		const made = await groupInvitations.create(here.database, owner.coachId, groupId, endsOn, NOW);
		if (made.kind !== 'created') throw new Error(made.kind);
		return { owner, groupId, ...made.invitation };
	}

	const open = (token: string, now = NOW) => groupInvitations.open(here.database, token, now);

	// RFC 4648, 5: base64url; 22 of its characters hold 128 bits.
	it('is 128 bits that fit into an address, another each time', async () => {
		const [one, other] = [await invited(), await invited()];
		expect(one.token).toMatch(/^[A-Za-z0-9_-]{22}$/);
		expect(Buffer.from(one.token, 'base64url')).toHaveLength(16);
		expect(one.token).not.toBe(other.token);
	});

	it('opens its group for many, until its last day where the group is', async () => {
		const { token, groupId } = await invited('2026-11-25');
		expect(await open(token)).toEqual({ state: 'open', groupId });
		expect(await open(token)).toEqual({ state: 'open', groupId });
		// In Dublin it is winter time: the day ends at midnight UTC.
		expect(await open(token, Date.UTC(2026, 10, 25, 23, 59))).toMatchObject({ state: 'open' });
		expect(await open(token, Date.UTC(2026, 10, 26))).toEqual({ state: 'ended' });
	});

	it('ends by the clock of the group, not of the server', async () => {
		const { token, groupId, owner } = await invited('2026-11-25');
		const group = await groups.ofCoach(here.database, owner.coachId, groupId);
		if (!group) throw new Error('no group');
		const far = { ...group, timeZone: 'Pacific/Kiritimati' };
		await groups.change(here.database, owner.coachId, groupId, far);
		// Fourteen hours ahead it is already the 26th at ten in the morning UTC.
		expect(await open(token, Date.UTC(2026, 10, 25, 10))).toEqual({ state: 'ended' });
	});

	it('says nothing once it is taken back, and those who joined stay', async () => {
		const { token, groupId, owner, id } = await invited();
		const runner = await here.runner();
		await joining.join(here.database, token, runner, 'Ines', NOW);
		const { database } = here;
		expect(await groupInvitations.revoke(database, owner.coachId, groupId, id, NOW)).toBe(
			'revoked'
		);
		expect(await groupInvitations.revoke(database, owner.coachId, groupId, id, NOW)).toBe(
			'not-found'
		);
		expect(await open(token)).toEqual({ state: 'revoked' });
		expect(await joining.look(database, token, runner, NOW)).toEqual({ state: 'revoked' });
		const late = await joining.join(database, token, await here.runner(), 'Tobias', NOW);
		expect(late).toEqual({ kind: 'revoked' });
	});

	it.each(['', 'AAAAAAAAAAAAAAAAAAAAAA', "' or 1=1 --", 'ع', '\0'])(
		'that nobody made (%j) is not known',
		async (token) => expect(await open(token)).toEqual({ state: 'unknown' })
	);

	it.each([
		['2026-11-24', 'in-the-past'],
		['2027-11-26', 'too-far']
	])('does not end on %s: %s', async (endsOn, kind) => {
		const { owner, groupId } = await invited();
		const made = groupInvitations.create(here.database, owner.coachId, groupId, endsOn, NOW);
		expect(await made).toEqual({ kind });
	});

	it('is seen by each coach of the group, and made and taken back by its owners', async () => {
		const { database } = here;
		const { groupId, owner, id } = await invited();
		const helper = await makeHelper(here, groupId);
		const other = await makeCoach(here);
		expect(await groupInvitations.list(database, helper.coachId, groupId, NOW)).toHaveLength(1);
		expect(await groupInvitations.list(database, other.coachId, groupId, NOW)).toEqual([]);
		for (const { coachId } of [helper, other]) {
			const made = groupInvitations.create(database, coachId, groupId, '2026-12-01', NOW);
			expect(await made).toEqual({ kind: 'not-found' });
			expect(await groupInvitations.revoke(database, coachId, groupId, id, NOW)).toBe('not-found');
		}
		const elsewhere = await makeGroup(here, owner);
		expect(await groupInvitations.revoke(database, owner.coachId, elsewhere, id, NOW)).toBe(
			'not-found'
		);
	});

	it('stands in the list with what became of it, newest first', async () => {
		const { database } = here;
		const { groupId, owner } = await invited('2026-11-26');
		const make = (now: number) =>
			groupInvitations.create(database, owner.coachId, groupId, '2026-12-20', now);
		const second = await make(NOW + DAY);
		await make(NOW + 2 * DAY);
		if (second.kind !== 'created') throw new Error(second.kind);
		await groupInvitations.revoke(database, owner.coachId, groupId, second.invitation.id, NOW);
		const all = await groupInvitations.list(database, owner.coachId, groupId, NOW + 3 * DAY);
		expect(all.map(({ state }) => state)).toEqual(['open', 'revoked', 'ended']);
	});
});
