import type { Kysely } from 'kysely';
import type { SetBand } from '../guidance/settings-in-force.ts';
import { entryOf, type BandEntry } from './band-setting-rows.ts';
import { byRunner, type Of } from './by-runner.ts';
import type { Database } from './database/tables.ts';
import { readEach, type Note } from './readable.ts';

/** An entry that counts for a runner, with the group whose coach made it. */
export type BandSet = BandEntry & SetBand & { readonly groupName: string };

/**
 * What coaches set for these runners, oldest first: their own entries and the defaults of every
 * group that they are in and share their result with. Whoever leaves a group, or stops sharing, is
 * out of its coaches' hands at once.
 */
export async function forRunners(
	database: Kysely<Database>,
	runnerIds: readonly string[],
	note?: Note
): Promise<Of<readonly BandSet[]>> {
	const rows = runnerIds.length === 0 ? [] : await rowsFor(database, runnerIds).execute();
	const sorted = byRunner(
		rows.flatMap((row) => (row.runner_id === null ? [] : [{ ...row, runner_id: row.runner_id }]))
	);
	return (runnerId) => readEach(sorted(runnerId), setOf, (row) => row.set_at, note);
}

export async function forRunner(
	database: Kysely<Database>,
	runnerId: string,
	note?: Note
): Promise<readonly BandSet[]> {
	return (await forRunners(database, [runnerId], note))(runnerId);
}

/**
 * Deletes what was set for, and said by, whoever left a group or deleted their account, and where
 * they stood in its programme. No page shows it any more from the moment of leaving.
 */
export async function forgetOfGone(database: Kysely<Database>): Promise<void> {
	const tables = ['band_setting', 'band_doubt', 'member_step', 'member_step_change'] as const;
	for (const table of tables) {
		await database
			.deleteFrom(table)
			.where('member_id', 'in', ({ selectFrom }) =>
				selectFrom('member')
					.select('id')
					.where(({ or, and, eb }) =>
						or([
							eb('left_at', 'is not', null),
							and([eb('runner_id', 'is', null), eb('joined_at', 'is not', null)])
						])
					)
			)
			.execute();
	}
}

function rowsFor(database: Kysely<Database>, runnerIds: readonly string[]) {
	return database
		.selectFrom('member')
		.innerJoin('band_setting', 'band_setting.group_id', 'member.group_id')
		.innerJoin('running_group', 'running_group.id', 'member.group_id')
		.where('member.runner_id', 'in', runnerIds)
		.where('member.left_at', 'is', null)
		.where('member.shared_since', 'is not', null)
		.where(({ or, eb, ref }) =>
			or([
				eb('band_setting.member_id', '=', ref('member.id')),
				eb('band_setting.member_id', 'is', null)
			])
		)
		.selectAll('band_setting')
		.select(['member.runner_id', 'running_group.name as group_name'])
		.orderBy('band_setting.set_at')
		.orderBy('band_setting.id');
}

type Row = Awaited<ReturnType<ReturnType<typeof rowsFor>['executeTakeFirstOrThrow']>>;

function setOf(row: Row): BandSet {
	const entry = entryOf(row);
	return {
		...entry,
		// A coach's inner note to a group's default is about nobody in it.
		innerNote: row.member_id === null ? null : entry.innerNote,
		groupId: row.group_id,
		groupName: row.group_name,
		by: row.member_id === null ? 'group' : 'coach'
	};
}
