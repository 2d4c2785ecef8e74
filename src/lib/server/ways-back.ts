import type { ExpressionBuilder } from 'kysely';
import type { Database } from './database/tables.ts';

/* What keeps an account, as conditions of a query over user rows. */

type OfUser = ExpressionBuilder<Database, 'user'>;

export const hasPasskey = ({ exists, selectFrom }: OfUser) =>
	exists(selectFrom('passkey').select('passkey.id').whereRef('userId', '=', 'user.id'));

/** In a group now: whoever left one is in it no more. */
export const isInGroup = ({ exists, selectFrom }: OfUser) =>
	exists(
		selectFrom('member')
			.select('member.id')
			.whereRef('member.runner_id', '=', 'user.id')
			.where('member.left_at', 'is', null)
	);
