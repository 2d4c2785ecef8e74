import { describe, expect, it } from 'vitest';
import * as attendance from '$lib/server/attendance.ts';
import * as memberships from '$lib/server/memberships.ts';
import { enter, makeCoach, makeGroup, makeHelper, nameAlone } from './coached-group.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';

const TODAY = '2026-11-25';

describe.each(DATABASES)('attendance on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const { coachId, ...coach } = await makeCoach(here);
		const groupId = await makeGroup(here, { coachId, ...coach });
		return { coachId, groupId, memberId: await nameAlone(here, groupId, 'راشد') };
	}

	const mark = (at: { coachId: string; groupId: string; memberId: string }, onDate = TODAY) =>
		attendance.mark(here.database, at.coachId, at.groupId, at.memberId, onDate, NOW);
	const list = (at: { coachId: string; groupId: string }, onDate?: string) =>
		attendance.list(here.database, at.coachId, at.groupId, onDate);

	it('is a name and a day, once', async () => {
		const at = await led();
		expect(await list(at)).toEqual([]);
		expect(await mark(at)).toBe('marked');
		expect(await mark(at)).toBe('marked');
		expect(await list(at)).toEqual([{ name: 'راشد', onDate: TODAY, memberId: at.memberId }]);
	});

	it('is taken back, of that day alone', async () => {
		const at = await led();
		await mark(at, '2026-11-18');
		await mark(at);
		const { database } = here;
		await attendance.unmark(database, at.coachId, at.groupId, at.memberId, TODAY);
		await attendance.unmark(database, at.coachId, at.groupId, at.memberId, TODAY);
		expect(await list(at)).toMatchObject([{ onDate: '2026-11-18' }]);
	});

	it('has no day that is still to come where the group is', async () => {
		const at = await led();
		expect(await mark(at, '2026-11-26')).toBe('in-the-future');
		expect(await mark(at, '2026-02-30')).toBe('not-found');
		expect(await list(at)).toEqual([]);
	});

	it('tells of each member how often and when last, in one look', async () => {
		const at = await led();
		const other = { ...at, memberId: await nameAlone(here, at.groupId, 'Gwen') };
		for (const day of ['2026-11-04', '2026-11-18', '2026-11-11']) await mark(at, day);
		await mark(other, '2026-11-11');
		const last = await attendance.byMember(here.database, at.coachId, at.groupId);
		expect(Object.fromEntries(last)).toEqual({
			[at.memberId]: { times: 3, lastOn: '2026-11-18' },
			[other.memberId]: { times: 1, lastOn: '2026-11-11' }
		});
		expect(await list(at, '2026-11-11')).toHaveLength(2);
		const days = attendance.ofMember(here.database, at.coachId, at.groupId, at.memberId);
		expect(await days).toEqual(['2026-11-18', '2026-11-11', '2026-11-04']);
	});

	it('is taken by a helper too, and by no other coach', async () => {
		const { database } = here;
		const [at, other] = [await led(), await led()];
		const helper = await makeHelper(here, at.groupId);
		expect(await mark({ ...at, coachId: helper.coachId })).toBe('marked');
		for (const who of [
			{ ...at, coachId: other.coachId },
			{ ...other, memberId: at.memberId }
		]) {
			expect(await mark(who, '2026-11-18')).toBe('not-found');
			await attendance.unmark(database, who.coachId, who.groupId, at.memberId, TODAY);
			expect(await list({ ...at, coachId: who.coachId })).toEqual([]);
			expect((await attendance.byMember(database, who.coachId, at.groupId)).size).toBe(0);
		}
		expect(await list(at)).toHaveLength(1);
	});

	it('stays when a runner leaves', async () => {
		const at = await led();
		const runner = await here.runner();
		const memberId = await enter(here, at.groupId, runner, 'Ines');
		await mark({ ...at, memberId });
		await memberships.leave(here.database, runner, memberId, NOW);
		expect(await list(at)).toMatchObject([{ name: 'Ines', onDate: TODAY }]);
		expect(await mark({ ...at, memberId }, '2026-11-18')).toBe('not-found');
	});
});
