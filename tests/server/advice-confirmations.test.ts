import { beforeAll, describe, expect, it } from 'vitest';
import * as advice from '$lib/server/advice.ts';
import * as adviceConfirmations from '$lib/server/advice-confirmations.ts';
import * as audit from '$lib/server/audit.ts';
import type { Coach } from '$lib/server/coaches.ts';
import * as memberships from '$lib/server/memberships.ts';
import type { AdviceWords } from '$lib/server/shapes.ts';
import { standing } from '$lib/server/standing.ts';
import {
	join,
	makeCoach,
	makeGroup,
	makeHelper,
	nameAlone,
	type InGroup
} from './coached-group.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';

// Our own rules, no source.

const said: AdviceWords = {
	givenOn: '2026-11-20',
	role: 'exercise-professional',
	scope: 'walkrun',
	covers: ['R-AGE-45'],
	limitBpm: 131
};

describe.each(DATABASES)('a coach who confirms advice on %s', (type) => {
	const here = inHouse(type);
	let coach: Coach;
	let groupId: string;
	let runner: InGroup;
	let adviceId: string;
	beforeAll(async () => {
		coach = await makeCoach(here);
		groupId = await makeGroup(here, coach);
	});

	const begin = async () => {
		runner = await join(here, groupId);
		adviceId = (await advice.record(here.database, here.vault, runner.runnerId, said, NOW)).id;
	};
	const list = (who = coach, memberId = runner.memberId) =>
		adviceConfirmations.list(here.database, here.vault, who.coachId, groupId, memberId);
	const confirm = (who = coach, id = adviceId, memberId = runner.memberId) =>
		adviceConfirmations.confirm(here.database, who, groupId, memberId, id, NOW + 1);
	const takeBack = (who = coach) =>
		adviceConfirmations.takeBack(
			here.database,
			who.coachId,
			groupId,
			runner.memberId,
			adviceId,
			NOW + 2
		);

	it('sees date and scope, and never who gave it, what it covers or a limit in beats', async () => {
		await begin();
		expect(await list()).toEqual([
			{
				id: adviceId,
				givenOn: '2026-11-20',
				scope: 'walkrun',
				confirmedBy: []
			}
		]);
		expect(JSON.stringify(await list())).not.toMatch(/R-AGE|131|professional/);
	});

	it('is named to the runner with the qualification of that day', async () => {
		await begin();
		expect(await confirm()).toBe('confirmed');
		await here.database
			.updateTable('coach')
			.set({ qualification: 'Something newer' })
			.where('coach_id', '=', coach.coachId)
			.execute();
		const confirmation = {
			adviceId,
			coachName: 'Odile Marr',
			qualification: 'Run leader, level 2',
			confirmedAt: NOW + 1
		};
		expect(await adviceConfirmations.ofRunner(here.database, runner.runnerId)).toEqual([
			confirmation
		]);
		expect((await list())?.[0]?.confirmedBy).toEqual([confirmation]);
		const what = (await audit.list(here.database, runner.runnerId)).map((entry) => entry.what);
		expect(what).toContain('advice.confirmed');
	});

	it('opens nothing by it: what the advice lifts stays as it was', async () => {
		await begin();
		const now = () => standing(here.database, here.vault, runner.runnerId, NOW);
		const before = await now();
		await confirm();
		expect(await now()).toEqual(before);
	});

	it('confirms once: the first coach’s name stays', async () => {
		await begin();
		const helper = await makeHelper(here, groupId);
		await confirm();
		expect(await confirm(helper)).toBe('confirmed');
		expect((await list())?.[0]?.confirmedBy).toMatchObject([{ coachName: 'Odile Marr' }]);
	});

	it('takes it back', async () => {
		await begin();
		await confirm();
		expect(await takeBack()).toBe('taken-back');
		expect(await takeBack()).toBe('not-found');
		expect((await list())?.[0]?.confirmedBy).toEqual([]);
	});

	it('loses it when the runner removes the advice', async () => {
		await begin();
		await confirm();
		await advice.remove(here.database, runner.runnerId, adviceId, NOW);
		expect(await adviceConfirmations.ofRunner(here.database, runner.runnerId)).toEqual([]);
		expect(await confirm()).toBe('not-found');
	});

	it('can confirm only what this runner wrote down', async () => {
		await begin();
		const mine = adviceId;
		await begin();
		expect(await confirm(coach, mine)).toBe('not-found');
		expect(await confirm(coach, 'no-advice')).toBe('not-found');
	});

	it('of somebody who stopped sharing, left or never joined sees and confirms nothing', async () => {
		await begin();
		await memberships.share(here.database, runner.runnerId, runner.memberId, false, NOW);
		expect(await list()).toBeNull();
		expect(await confirm()).toBe('not-found');
		await memberships.share(here.database, runner.runnerId, runner.memberId, true, NOW);
		await memberships.leave(here.database, runner.runnerId, runner.memberId, NOW);
		expect(await list()).toBeNull();
		expect(await confirm()).toBe('not-found');
		const alone = await nameAlone(here, groupId, 'Gwen');
		expect(await list(coach, alone)).toBeNull();
	});

	it('of another group sees and confirms nothing', async () => {
		await begin();
		await confirm();
		const stranger = await makeCoach(here, 'Tove Lindqvist');
		await makeGroup(here, stranger, 'Harbour walkers');
		expect(await list(stranger)).toBeNull();
		expect(await confirm(stranger)).toBe('not-found');
		expect(await takeBack(stranger)).toBe('not-found');
		expect((await list())?.[0]?.confirmedBy).toHaveLength(1);
	});
});
