import { addDays, localDate } from '../../calendar/local-date.ts';
import { adviceOfDoctors } from './advice-part.ts';
import { bandsOfCoach } from './bands-part.ts';
import { emergencyContacts } from './contacts-part.ts';
import { DEMO, demoUsers, type DemoState } from './demo.ts';
import { found } from './found.ts';
import { DEMO_DAYS, DEMO_ZONE, makeGroup } from './make-group.ts';
import { libraryOfGroup } from './library-part.ts';
import { makeRunner } from './make-runner.ts';
import { outingsTogether } from './outings-part.ts';
import { programmeOfGroup } from './programme-part.ts';
import { restingPulses } from './pulses-part.ts';
import { noonOf, type DemoGroup, type DemoPart, type DemoStores } from './parts.ts';
import { demoRunnerIds } from './people.ts';
import { removeDemo } from './remove.ts';
import { VaultClosed } from '../vault.ts';
import type { DemoWords } from './words.ts';

/** Everything beside the people, in the order in which it happened. */
const parts: readonly DemoPart[] = [
	adviceOfDoctors,
	restingPulses,
	emergencyContacts,
	programmeOfGroup,
	outingsTogether,
	bandsOfCoach,
	libraryOfGroup
];

export type Loaded = 'loaded' | 'already' | 'not-empty';

/**
 * Loads the made-up group into an empty house. Every step goes through the module that a real one
 * goes through, with a clock of the past. What breaks off half-way is taken away again.
 * @throws VaultClosed
 */
export async function loadDemo(stores: DemoStores, words: DemoWords, now: number): Promise<Loaded> {
	if (stores.vault.state !== 'right') throw new VaultClosed();
	const today = localDate(now, DEMO_ZONE);
	const begun = addDays(today, -DEMO_DAYS);
	const coach = await found(stores.database, words.coach, noonOf(begun));
	if (typeof coach === 'string') return coach;
	try {
		const { groupId, token } = await makeGroup(stores, coach.coachId, words.group, begun);
		const runners = new Map();
		for (const id of demoRunnerIds) {
			runners.set(id, await makeRunner(stores, id, words.runners[id], token, today));
		}
		const group: DemoGroup = { ...stores, words, now, today, coach, groupId, runners };
		for (const part of parts) await part(group);
	} catch (error) {
		await removeDemo(stores.database);
		throw error;
	}
	if (await isSomebodyRealHere(stores)) {
		await removeDemo(stores.database);
		return 'not-empty';
	}
	await finish(stores);
	return 'loaded';
}

/** Whose account was on its way at the very moment when the group came in. */
async function isSomebodyRealHere({ database }: DemoStores): Promise<boolean> {
	const madeUp = new Set((await demoUsers(database)).values());
	const users = await database.selectFrom('user').select('id').execute();
	return users.some(({ id }) => !madeUp.has(id));
}

async function finish({ database }: DemoStores): Promise<void> {
	const state: DemoState = 'whole';
	await database
		.updateTable('house_setting')
		.set({ value: state })
		.where('name', '=', DEMO)
		.execute();
}
