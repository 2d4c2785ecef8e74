import { describe, expect, it } from 'vitest';
import * as audit from '$lib/server/audit.ts';
import * as groups from '$lib/server/groups.ts';
import * as memberships from '$lib/server/memberships.ts';
import { makeCoach, makeGroup, makeHelper, enter } from './coached-group.ts';
import { DATABASES, inHouse, MINUTE, NOW } from './in-house.ts';

const fields: groups.GroupFields = {
	name: "D'Arcy's early birds",
	usualPlace: 'The canal path',
	timeZone: 'Europe/Dublin',
	units: 'mph',
	paceUnits: 'min/mile',
	emergencyNumber: '999',
	meetingPoint: 'By the lock',
	defibrillator: 'Library, ground floor',
	firstAider: null
};

describe.each(DATABASES)('a group on %s', (type) => {
	const here = inHouse(type);

	it('is its coach’s, as it was written down', async () => {
		const { coachId } = await makeCoach(here);
		const id = await groups.create(here.database, coachId, fields, NOW);
		const group = { ...fields, id, role: 'owner', isDemo: false };
		expect(await groups.ofCoach(here.database, coachId, id)).toEqual(group);
		expect(await groups.list(here.database, coachId)).toEqual([group]);
	});

	it('is not there for a coach of another one, nor for a runner', async () => {
		const [mine, other] = [await makeCoach(here), await makeCoach(here)];
		const id = await makeGroup(here, mine);
		await makeGroup(here, other);
		for (const who of [other.coachId, await here.runner(), 'nobody']) {
			expect(await groups.ofCoach(here.database, who, id)).toBeNull();
			expect(await groups.change(here.database, who, id, fields)).toBe('not-found');
			expect(await groups.remove(here.database, who, id, NOW)).toBe('not-found');
		}
		expect(await groups.ofCoach(here.database, mine.coachId, 'no-such-group')).toBeNull();
		expect(await groups.ofCoach(here.database, mine.coachId, id)).not.toBeNull();
	});

	it('is seen by a helper, who decides nothing over it', async () => {
		const { database } = here;
		const owner = await makeCoach(here);
		const id = await makeGroup(here, owner);
		const helper = await makeHelper(here, id);
		expect(await groups.ofCoach(database, helper.coachId, id)).toMatchObject({ role: 'helper' });
		expect(await groups.change(database, helper.coachId, id, fields)).toBe('not-found');
		expect(await groups.remove(database, helper.coachId, id, NOW)).toBe('not-found');
	});

	it('is changed by its owner', async () => {
		const { coachId } = await makeCoach(here);
		const id = await makeGroup(here, { coachId, name: '', qualification: null, isHost: false });
		const changes = { ...fields, name: 'مجموعة الصباح', emergencyNumber: null };
		expect(await groups.change(here.database, coachId, id, changes)).toBe('changed');
		expect(await groups.ofCoach(here.database, coachId, id)).toMatchObject(changes);
	});

	it('stands in the list by its name', async () => {
		const { coachId } = await makeCoach(here);
		for (const name of ['Østerbro', 'early', 'Zoo', 'Éire', 'Early']) {
			await groups.create(here.database, coachId, { ...fields, name }, NOW);
		}
		const names = (await groups.list(here.database, coachId)).map(({ name }) => name);
		expect(names).toEqual(['early', 'Early', 'Éire', 'Østerbro', 'Zoo']);
	});

	it('goes with everything of its own, and its runners read that it ended', async () => {
		const { database } = here;
		const owner = await makeCoach(here);
		const [id, other] = [await makeGroup(here, owner), await makeGroup(here, owner)];
		const [stays, tabletOnly] = [await here.runner(), await here.runner()];
		await signedIn(stays);
		await enter(here, id, stays, 'Ines');
		await enter(here, other, stays, 'Ines');
		await enter(here, id, tabletOnly, 'Tobias');
		expect(await groups.remove(database, owner.coachId, id, NOW)).toBe('removed');
		expect(await groups.ofCoach(database, owner.coachId, id)).toBeNull();
		expect(await memberships.list(database, stays)).toMatchObject([{ groupId: other }]);
		expect((await audit.list(database, stays)).map(({ what }) => what)).toContain('group.ended');
		// Signed in nowhere, and in no group: nobody could ever reach it.
		expect(await exists(tabletOnly)).toBe(false);
		expect(await exists(stays)).toBe(true);
	});

	async function signedIn(runnerId: string) {
		const at = new Date(NOW);
		const times = { createdAt: at, updatedAt: at, expiresAt: new Date(NOW + MINUTE) };
		await here.database
			.insertInto('session')
			.values({ ...times, id: `${runnerId}-s`, userId: runnerId, token: `${runnerId}-t` })
			.execute();
	}

	async function exists(userId: string): Promise<boolean> {
		const found = await here.database
			.selectFrom('user')
			.select('id')
			.where('id', '=', userId)
			.executeTakeFirst();
		return found !== undefined;
	}
});
