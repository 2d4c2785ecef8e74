import { describe, expect, it } from 'vitest';
import * as audit from '$lib/server/audit.ts';
import * as coaches from '$lib/server/coaches.ts';
import * as consents from '$lib/server/consents.ts';
import * as members from '$lib/server/members.ts';
import * as memberships from '$lib/server/memberships.ts';
import { enter, makeCoach, makeGroup, makeHelper } from './coached-group.ts';
import { DATABASES, inHouse, MINUTE, NOW } from './in-house.ts';

describe.each(DATABASES)('a runner’s groups on %s', (type) => {
	const here = inHouse(type);

	async function joined() {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach, 'Lantern Street beginners');
		const runner = await here.runner();
		const memberId = await enter(here, groupId, runner, 'Ines');
		return { coachId: coach.coachId, groupId, runner, memberId };
	}

	const inGroup = (at: { coachId: string; groupId: string; memberId: string }) =>
		members.find(here.database, at.coachId, at.groupId, at.memberId);

	it('are none at first', async () => {
		expect(await memberships.list(here.database, await here.runner())).toEqual([]);
	});

	it('tell who the coaches are and what is shared', async () => {
		const { runner, memberId, groupId } = await joined();
		expect(await memberships.list(here.database, runner)).toEqual([
			{
				memberId,
				groupId,
				groupName: 'Lantern Street beginners',
				name: 'Ines',
				joinedAt: NOW,
				sharedSince: NOW,
				coaches: ['Odile Marr']
			}
		]);
	});

	it('name each coach once, with the qualification, or that there is none', async () => {
		const { runner, coachId, groupId } = await joined();
		const helper = await makeHelper(here, groupId);
		await coaches.change(here.database, helper.coachId, { name: 'Bram Holt', qualification: null });
		const coach = { coachId, name: 'Odile Marr', qualification: null, isHost: false };
		await enter(here, await makeGroup(here, coach, 'Another group'), runner, 'Ines');
		expect(await memberships.coachesOf(here.database, runner)).toEqual([
			{ coachId: helper.coachId, name: 'Bram Holt', qualification: null },
			{ coachId, name: 'Odile Marr', qualification: 'Run leader, level 2' }
		]);
		expect(await memberships.coachesOf(here.database, await here.runner())).toEqual([]);
	});

	it('stop seeing the result the moment that sharing ends, and see it again when it begins', async () => {
		const at = await joined();
		const share = (isSharing: boolean, now: number) =>
			memberships.share(here.database, at.runner, at.memberId, isSharing, now);
		expect(await share(false, NOW)).toBe('changed');
		expect(await inGroup(at)).toMatchObject({ sharedSince: null, name: 'Ines' });
		expect(await share(true, NOW + MINUTE)).toBe('changed');
		expect(await inGroup(at)).toMatchObject({ sharedSince: NOW + MINUTE });
		const what = (await audit.list(here.database, at.runner)).map((entry) => entry.what);
		expect(what).toEqual(expect.arrayContaining(['sharing.given', 'sharing.withdrawn']));
	});

	it('are left for good', async () => {
		const at = await joined();
		expect(await memberships.leave(here.database, at.runner, at.memberId, NOW)).toBe('left');
		expect(await inGroup(at)).toBeNull();
		expect(await memberships.list(here.database, at.runner)).toEqual([]);
		expect(await memberships.leave(here.database, at.runner, at.memberId, NOW)).toBe('not-found');
		const back = memberships.share(here.database, at.runner, at.memberId, true, NOW);
		expect(await back).toBe('not-found');
	});

	it('are nobody else’s to leave or to share', async () => {
		const [at, other] = [await joined(), await joined()];
		for (const who of [other.runner, at.coachId, 'nobody']) {
			expect(await memberships.leave(here.database, who, at.memberId, NOW)).toBe('not-found');
			expect(await memberships.share(here.database, who, at.memberId, false, NOW)).toBe(
				'not-found'
			);
		}
		expect(await inGroup(at)).toMatchObject({ sharedSince: NOW });
	});

	it('all stop seeing it when the agreement to the questions is taken back', async () => {
		const [at, other] = [await joined(), await joined()];
		await consents.withdraw(here.database, at.runner, NOW);
		expect(await inGroup(at)).toMatchObject({ sharedSince: null });
		expect(await inGroup(other)).toMatchObject({ sharedSince: NOW });
		// Agreeing again to the questions is not agreeing to share.
		await consents.give(here.database, at.runner, NOW + MINUTE);
		expect(await inGroup(at)).toMatchObject({ sharedSince: null });
	});
});
