import { describe, expect, it } from 'vitest';
import * as groups from '$lib/server/groups.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import { Unreadable } from '$lib/server/vault.ts';
import { makeCoach, makeGroup, makeHelper } from './coached-group.ts';
import { DATABASES, DAY, inHouse, MINUTE, NOW } from './in-house.ts';
import { phase, unevenRuns } from './sample-outing.ts';

// Our own rules, no source.

const renamed = { ...unevenRuns, name: 'Outing 8: 60 s' };

describe.each(DATABASES)('the outings of a group on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const coach = await makeCoach(here);
		return { coach, groupId: await makeGroup(here, coach) };
	}

	async function made(holder: outingPlans.Holder, outing = unevenRuns) {
		const created = await outingPlans.create(here.database, holder, outing, NOW);
		if (created.kind !== 'created') throw new Error(created.kind);
		return created.id;
	}

	const find = (holder: outingPlans.Holder, id: string) =>
		outingPlans.find(here.database, holder, id);
	const list = (holder: outingPlans.Holder) => outingPlans.list(here.database, holder);
	const save = (holder: outingPlans.Holder, id: string, revision: number, outing = renamed) =>
		outingPlans.save(here.database, holder, id, { outing, revision }, NOW + MINUTE);

	it('are none at first, then whole as they were written, by name', async () => {
		const at = await led();
		expect(await list(at)).toEqual([]);
		const ids = [await made(at, renamed), await made(at)];
		expect((await list(at)).map(({ id }) => id)).toEqual(ids.reverse());
		expect(await find(at, ids[0] as string)).toEqual({
			id: ids[0],
			outing: unevenRuns,
			revision: 1,
			changedAt: NOW,
			changedByName: 'Odile Marr'
		});
	});

	it('are changed by a helper too, who may stand in on the day', async () => {
		const at = await led();
		const id = await made(at);
		const helper = { coach: await makeHelper(here, at.groupId), groupId: at.groupId };
		expect(await save(helper, id, 1)).toEqual({ kind: 'saved', revision: 2 });
		expect(await find(at, id)).toMatchObject({ outing: renamed, changedByName: 'Bram Holt' });
		expect(await made(helper)).toBeTruthy();
	});

	it('are nothing to a coach of another group, nor to a runner', async () => {
		const [at, other] = [await led(), await led()];
		const id = await made(at);
		const intruders: outingPlans.Holder[] = [
			{ coach: other.coach, groupId: at.groupId },
			other,
			{ runnerId: await here.runner() }
		];
		for (const intruder of intruders) {
			expect(await find(intruder, id)).toBeNull();
			expect(await list(intruder)).toEqual([]);
			expect(await save(intruder, id, 1)).toEqual({ kind: 'not-found' });
			expect(await outingPlans.remove(here.database, intruder, id, NOW)).toBe('not-found');
			expect(await outingPlans.versions(here.database, intruder, id)).toEqual([]);
		}
		const created = await outingPlans.create(
			here.database,
			{ coach: other.coach, groupId: at.groupId },
			unevenRuns,
			NOW
		);
		expect(created).toEqual({ kind: 'not-found' });
		expect(await find(at, id)).toMatchObject({ outing: unevenRuns, revision: 1 });
	});

	it('tell whoever saves second, and write nothing over', async () => {
		const at = await led();
		const id = await made(at);
		const answers = await Promise.all([save(at, id, 1), save(at, id, 1)]);
		expect(answers.map(({ kind }) => kind).sort()).toEqual(['changed-meanwhile', 'saved']);
		const late = await save(at, id, 1, unevenRuns);
		expect(late).toMatchObject({
			kind: 'changed-meanwhile',
			theirs: { outing: renamed, revision: 2, changedByName: 'Odile Marr' }
		});
		expect(await save(at, id, 2, unevenRuns)).toEqual({ kind: 'saved', revision: 3 });
		const kept = await outingPlans.versions(here.database, at, id);
		expect(kept.map(({ revision }) => revision)).toEqual([3, 2, 1]);
		expect(kept.map(({ outing }) => outing.name)).toEqual([
			unevenRuns.name,
			renamed.name,
			unevenRuns.name
		]);
	});

	it('keep their last fifty versions', async () => {
		const at = await led();
		const id = await made(at);
		for (let revision = 1; revision < 55; revision++) await save(at, id, revision);
		const kept = await outingPlans.versions(here.database, at, id);
		expect(kept.map(({ revision }) => revision)).toEqual(
			Array.from({ length: 50 }, (_, past) => 55 - past)
		);
	});

	it('are put back after they were removed, until a month has passed', async () => {
		const at = await led();
		const id = await made(at);
		const { database } = here;
		expect(await outingPlans.putBack(database, at, id)).toBe('not-found');
		expect(await outingPlans.remove(database, at, id, NOW)).toBe('removed');
		expect(await outingPlans.remove(database, at, id, NOW)).toBe('not-found');
		expect(await find(at, id)).toBeNull();
		expect(await list(at)).toEqual([]);
		expect(await save(at, id, 1)).toEqual({ kind: 'not-found' });
		await outingPlans.sweep(database, NOW + 30 * DAY - 1);
		expect(await outingPlans.putBack(database, at, id)).toBe('put-back');
		expect(await find(at, id)).toMatchObject({ outing: unevenRuns });
		await outingPlans.remove(database, at, id, NOW);
		await outingPlans.sweep(database, NOW + 30 * DAY);
		expect(await outingPlans.putBack(database, at, id)).toBe('not-found');
	});

	it('are at most two hundred', async () => {
		const at = await led();
		for (let n = 0; n < outingPlans.MOST_PLANS; n++) await made(at);
		const more = await outingPlans.create(here.database, at, unevenRuns, NOW);
		expect(more).toEqual({ kind: 'full' });
	});

	it('take in nothing that is no outing', async () => {
		const at = await led();
		const zero = { name: 'None', parts: [phase('steady-run', 0)] };
		await expect(outingPlans.create(here.database, at, zero, NOW)).rejects.toThrow();
		const id = await made(at);
		await expect(save(at, id, 1, { ...renamed, parts: [] })).rejects.toThrow();
		expect(await find(at, id)).toMatchObject({ outing: unevenRuns, revision: 1 });
	});

	it.each(['{"name":"x","parts":[]}', 'no json'])(
		'that cannot be read stop: %s',
		async (outing) => {
			const at = await led();
			const id = await made(at);
			await here.database.updateTable('outing_plan').set({ outing }).where('id', '=', id).execute();
			await expect(find(at, id)).rejects.toThrow(Unreadable);
		}
	);

	it('go with their group', async () => {
		const at = await led();
		const id = await made(at);
		await groups.remove(here.database, at.coach.coachId, at.groupId, NOW);
		const rows = await here.database
			.selectFrom('outing_plan_version')
			.select('plan_id')
			.where('plan_id', '=', id)
			.execute();
		expect(rows).toEqual([]);
	});

	it('of a runner are the runner’s alone', async () => {
		const [mine, other] = [{ runnerId: await here.runner() }, { runnerId: await here.runner() }];
		const id = await made(mine);
		expect(await find(mine, id)).toMatchObject({ outing: unevenRuns, changedByName: null });
		expect(await find(other, id)).toBeNull();
		expect(await save(other, id, 1)).toEqual({ kind: 'not-found' });
		expect(await save(mine, id, 1)).toEqual({ kind: 'saved', revision: 2 });
	});
});
