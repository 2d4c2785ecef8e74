import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { Entry } from '$lib/outing/entry.ts';
import * as attendance from '$lib/server/attendance.ts';
import type { Coach } from '$lib/server/coaches.ts';
import * as groupDays from '$lib/server/group-days.ts';
import * as groups from '$lib/server/groups.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as roster from '$lib/server/roster.ts';
import { join, makeCoach, makeGroup, type InGroup } from './coached-group.ts';
import { DATABASES, DAY, inHouse, NOW } from './in-house.ts';
import { unevenRuns } from './sample-outing.ts';
import { ZONE } from './sample.ts';

// Our own rules, no source.

describe.each(DATABASES)('days with the group, on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const plan = { onDate: '2026-11-24', outing: unevenRuns };
		const planned = await plannedOutings.plan(here.database, coach.coachId, groupId, plan);
		if (planned.kind !== 'planned') throw new Error('not planned');
		return { coach, groupId, plannedId: planned.id };
	}

	async function did({ runnerId }: InGroup, plannedId: string | null, daysAgo: number) {
		const entry: Entry = {
			id: randomUUID(),
			outingRunId: randomUUID(),
			at: NOW - daysAgo * DAY,
			seq: 0,
			elapsedMs: 0,
			kind: 'started',
			outing: unevenRuns,
			plannedId,
			place: 'outdoors',
			hot: false
		};
		const told = { now: NOW, timeZone: ZONE };
		await pastOutings.append(here.database, here.vault, runnerId, [entry], told);
		return entry.outingRunId;
	}

	async function lastOn(coach: Coach, groupId: string, { memberId }: InGroup) {
		const group = await groups.ofCoach(here.database, coach.coachId, groupId);
		if (!group) throw new Error('no group');
		const row = await roster.find(here.database, here.vault, { coach, group }, memberId, NOW);
		return row?.lastOutingOn ?? null;
	}

	it('are on the roster and at the attendance, the later of list and phone', async () => {
		const { coach, groupId, plannedId } = await led();
		const ines = await join(here, groupId);
		expect(await lastOn(coach, groupId, ines)).toBeNull();
		await did(ines, plannedId, 1);
		expect(await lastOn(coach, groupId, ines)).toBe('2026-11-24');
		const there = await groupDays.membersOn(here.database, coach.coachId, groupId, '2026-11-24');
		expect([...there]).toEqual([ines.memberId]);
		const mark = (on: string) =>
			attendance.mark(here.database, coach.coachId, groupId, ines.memberId, on, NOW);
		await mark('2026-11-20');
		expect(await lastOn(coach, groupId, ines)).toBe('2026-11-24');
		await mark('2026-11-25');
		expect(await lastOn(coach, groupId, ines)).toBe('2026-11-25');
	});

	it('do not tell of an outing on one’s own, of another group’s, or of one that was deleted', async () => {
		const { coach, groupId, plannedId } = await led();
		const other = await led();
		const ines = await join(here, groupId);
		await did(ines, null, 1);
		await did(ines, other.plannedId, 2);
		await did(ines, 'made up', 3);
		expect(await lastOn(coach, groupId, ines)).toBeNull();
		const run = await did(ines, plannedId, 1);
		await pastOutings.remove(here.database, here.vault, ines.runnerId, run, NOW);
		expect(await lastOn(coach, groupId, ines)).toBeNull();
		expect(await lastOn(other.coach, other.groupId, ines)).toBeNull();
	});

	it('are gone at once when the runner stops sharing', async () => {
		const { coach, groupId, plannedId } = await led();
		const ines = await join(here, groupId);
		await did(ines, plannedId, 1);
		await memberships.stopSharing(here.database, ines.runnerId, NOW);
		expect(await lastOn(coach, groupId, ines)).toBeNull();
		const days = groupDays.ofMember(here.database, coach.coachId, groupId, ines.memberId);
		expect(await days).toEqual([]);
	});
});
