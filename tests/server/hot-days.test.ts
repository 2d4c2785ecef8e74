import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { Entry } from '$lib/outing/entry.ts';
import * as hotDays from '$lib/server/hot-days.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import { enter, join, makeCoach, makeGroup, makeHelper } from './coached-group.ts';
import { DATABASES, inHouse, MINUTE, NOW } from './in-house.ts';
import { unevenRuns } from './sample-outing.ts';

// Our own rules, no source.

const today = '2026-11-25';
const tomorrow = '2026-11-26';

describe.each(DATABASES)('days that a coach marked as hot on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		return { coachId: coach.coachId, groupId, ...(await join(here, groupId)) };
	}

	type At = Awaited<ReturnType<typeof led>>;
	const mark = ({ coachId, groupId }: Pick<At, 'coachId' | 'groupId'>, on = today) =>
		hotDays.mark(here.database, coachId, groupId, on, NOW);
	const list = ({ coachId, groupId }: Pick<At, 'coachId' | 'groupId'>, from = today) =>
		hotDays.list(here.database, coachId, groupId, from);
	const seen = ({ runnerId }: Pick<At, 'runnerId'>, from = today, until = '2026-12-31') =>
		hotDays.ofRunner(here.database, runnerId, { from, until });

	it('are none until one is marked; marked twice it is marked, and it can be taken back', async () => {
		const at = await led();
		expect(await list(at)).toEqual([]);
		expect(await mark(at, tomorrow)).toBe('marked');
		expect(await mark(at)).toBe('marked');
		expect(await mark(at)).toBe('marked');
		expect(await list(at)).toEqual([today, tomorrow]);
		expect(await list(at, tomorrow)).toEqual([tomorrow]);
		expect(await hotDays.unmark(here.database, at.coachId, at.groupId, today)).toBe('unmarked');
		expect(await hotDays.unmark(here.database, at.coachId, at.groupId, today)).toBe('not-found');
		expect(await list(at)).toEqual([tomorrow]);
	});

	it('are marked by whoever leads, a helper too, and by nobody else', async () => {
		const at = await led();
		const helper = await makeHelper(here, at.groupId);
		expect(await mark({ ...at, coachId: helper.coachId })).toBe('marked');
		const other = await led();
		expect(await mark({ ...at, coachId: other.coachId }, tomorrow)).toBe('not-found');
		expect(await list({ ...at, coachId: other.coachId })).toEqual([]);
		expect(await list(at)).toEqual([today]);
	});

	it('are those of each of a runner’s groups, once, and of nobody else', async () => {
		const at = await led();
		const second = await led();
		await enter(here, second.groupId, at.runnerId, 'Same');
		await mark(at);
		await mark(second);
		await mark(second, tomorrow);
		expect(await seen(at)).toEqual([today, tomorrow]);
		expect(await seen(at, tomorrow)).toEqual([tomorrow]);
		expect(await seen({ runnerId: await here.runner() })).toEqual([]);
	});

	it('make an outing of that day a hot one, also where the phone did not know', async () => {
		const at = await led();
		const { database, vault } = here;
		const runId = randomUUID();
		const begun: Entry = {
			id: randomUUID(),
			outingRunId: runId,
			at: NOW - MINUTE,
			seq: 0,
			elapsedMs: 0,
			kind: 'started',
			outing: unevenRuns,
			plannedId: null,
			place: 'outdoors',
			hot: false
		};
		const told = { now: NOW, timeZone: 'UTC' };
		await pastOutings.append(database, vault, at.runnerId, [begun], told);
		const isHot = async () =>
			(await pastOutings.of(database, vault, at.runnerId, runId))?.started?.hot;
		expect(await isHot()).toBe(false);
		await mark(at);
		expect(await isHot()).toBe(true);
		await memberships.leave(database, at.runnerId, at.memberId, NOW);
		expect(await isHot(), 'a day that was hot stays hot').toBe(true);
		const [sent] = await pastOutings.entriesOf(database, vault, at.runnerId);
		expect(sent, 'what was sent stays as it was').toMatchObject({ hot: false });
	});
});
