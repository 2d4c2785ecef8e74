import { beforeAll, describe, expect, it } from 'vitest';
import * as invitations from '$lib/server/coach-invitations.ts';
import * as invited from '$lib/server/invited-coaches.ts';
import * as groups from '$lib/server/groups.ts';
import { Browser } from './browser.ts';
import { from, lanternStreet, signedIn, words } from './coach.ts';
import { DATABASES, DAY, inHouse, NOW } from './in-house.ts';

// Our own rules, no source.

describe.each(DATABASES)('an invitation to coach on %s', (type) => {
	const here = inHouse(type);
	let host: Awaited<ReturnType<typeof signedIn>>;
	beforeAll(async () => {
		host = await signedIn(here.database, 'host@example.org');
	});
	const invite = async (groupId: string | null = null, coachId = host.coachId, now = NOW) => {
		const made = await invitations.create(here.database, coachId, groupId, now);
		if (!made) throw new Error('may not invite');
		return made;
	};
	const signUp = async (email: string, token: string | null, now = NOW) => {
		const visitor = new Browser(here.database);
		const there = from(visitor, now, `address of ${email}`);
		return visitor.auth.signUpCoach(words(email), token, there);
	};
	const roles = async (groupId: string) => {
		const rows = await here.database
			.selectFrom('group_coach')
			.innerJoin('user', 'user.id', 'coach_id')
			.select(['email', 'role'])
			.where('group_id', '=', groupId)
			.execute();
		return Object.fromEntries(rows.map(({ email, role }) => [email, role]));
	};

	it('makes one coach, who is not a host', async () => {
		const { token } = await invite();
		expect(await signUp('ana@example.org', token)).toBe('made');
		expect(await signUp('other@example.org', token)).toBe('no-invitation');
		const ana = await here.database
			.selectFrom('coach')
			.innerJoin('user', 'user.id', 'coach_id')
			.select('is_host')
			.where('email', '=', 'ana@example.org')
			.executeTakeFirst();
		expect(ana?.is_host).toBe(0);
	});

	it('makes one coach of two who use it at once', async () => {
		const { token } = await invite();
		const answers = await Promise.all(
			['b1@example.org', 'b2@example.org'].map((email) => signUp(email, token))
		);
		expect(answers.sort()).toEqual(['made', 'no-invitation']);
	});

	it('is still there after a sign-up with an e-mail that is taken', async () => {
		const { token } = await invite();
		expect(await signUp('host@example.org', token)).toBe('made');
		expect(await signUp('cy@example.org', token)).toBe('made');
	});

	it('ends after seven days, and when it is taken back', async () => {
		const { token, id } = await invite();
		expect(await invited.find(here.database, token, NOW + 7 * DAY - 1)).not.toBeNull();
		expect(await signUp('di@example.org', token, NOW + 7 * DAY)).toBe('no-invitation');
		expect(await invitations.revoke(here.database, host.coachId, id, NOW)).toBe('revoked');
		expect(await invitations.revoke(here.database, host.coachId, id, NOW)).toBe('not-found');
		expect(await signUp('di@example.org', token)).toBe('no-invitation');
	});

	it('is nothing when it is made up, and a house that asks for one stays closed without', async () => {
		expect(await signUp('ed@example.org', 'made-up')).toBe('no-invitation');
		expect(await signUp('ed@example.org', '')).toBe('no-invitation');
		expect(await signUp('ed@example.org', null)).toBe('closed');
	});

	it('is kept as a hash, and listed by what became of it', async () => {
		const { token, id } = await invite();
		const kept = await here.database.selectFrom('coach_invitation').selectAll().execute();
		expect(JSON.stringify(kept)).not.toContain(token);
		const state = async (now = NOW) =>
			(await invitations.list(here.database, host.coachId, null, now)).find((one) => one.id === id)
				?.state;
		expect(await state()).toBe('open');
		expect(await state(NOW + 7 * DAY)).toBe('ended');
		await signUp('fay@example.org', token);
		expect(await state(NOW + 7 * DAY)).toBe('used');
	});

	it('into the house is the host’s alone to give, see and take back', async () => {
		const { token } = await invite();
		await signUp('gil@example.org', token);
		const gil = await signedIn(here.database, 'gil@example.org');
		expect(await invitations.create(here.database, gil.coachId, null, NOW)).toBeNull();
		const { id } = await invite();
		expect(await invitations.list(here.database, gil.coachId, null, NOW)).toEqual([]);
		expect(await invitations.revoke(here.database, gil.coachId, id, NOW)).toBe('not-found');
	});

	it('into a group comes from its owner, and brings a helper', async () => {
		const { token } = await invite();
		await signUp('owner@example.org', token);
		const owner = await signedIn(here.database, 'owner@example.org');
		const groupId = await groups.create(here.database, owner.coachId, lanternStreet, NOW);
		// Not even the host may, for the group is not theirs.
		expect(await invitations.create(here.database, host.coachId, groupId, NOW)).toBeNull();
		const into = await invite(groupId, owner.coachId);
		expect(await invited.find(here.database, into.token, NOW)).toMatchObject({
			invitedBy: 'Odile Marr',
			group: { id: groupId, name: lanternStreet.name }
		});
		expect(await signUp('helper@example.org', into.token)).toBe('made');
		expect(await roles(groupId)).toEqual({
			'owner@example.org': 'owner',
			'helper@example.org': 'helper'
		});
		const helper = await signedIn(here.database, 'helper@example.org');
		expect(await invitations.create(here.database, helper.coachId, groupId, NOW)).toBeNull();
		expect(await invitations.list(here.database, helper.coachId, groupId, NOW)).toEqual([]);
		expect(await invitations.list(here.database, owner.coachId, groupId, NOW)).toHaveLength(1);
	});

	it('is taken up by somebody who coaches here already; an owner stays one', async () => {
		const groupId = await groups.create(here.database, host.coachId, lanternStreet, NOW);
		const ana = await signedIn(here.database, 'ana@example.org');
		const accept = async (coachId: string, token: string) =>
			invited.accept(here.database, token, coachId, NOW);
		const one = await invite(groupId);
		expect(await accept(ana.coachId, one.token)).toEqual({ groupId });
		expect(await accept(ana.coachId, one.token)).toBeNull();
		expect((await roles(groupId))['ana@example.org']).toBe('helper');
		const own = await invite(groupId);
		expect(await accept(host.coachId, own.token)).toEqual({ groupId });
		expect((await roles(groupId))['host@example.org']).toBe('owner');
	});

	it('ends with the group, and with the right of whoever gave it', async () => {
		const { token } = await invite();
		await signUp('hal@example.org', token);
		const hal = await signedIn(here.database, 'hal@example.org');
		const groupId = await groups.create(here.database, hal.coachId, lanternStreet, NOW);
		const open = async (of: { token: string }) =>
			(await invited.find(here.database, of.token, NOW)) !== null;
		const [one, two] = [await invite(groupId, hal.coachId), await invite(groupId, hal.coachId)];
		const owned = here.database.updateTable('group_coach').where('group_id', '=', groupId);
		await owned.set({ role: 'helper' }).execute();
		expect(await open(one)).toBe(false);
		await owned.set({ role: 'owner' }).execute();
		expect(await open(one)).toBe(true);
		await groups.remove(here.database, hal.coachId, groupId, NOW);
		expect(await open(two)).toBe(false);
		expect(await signUp('ida@example.org', two.token)).toBe('no-invitation');
	});
});
