import { beforeAll, describe, expect, it } from 'vitest';
import * as bandDoubts from '$lib/server/band-doubts.ts';
import type { Coach } from '$lib/server/coaches.ts';
import * as memberships from '$lib/server/memberships.ts';
import { enter, join, makeCoach, makeGroup, type InGroup } from './coached-group.ts';
import { DATABASES, inHouse, MINUTE, NOW } from './in-house.ts';

// Our own rules, no source.

describe.each(DATABASES)('“this feels wrong” on %s', (type) => {
	const here = inHouse(type);
	let coach: Coach;
	let groupId: string;
	let runner: InGroup;
	beforeAll(async () => {
		coach = await makeCoach(here);
	});

	const begin = async () => {
		groupId = await makeGroup(here, coach);
		runner = await join(here, groupId);
	};
	const say = (feels: bandDoubts.Feels = 'too-hard', now = NOW) =>
		bandDoubts.say(here.database, runner.runnerId, 'steady-run', feels, now);
	const heard = (who = coach) => bandDoubts.list(here.database, who.coachId, groupId);

	it('reaches the coach of the group, and the runner sees whether it was seen', async () => {
		await begin();
		expect(await say()).toBe(1);
		const [doubt] = await heard();
		expect(doubt).toEqual({
			id: expect.any(String),
			memberId: runner.memberId,
			phase: 'steady-run',
			feels: 'too-hard',
			saidAt: NOW,
			seenAt: null
		});
		const seen = bandDoubts.markSeen(
			here.database,
			coach.coachId,
			groupId,
			doubt?.id ?? '',
			NOW + MINUTE
		);
		expect(await seen).toBe('seen');
		expect(await bandDoubts.ofRunner(here.database, runner.runnerId)).toEqual([
			{ ...doubt, seenAt: NOW + MINUTE }
		]);
	});

	it('seen twice was seen the first time', async () => {
		await begin();
		await say();
		const [doubt] = await heard();
		for (const later of [1, 2]) {
			await bandDoubts.markSeen(
				here.database,
				coach.coachId,
				groupId,
				doubt?.id ?? '',
				NOW + later
			);
		}
		expect((await heard())[0]?.seenAt).toBe(NOW + 1);
	});

	it('said again before it is seen takes the place of what was said', async () => {
		await begin();
		await say('too-hard');
		await say('too-easy', NOW + 1);
		expect(await heard()).toMatchObject([{ feels: 'too-easy', saidAt: NOW + 1 }]);
		const id = (await heard())[0]?.id ?? '';
		await bandDoubts.markSeen(here.database, coach.coachId, groupId, id, NOW + 2);
		await say('other', NOW + 3);
		expect((await heard()).map(({ feels }) => feels)).toEqual(['other', 'too-easy']);
	});

	it('reaches both groups of a runner who is in two, and one is not seen for the other', async () => {
		await begin();
		const other = await makeCoach(here, 'Tove Lindqvist');
		const harbour = await makeGroup(here, other, 'Harbour walkers');
		await enter(here, harbour, runner.runnerId, 'Ines');
		expect(await say()).toBe(2);
		const [mine] = await heard();
		await bandDoubts.markSeen(here.database, coach.coachId, groupId, mine?.id ?? '', NOW);
		const [theirs] = await bandDoubts.list(here.database, other.coachId, harbour);
		expect(theirs?.seenAt).toBeNull();
	});

	it('has nobody to hear it without a group, or without sharing', async () => {
		const alone = await here.runner();
		expect(await bandDoubts.hasListener(here.database, alone)).toBe(false);
		expect(await bandDoubts.say(here.database, alone, 'steady-run', 'other', NOW)).toBe(0);
		await begin();
		expect(await bandDoubts.hasListener(here.database, runner.runnerId)).toBe(true);
		await say();
		await memberships.share(here.database, runner.runnerId, runner.memberId, false, NOW);
		expect(await bandDoubts.hasListener(here.database, runner.runnerId)).toBe(false);
		expect(await heard()).toEqual([]);
	});

	it('is not heard, nor marked as seen, by a coach of another group', async () => {
		await begin();
		await say();
		const id = (await heard())[0]?.id ?? '';
		const stranger = await makeCoach(here, 'Tove Lindqvist');
		const theirs = await makeGroup(here, stranger, 'Harbour walkers');
		expect(await heard(stranger)).toEqual([]);
		for (const group of [groupId, theirs]) {
			expect(await bandDoubts.markSeen(here.database, stranger.coachId, group, id, NOW)).toBe(
				'not-found'
			);
		}
		expect((await heard())[0]?.seenAt).toBeNull();
	});

	it('is not said for somebody else', async () => {
		await begin();
		const other = await join(here, groupId);
		await say();
		expect(await bandDoubts.ofRunner(here.database, other.runnerId)).toEqual([]);
	});
});
