import type { Kysely } from 'kysely';
import { Migrator, type Migration } from 'kysely/migration';
import * as signIn from './migrations/0001-sign-in.ts';
import * as runners from './migrations/0002-runners.ts';
import * as urgentAnswer from './migrations/0003-urgent-answer.ts';
import * as answeringAgain from './migrations/0004-answering-again.ts';
import * as walks from './migrations/0005-walks.ts';
import * as groups from './migrations/0006-groups.ts';
import * as outings from './migrations/0007-outings.ts';
import * as demo from './migrations/0009-demo.ts';
import * as guesses from './migrations/0010-guesses.ts';
import * as pastOutings from './migrations/0011-past-outings.ts';
import * as whatWasDone from './migrations/0014-what-was-done.ts';
import * as hotDays from './migrations/0016-hot-days.ts';
import * as stepChanges from './migrations/0018-step-changes.ts';
import * as tabletReturns from './migrations/0020-tablet-returns.ts';
import * as readingTimes from './migrations/0022-reading-times.ts';
import type { Database } from './tables.ts';

/** In order. A migration that was released is never edited: a change is a new one. */
const MIGRATIONS: Readonly<Record<string, Migration>> = {
	'0001-sign-in': signIn,
	'0002-runners': runners,
	'0003-urgent-answer': urgentAnswer,
	'0004-answering-again': answeringAgain,
	'0005-walks': walks,
	'0006-groups': groups,
	'0007-outings': outings,
	'0009-demo': demo,
	'0010-guesses': guesses,
	'0011-past-outings': pastOutings,
	'0014-what-was-done': whatWasDone,
	'0016-hot-days': hotDays,
	'0018-step-changes': stepChanges,
	'0020-tablet-returns': tabletReturns,
	'0022-reading-times': readingTimes
};

/** Brings the database to the newest shape. Several processes may call it at once. */
export async function migrate(database: Kysely<Database>): Promise<void> {
	const migrator = new Migrator({
		db: database,
		provider: { getMigrations: async () => ({ ...MIGRATIONS }) }
	});
	const { error } = await migrator.migrateToLatest();
	if (error) throw error instanceof Error ? error : new Error('the migrations failed');
}
