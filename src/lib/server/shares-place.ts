import type { ExpressionBuilder } from 'kysely';
import type { Database } from './database/tables.ts';
import type { Member } from './members.ts';

/**
 * Whether a coach may know and set somebody's place in the programme: that of a name alone is the
 * coach's own, that of a runner is the runner's to share.
 */
export function sharesPlace({ runnerId, sharedSince }: Pick<Member, 'runnerId' | 'sharedSince'>) {
	return runnerId === null || sharedSince !== null;
}

/** The same, of rows beside their member. */
export function isPlaceShared(of: ExpressionBuilder<Database, 'member'>) {
	return of.or([of('member.runner_id', 'is', null), of('member.shared_since', 'is not', null)]);
}
