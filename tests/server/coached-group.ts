import { randomUUID } from 'node:crypto';
import type { Answers } from '$lib/screening/types.ts';
import type { Coach } from '$lib/server/coaches.ts';
import * as groups from '$lib/server/groups.ts';
import * as joining from '$lib/server/joining.ts';
import * as members from '$lib/server/members.ts';
import * as profiles from '$lib/server/profiles.ts';
import { DAY, makeUser, NOW, type InHouse } from './in-house.ts';
import { screened } from './sample.ts';

/** Somebody who leads groups, made without a sign-up. */
export async function makeCoach(here: InHouse, name = 'Odile Marr'): Promise<Coach> {
	const coachId = await makeUser(here.database);
	const coach: Coach = { coachId, name, qualification: 'Run leader, level 2', isHost: false };
	await here.database
		.insertInto('coach')
		.values({
			coach_id: coachId,
			name,
			qualification: coach.qualification,
			is_host: 0,
			created_at: NOW
		})
		.execute();
	return coach;
}

export async function makeGroup(here: InHouse, coach: Coach, name = 'Lantern Street beginners') {
	const fields: groups.GroupFields = {
		name,
		usualPlace: null,
		timeZone: 'Europe/Dublin',
		units: 'km/h',
		paceUnits: 'min/km',
		emergencyNumber: '112',
		meetingPoint: null,
		defibrillator: null,
		firstAider: null
	};
	return groups.create(here.database, coach.coachId, fields, NOW);
}

export async function makeHelper(here: InHouse, groupId: string): Promise<Coach> {
	const coach = await makeCoach(here, 'Bram Holt');
	await here.database
		.insertInto('group_coach')
		.values({ group_id: groupId, coach_id: coach.coachId, role: 'helper', added_at: NOW })
		.execute();
	return coach;
}

export interface InGroup {
	readonly runnerId: string;
	readonly memberId: string;
}

/** A runner with a result and a resting pulse of 68, who joined and shares. */
export async function join(
	here: InHouse,
	groupId: string,
	changes: Answers = {},
	name = `Runner ${randomUUID().slice(0, 8)}`
): Promise<InGroup> {
	const runnerId = await here.runner();
	await screened(here, runnerId, changes, NOW - DAY);
	const mornings = [{ bpm: 68, on: '2026-11-24', method: 60 as const }];
	const profile = { ...profiles.EMPTY, mornings };
	await profiles.save(here.database, here.vault, runnerId, profile, NOW - DAY);
	return { runnerId, memberId: await enter(here, groupId, runnerId, name) };
}

export async function enter(here: InHouse, groupId: string, runnerId: string, name: string) {
	const joined = await joining.enter(here.database, groupId, runnerId, name, NOW);
	if (!('memberId' in joined)) throw new Error(`not joined: ${joined.kind}`);
	return joined.memberId;
}

/** A name on the list that nobody has joined under. */
export async function nameAlone(here: InHouse, groupId: string, name: string): Promise<string> {
	const [id] = await members.add(here.database, groupId, [name], NOW);
	return id as string;
}
