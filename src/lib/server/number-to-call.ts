import type { Signed } from './auth.ts';
import type { House } from './open-house.ts';
import type { Visitor } from './visitor.ts';

/**
 * The emergency number for a page that shows one: what somebody chose, or else what the coach of
 * their group wrote down; null without a group, or where two groups differ. It is shown, and never
 * kept as a choice of theirs.
 */
export async function numberToCall(
	{ database }: Pick<House, 'database'>,
	runner: Signed | null,
	{ chosenNumber }: Pick<Visitor, 'chosenNumber'>
): Promise<string | null> {
	if (chosenNumber !== null || runner === null) return chosenNumber;
	const rows = await database
		.selectFrom('member')
		.innerJoin('running_group', 'running_group.id', 'member.group_id')
		.where('member.runner_id', '=', runner.runnerId)
		.where('member.left_at', 'is', null)
		.where('emergency_number', 'is not', null)
		.select('emergency_number')
		.distinct()
		.execute();
	return rows.length === 1 ? (rows[0]?.emergency_number ?? null) : null;
}
