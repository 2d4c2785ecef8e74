import { describe, expect, it } from 'vitest';
import * as audit from '$lib/server/audit.ts';
import * as groupInvitations from '$lib/server/group-invitations.ts';
import * as joining from '$lib/server/joining.ts';
import * as members from '$lib/server/members.ts';
import * as memberships from '$lib/server/memberships.ts';
import { makeCoach, makeGroup, makeHelper, nameAlone } from './coached-group.ts';
import { DATABASES, inHouse, MINUTE, NOW } from './in-house.ts';

describe.each(DATABASES)('joining on %s', (type) => {
	const here = inHouse(type);

	async function openGroup() {
		const { coachId } = await makeCoach(here);
		const coach = { coachId, name: 'Odile Marr', qualification: null, isHost: false };
		const groupId = await makeGroup(here, coach);
		const { database } = here;
		const made = await groupInvitations.create(database, coachId, groupId, '2026-12-23', NOW);
		if (made.kind !== 'created') throw new Error(made.kind);
		return { coachId, groupId, token: made.invitation.token };
	}

	const join = (token: string, runner: string, name: string, now = NOW) =>
		joining.join(here.database, token, runner, name, now);
	const list = ({ coachId, groupId }: { coachId: string; groupId: string }) =>
		members.list(here.database, coachId, groupId);

	it('shows whoever opens the link the group and its coaches, and nobody on the list', async () => {
		const group = await openGroup();
		await makeHelper(here, group.groupId);
		await nameAlone(here, group.groupId, 'Somebody Secret');
		const seen = await joining.look(here.database, group.token, null, NOW);
		expect(seen).toEqual({
			state: 'open',
			group: {
				name: 'Lantern Street beginners',
				usualPlace: null,
				coaches: ['Odile Marr', 'Bram Holt'],
				isDemo: false,
				member: null
			}
		});
		expect(JSON.stringify(seen)).not.toContain('Secret');
	});

	it('makes a member who shares, and writes it down for the runner', async () => {
		const group = await openGroup();
		const runner = await here.runner();
		const joined = await join(group.token, runner, "Siobhán O'Neill");
		expect(joined).toMatchObject({ kind: 'joined', groupId: group.groupId });
		expect(await list(group)).toMatchObject([
			{ name: "Siobhán O'Neill", runnerId: runner, joinedAt: NOW, sharedSince: NOW }
		]);
		expect((await audit.list(here.database, runner)).map(({ what }) => what)).toContain(
			'group.joined'
		);
		expect(await joining.look(here.database, group.token, runner, NOW)).toMatchObject({
			group: { member: { name: "Siobhán O'Neill", isSharing: true } }
		});
	});

	it('twice is the same member, under the first name', async () => {
		const group = await openGroup();
		const runner = await here.runner();
		const first = await join(group.token, runner, 'Ines');
		expect(await join(group.token, runner, 'Another')).toEqual({ ...first, kind: 'already' });
		expect(await list(group)).toMatchObject([{ name: 'Ines' }]);
	});

	it('pressed twice at once is the same member', async () => {
		const group = await openGroup();
		const runner = await here.runner();
		const presses = [1, 2, 3].map(() => join(group.token, runner, 'Ines'));
		const kinds = (await Promise.all(presses)).map(({ kind }) => kind);
		expect(kinds.sort()).toEqual(['already', 'already', 'joined']);
		expect(await list(group)).toHaveLength(1);
	});

	it('again gives the consent that was taken back', async () => {
		const group = await openGroup();
		const runner = await here.runner();
		const joined = await join(group.token, runner, 'Ines');
		if (!('memberId' in joined)) throw new Error(joined.kind);
		await memberships.share(here.database, runner, joined.memberId, false, NOW);
		expect(await list(group)).toMatchObject([{ sharedSince: null }]);
		await join(group.token, runner, 'Ines', NOW + MINUTE);
		expect(await list(group)).toMatchObject([{ sharedSince: NOW + MINUTE }]);
	});

	it('several groups makes a member of each', async () => {
		const [one, other] = [await openGroup(), await openGroup()];
		const runner = await here.runner();
		await join(one.token, runner, 'Ines');
		await join(other.token, runner, 'Inès');
		expect(await list(one)).toMatchObject([{ name: 'Ines', runnerId: runner }]);
		expect(await list(other)).toMatchObject([{ name: 'Inès', runnerId: runner }]);
		expect(await memberships.list(here.database, runner)).toHaveLength(2);
	});

	it('after leaving brings the same member back', async () => {
		const group = await openGroup();
		const runner = await here.runner();
		const first = await join(group.token, runner, 'Ines');
		if (!('memberId' in first)) throw new Error(first.kind);
		await memberships.leave(here.database, runner, first.memberId, NOW);
		expect(await list(group)).toEqual([]);
		const again = await join(group.token, runner, 'Ines Silva', NOW + MINUTE);
		expect(again).toEqual({ ...first, kind: 'joined' });
		expect(await list(group)).toMatchObject([{ id: first.memberId, name: 'Ines Silva' }]);
	});

	describe('under a name that the coach had written down', () => {
		it.each([
			["Siobhán  O'NEILL", 'siobhán o’neill'],
			['راشد', 'راشد'],
			['Ines Silva', ' ines silva ']
		])('%s, typed %s, is that member', async (written, typed) => {
			const group = await openGroup();
			const id = await nameAlone(here, group.groupId, written);
			const other = await nameAlone(here, group.groupId, 'Tobias');
			const runner = await here.runner();
			expect(await join(group.token, runner, typed)).toMatchObject({ memberId: id });
			const now = await list(group);
			expect(now).toHaveLength(2);
			expect(now.find((member) => member.id === other)?.runnerId).toBeNull();
			// The coach's spelling stays.
			expect(now.find((member) => member.id === id)?.name).toBe(written);
		});

		it('one of two namesakes is not guessed', async () => {
			const group = await openGroup();
			for (const name of ['Ines', 'INES']) await nameAlone(here, group.groupId, name);
			await join(group.token, await here.runner(), 'Ines');
			expect((await list(group)).filter(({ runnerId }) => runnerId === null)).toHaveLength(2);
			expect(await list(group)).toHaveLength(3);
		});

		it('only one of two runners who come at once takes it', async () => {
			const group = await openGroup();
			await nameAlone(here, group.groupId, 'Ines');
			const [one, other] = [await here.runner(), await here.runner()];
			await Promise.all([join(group.token, one, 'Ines'), join(group.token, other, 'Ines')]);
			const runners = (await list(group)).map(({ runnerId }) => runnerId);
			expect(runners.sort()).toEqual([one, other].sort());
		});

		it('a name that is somebody’s already is not taken over', async () => {
			const group = await openGroup();
			const first = await here.runner();
			await join(group.token, first, 'Ines');
			await join(group.token, await here.runner(), 'Ines');
			const now = await list(group);
			expect(now).toHaveLength(2);
			expect(now.filter(({ runnerId }) => runnerId === first)).toHaveLength(1);
		});

		it('a name of another group is not taken', async () => {
			const [group, other] = [await openGroup(), await openGroup()];
			const id = await nameAlone(here, other.groupId, 'Ines');
			const joined = await join(group.token, await here.runner(), 'Ines');
			expect(joined).not.toMatchObject({ memberId: id });
		});
	});

	it('a group that is gone leads nowhere', async () => {
		const runner = await here.runner();
		const gone = joining.enter(here.database, 'no-such-group', runner, 'Ines', NOW);
		expect(await gone).toEqual({ kind: 'unknown' });
	});
});
