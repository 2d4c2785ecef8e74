import { beforeAll, describe, expect, it } from 'vitest';
import * as coaches from '$lib/server/coaches.ts';
import { leave, onlyOwnerOf } from '$lib/server/coach-leaving.ts';
import { migrate } from '$lib/server/database/migrate.ts';
import * as groups from '$lib/server/groups.ts';
import * as hosting from '$lib/server/hosting.ts';
import * as houseSettings from '$lib/server/house-settings.ts';
import * as resets from '$lib/server/password-resets.ts';
import { lanternStreet, signedIn } from './coach.ts';
import { DATABASES, emptyDatabase, inHouse, NOW } from './in-house.ts';

// Our own rules, no source.

describe.each(DATABASES)('a coach who leaves, on %s', (type) => {
	const here = inHouse(type);
	let host: string;
	const coach = async (email: string) => (await signedIn(here.database, email)).coachId;
	const group = (owner: string, name: string) =>
		groups.create(here.database, owner, { ...lanternStreet, name }, NOW);
	const add = (groupId: string, coachId: string, role: 'owner' | 'helper') =>
		here.database
			.insertInto('group_coach')
			.values({ group_id: groupId, coach_id: coachId, role, added_at: NOW })
			.execute();

	beforeAll(async () => {
		host = await coach('host@example.org');
		await houseSettings.setSignUp(here.database, host, 'open');
	});

	it('without a group is gone with everything that could sign them in', async () => {
		const { coachId, browser } = await signedIn(here.database, 'ana@example.org');
		await resets.create(here.database, coachId, NOW);
		expect(await leave(here.database, coachId)).toBe('left');
		expect((await browser.auth.asking(browser.headers())).coach).toBeNull();
		for (const table of ['session', 'account', 'passkey'] as const) {
			const rows = here.database.selectFrom(table).select('id').where('userId', '=', coachId);
			expect(await rows.execute()).toEqual([]);
		}
		const links = here.database.selectFrom('verification').select('id');
		expect(await links.where('value', 'like', `%${coachId}%`).execute()).toEqual([]);
		// The e-mail is free again.
		expect(await coach('ana@example.org')).not.toBe(coachId);
	});

	it('is told which groups they alone own, and stays', async () => {
		const bo = await coach('bo@example.org');
		const friend = await coach('friend@example.org');
		const alone = await group(bo, 'Alone');
		const shared = await group(bo, 'Shared');
		const helped = await group(bo, 'Helped');
		await add(shared, friend, 'owner');
		await add(helped, friend, 'helper');
		const named = await onlyOwnerOf(here.database, bo);
		expect(named).toEqual([
			{ id: alone, name: 'Alone' },
			{ id: helped, name: 'Helped' }
		]);
		expect(await leave(here.database, bo)).toBe('only-owner');
		expect(await coaches.find(here.database, bo)).not.toBeNull();
		await groups.remove(here.database, bo, alone, NOW);
		await here.database
			.updateTable('group_coach')
			.set({ role: 'owner' })
			.where('group_id', '=', helped)
			.execute();
		expect(await leave(here.database, bo)).toBe('left');
		expect(await groups.ofCoach(here.database, friend, shared)).not.toBeNull();
	});

	it('leaves a group with an owner when both owners go at once', async () => {
		const [cy, di] = [await coach('cy@example.org'), await coach('di@example.org')];
		const groupId = await group(cy, 'Two owners');
		await add(groupId, di, 'owner');
		const answers = await Promise.all([cy, di].map((one) => leave(here.database, one)));
		expect(answers.sort()).toEqual(['left', 'only-owner']);
	});

	it('hands the house over first, if it is theirs and others are there', async () => {
		const ed = await coach('ed@example.org');
		expect(await leave(here.database, host)).toBe('host');
		expect(await hosting.heirs(here.database, ed)).toEqual([]);
		const heirs = await hosting.heirs(here.database, host);
		expect(heirs.map(({ coachId }) => coachId)).toContain(ed);
		expect(heirs.map(({ coachId }) => coachId)).not.toContain(host);
		const handOver = (by: string, to: string) => hosting.handOver(here.database, by, to);
		expect(await handOver(ed, ed)).toBe('not-found');
		expect(await handOver(ed, host)).toBe('not-found');
		expect(await handOver(host, 'nobody')).toBe('not-found');
		expect(await handOver(host, await here.runner())).toBe('not-found');
		expect(await handOver(host, ed)).toBe('handed-over');
		expect(await coaches.find(here.database, ed)).toMatchObject({ isHost: true });
		expect(await coaches.find(here.database, host)).toMatchObject({ isHost: false });
		expect(await houseSettings.setSignUp(here.database, host, 'invitation')).toBe(false);
		expect(await houseSettings.signUp(here.database)).toBe('open');
		expect(await houseSettings.setSignUp(here.database, ed, 'invitation')).toBe(true);
	});

	it('and was the last one leaves the house to whoever comes next', async () => {
		const { database, drop } = await emptyDatabase(type);
		await migrate(database);
		const first = await signedIn(database, 'host@example.org');
		expect(await leave(database, first.coachId)).toBe('left');
		expect(await houseSettings.signUp(database)).toBe('first');
		const next = await signedIn(database, 'next@example.org');
		expect(await coaches.find(database, next.coachId)).toMatchObject({ isHost: true });
		await drop();
	});
});
