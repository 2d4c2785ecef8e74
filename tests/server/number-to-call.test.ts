import type { Cookies } from '@sveltejs/kit';
import { describe, expect, it } from 'vitest';
import * as groups from '$lib/server/groups.ts';
import { numberToCall } from '$lib/server/number-to-call.ts';
import type { House } from '$lib/server/open-house.ts';
import * as settings from '$lib/server/settings.ts';
import { visitor } from '$lib/server/visitor.ts';
import { join, makeCoach, makeGroup } from './coached-group.ts';
import { DATABASES, inHouse } from './in-house.ts';

// Our own rules, no source.

describe.each(DATABASES)('the number to call on %s', (type) => {
	const here = inHouse(type);
	const cookies = (number?: string) => ({ get: () => number }) as unknown as Cookies;
	const house = () => here as unknown as House;

	async function numbersOf(runnerId: string | null, number?: string) {
		const runner = runnerId === null ? null : { runnerId, sessionId: 'x' };
		const chosen = await visitor(house(), runner, cookies(number));
		return [chosen.chosenNumber, await numberToCall(house(), runner, chosen)];
	}

	it('is nobody’s guess', async () => {
		expect(await numbersOf(null)).toEqual([null, null]);
		expect(await numbersOf(await here.runner())).toEqual([null, null]);
		expect(await numbersOf(null, 'not a number')).toEqual([null, null]);
	});

	it('is that of the group where nobody chose one, and never becomes a choice of their own', async () => {
		const coach = await makeCoach(here);
		const { runnerId } = await join(here, await makeGroup(here, coach));
		expect(await numbersOf(runnerId)).toEqual([null, '112']);
		expect((await settings.load(here.database, runnerId)).emergencyNumber).toBeNull();
	});

	it('is their own choice before that of a group', async () => {
		const coach = await makeCoach(here);
		const { runnerId } = await join(here, await makeGroup(here, coach));
		expect(await numbersOf(runnerId, '999')).toEqual(['999', '999']);
		await settings.save(here.database, runnerId, { emergencyNumber: '000' });
		expect(await numbersOf(runnerId, '999')).toEqual(['000', '000']);
	});

	it('is none where the group has none', async () => {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const { runnerId } = await join(here, groupId);
		const fields = await groups.ofCoach(here.database, coach.coachId, groupId);
		if (fields === null) throw new Error('no group');
		const without = { ...fields, emergencyNumber: null };
		await groups.change(here.database, coach.coachId, groupId, without);
		expect(await numbersOf(runnerId)).toEqual([null, null]);
	});
});
