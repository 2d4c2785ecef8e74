import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Entry } from '$lib/outing/entry.ts';
import type { KeptForRunner } from '$lib/outing/kept.ts';
import type { OutingClock } from '$lib/outing/outing-clock.ts';
import type { PulseTally } from '$lib/recording/pulse-tally.ts';
import { strikeAll } from './jotted-entries.ts';

/** An entry as it lies on this phone. */
export interface WrittenEntry {
	/** Given by the database: the order in which things were written here. */
	readonly order?: number;
	/** Whose it is. */
	readonly runnerKey: string;
	readonly entry: Entry;
	readonly state: 'waiting' | 'kept' | 'refused';
}

/** What the server lets this phone keep of a runner, or that it no longer does. */
export interface KeptHere {
	readonly runnerKey: string;
	/** Null once it was closed; then no number of the runner's is left here. */
	readonly kept: KeptForRunner<unknown> | null;
	/** Closed by a sign that was told here, which only the server lifts. */
	readonly bySign: boolean;
	/** Outlives the numbers: it is needed most when they are gone. */
	readonly emergencyNumber: string | null;
	/** What to add to this phone's clock to have the server's. */
	readonly skewMs: number;
	/** The highest time ever seen here, on the server's clock. */
	readonly highestSeenMs: number;
}

/** Of an outing that is on: how far it is, and what a strap gave in the phase that is on. */
export interface RunHere {
	readonly outingRunId: string;
	readonly clock: OutingClock;
	/** Not there where nobody measured. */
	readonly pulse?: PulseSoFar | null;
}

export interface PulseSoFar {
	/** Its place in the plan, from 0. */
	readonly phase: number;
	readonly tally: PulseTally;
}

/** A runner said that they were not well, and on which day. */
export interface NotWellHere {
	readonly runnerKey: string;
	/** YYYY-MM-DD in the time zone. */
	readonly on: string;
	/** Not there in what was kept by an older app. */
	readonly timeZone?: string;
}

interface PhoneSchema extends DBSchema {
	entry: {
		key: number;
		value: WrittenEntry;
		indexes: { id: string; runner: string; state: [string, string]; waiting: string };
	};
	kept: { key: string; value: KeptHere };
	clock: { key: string; value: RunHere };
	notWell: { key: string; value: NotWellHere };
}

export type PhoneDatabase = IDBPDatabase<PhoneSchema>;

/** With another shape of what is kept, the old is of no use: the next number. */
const NAME = 'breathmark';
const VERSION = 1;

/** Whether anything was ever kept here. Opening it would make it. */
export async function phoneIsThere(): Promise<boolean> {
	return (await indexedDB.databases()).some(({ name }) => name === NAME);
}

/** @throws where a browser keeps nothing, as some do in a private window */
export function openPhone(): Promise<PhoneDatabase> {
	return openDB<PhoneSchema>(NAME, VERSION, {
		upgrade(database) {
			const entry = database.createObjectStore('entry', { keyPath: 'order', autoIncrement: true });
			entry.createIndex('id', 'entry.id', { unique: true });
			entry.createIndex('runner', 'runnerKey');
			entry.createIndex('state', ['runnerKey', 'state']);
			entry.createIndex('waiting', 'state');
			database.createObjectStore('kept', { keyPath: 'runnerKey' });
			database.createObjectStore('clock', { keyPath: 'outingRunId' });
			database.createObjectStore('notWell', { keyPath: 'runnerKey' });
		}
	});
}

/** Everything of everybody goes, also what was not sent: ask first. */
export async function clearPhone(database: PhoneDatabase): Promise<void> {
	strikeAll();
	const step = database.transaction(database.objectStoreNames, 'readwrite');
	await Promise.all([...step.objectStoreNames].map((name) => step.objectStore(name).clear()));
	await step.done;
}
