import { isStopSign, type Entry } from '$lib/outing/entry.ts';
import { jot, jotted, strike, type Jotted } from './jotted-entries.ts';
import type { EntryStore } from './outbox.ts';
import type { PhoneDatabase } from './phone-database.ts';

/** Writes it down for good: when this returns, a kill or a flat battery no longer takes it away. */
export async function write(
	database: PhoneDatabase,
	runnerKey: string,
	entries: readonly Entry[]
): Promise<void> {
	jot(runnerKey, entries);
	await add(
		database,
		entries.map((entry) => ({ runnerKey, entry }))
	);
}

/** Writes what a reload cut off. For whoever opens the phone to read or to send. */
export async function writeJotted(database: PhoneDatabase): Promise<void> {
	const left = jotted();
	if (left.length > 0) await add(database, left);
}

async function add(database: PhoneDatabase, entries: readonly Jotted[]): Promise<void> {
	const step = database.transaction('entry', 'readwrite', { durability: 'strict' });
	for (const { runnerKey, entry } of entries) {
		// Another page may have taken it up meanwhile.
		const isThere = (await step.store.index('id').getKey(entry.id)) !== undefined;
		if (!isThere) void step.store.add({ runnerKey, entry, state: 'waiting' });
	}
	await step.done;
	strike(entries.map(({ entry }) => entry.id));
}

/** The entries of the outing run that this runner began last, or none. */
export async function ofLastRun(
	database: PhoneDatabase,
	runnerKey: string
): Promise<readonly Entry[]> {
	const all = await database.getAllFromIndex('entry', 'runner', runnerKey);
	const last = all.findLast(({ entry }) => entry.kind === 'started')?.entry.outingRunId;
	return all.flatMap(({ entry }) => (entry.outingRunId === last ? entry : []));
}

/** What waits of one runner, for the outbox. What the server has stays here while it may be needed. */
export function storeOf(database: PhoneDatabase, runnerKey: string): EntryStore {
	return {
		async waiting() {
			const waiting = await database.getAllFromIndex('entry', 'state', [runnerKey, 'waiting']);
			return waiting.map(({ entry }) => entry);
		},
		settled: (ids) => mark(database, ids, 'kept')
	};
}

/** Sets what became of entries. What was refused stays refused. */
export async function mark(
	database: PhoneDatabase,
	ids: readonly string[],
	state: 'kept' | 'refused'
): Promise<void> {
	const step = database.transaction('entry', 'readwrite', { durability: 'strict' });
	for (const id of ids) {
		const found = await step.store.index('id').get(id);
		if (found?.state === 'waiting') await step.store.put({ ...found, state });
	}
	await step.done;
}

/** Whose entries wait here. */
export async function runnersWaiting(database: PhoneDatabase): Promise<readonly string[]> {
	const waiting = await database.getAllFromIndex('entry', 'waiting', 'waiting');
	return [...new Set(waiting.map(({ runnerKey }) => runnerKey))];
}

export interface Unsent {
	readonly waiting: number;
	readonly refused: number;
}

/** How many entries wait, and how many the server would not take, whoever wrote them. */
export async function unsent(database: PhoneDatabase): Promise<Unsent> {
	const [waiting, refused] = await Promise.all([
		database.countFromIndex('entry', 'waiting', 'waiting'),
		database.countFromIndex('entry', 'waiting', 'refused')
	]);
	return { waiting, refused };
}

/** Whether an urgent sign of this runner has not reached the server yet. */
export async function signWaits(database: PhoneDatabase, runnerKey: string): Promise<boolean> {
	const waiting = await storeOf(database, runnerKey).waiting();
	return waiting.some((entry) => entry.kind === 'something-wrong' && isStopSign(entry.sign));
}

/** Forgets what the server has, or would not take, of outings that began before a time. */
export async function forgetOld(database: PhoneDatabase, beforeMs: number): Promise<void> {
	const step = database.transaction('entry', 'readwrite');
	const all = await step.store.getAll();
	const recent = new Set(
		all.flatMap(({ entry }) => (entry.at >= beforeMs ? entry.outingRunId : []))
	);
	for (const { order, entry, state } of all) {
		const isOld = state !== 'waiting' && !recent.has(entry.outingRunId);
		if (isOld && order !== undefined) void step.store.delete(order);
	}
	await step.done;
}
