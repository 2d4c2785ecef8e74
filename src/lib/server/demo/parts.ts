import type { Kysely } from 'kysely';
import type { LocalDate } from '../../calendar/local-date.ts';
import type { Coach } from '../coaches.ts';
import type { Database } from '../database/tables.ts';
import type { Vault } from '../vault.ts';
import type { DemoRunnerId } from './people.ts';
import type { DemoWords } from './words.ts';

export interface DemoStores {
	readonly database: Kysely<Database>;
	readonly vault: Vault;
}

/** What a part of the made-up group works with, once its people are there. */
export interface DemoGroup extends DemoStores {
	readonly words: DemoWords;
	/** Epoch milliseconds. */
	readonly now: number;
	/** The date where the group is. */
	readonly today: LocalDate;
	readonly coach: Coach;
	readonly groupId: string;
	readonly runners: ReadonlyMap<
		DemoRunnerId,
		{ readonly runnerId: string; readonly memberId: string }
	>;
}

/** Adds something to the group through the same modules as real data, with a clock of the past. */
export type DemoPart = (group: DemoGroup) => Promise<void>;

/** Noon of a day as epoch milliseconds: in Dublin it is that day, summer and winter. */
export const noonOf = (date: LocalDate): number => Date.parse(`${date}T12:00:00Z`);
