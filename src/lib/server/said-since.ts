import type { Kysely } from 'kysely';
import { eventReasons } from '../screening/reasons-now.ts';
import { currentRuleset } from '../screening/rulesets/index.ts';
import type { Database } from './database/tables.ts';
import * as events from './events.ts';
import * as results from './results.ts';
import type { Vault } from './vault.ts';

/**
 * The reasons that a runner gave since then, by finishing the questions or by an urgent sign, and not
 * those from before. Null while neither has happened.
 * @throws VaultClosed, Unreadable
 */
export async function saidSince(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	since: number
): Promise<ReadonlySet<string> | null> {
	const newest = await results.newest(database, vault, runnerId);
	const signs = (await events.list(database, vault, runnerId)).filter(
		({ happenedAt }) => happenedAt >= since
	);
	const isFinished = newest !== null && newest.completedAt >= since;
	if (!isFinished && signs.length === 0) return null;
	const bySigns = eventReasons(signs, currentRuleset).map(({ rule }) => rule.id);
	return new Set([...bySigns, ...(isFinished ? newest.reasons : [])]);
}
