import { describe, expect, it } from 'vitest';
import * as groupOutings from '$lib/server/group-outings.ts';
import * as groups from '$lib/server/groups.ts';
import { makeCoach, makeGroup, makeHelper } from './coached-group.ts';
import { DATABASES, inHouse, MINUTE, NOW } from './in-house.ts';

const HOUR = 60 * MINUTE;

describe.each(DATABASES)('an outing of a group on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const coach = await makeCoach(here);
		return { coachId: coach.coachId, groupId: await makeGroup(here, coach) };
	}

	type At = Awaited<ReturnType<typeof led>>;
	const start = (at: At, now = NOW) =>
		groupOutings.start(here.database, at.coachId, at.groupId, now);
	const current = (at: At, now = NOW) =>
		groupOutings.current(here.database, at.coachId, at.groupId, now);
	const end = (at: At, now = NOW) => groupOutings.end(here.database, at.coachId, at.groupId, now);

	it('is off until somebody starts it', async () => {
		const at = await led();
		expect(await current(at)).toBeNull();
		expect(await end(at)).toBe('not-found');
		expect(await start(at)).toMatchObject({ kind: 'started', outing: { onDate: '2026-11-25' } });
		expect(await current(at)).toMatchObject({ startedAt: NOW, endsAt: NOW + 4 * HOUR });
	});

	it('does not start without an emergency number', async () => {
		const at = await led();
		const group = await groups.ofCoach(here.database, at.coachId, at.groupId);
		if (!group) throw new Error('no group');
		const without = { ...group, emergencyNumber: null };
		await groups.change(here.database, at.coachId, at.groupId, without);
		expect(await start(at)).toEqual({ kind: 'no-emergency-number' });
		expect(await current(at)).toBeNull();
	});

	it('is one, whoever starts it', async () => {
		const at = await led();
		const helper = { ...at, coachId: (await makeHelper(here, at.groupId)).coachId };
		const both = await Promise.all([start(at), start(helper)]);
		expect(both.map(({ kind }) => kind).sort()).toEqual(['already', 'started']);
		expect(await current(at)).toEqual(await current(helper));
	});

	it('is ended by a coach, and starts anew', async () => {
		const at = await led();
		await start(at);
		expect(await end(at, NOW + HOUR)).toBe('ended');
		expect(await current(at, NOW + HOUR)).toBeNull();
		expect(await start(at, NOW + 2 * HOUR)).toMatchObject({ kind: 'started' });
	});

	it('ends by itself after four hours', async () => {
		const at = await led();
		await start(at);
		expect(await current(at, NOW + 4 * HOUR - 1)).not.toBeNull();
		expect(await current(at, NOW + 4 * HOUR)).toBeNull();
		expect(await end(at, NOW + 4 * HOUR)).toBe('not-found');
		expect(await start(at, NOW + 4 * HOUR)).toMatchObject({ kind: 'started' });
	});

	it('is nothing to a coach of another group', async () => {
		const [at, other] = [await led(), await led()];
		await start(at);
		const intruder = { groupId: at.groupId, coachId: other.coachId };
		expect(await start(intruder)).toEqual({ kind: 'not-found' });
		expect(await current(intruder)).toBeNull();
		expect(await end(intruder)).toBe('not-found');
		expect(await current(at)).not.toBeNull();
	});
});
