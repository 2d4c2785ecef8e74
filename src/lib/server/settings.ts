import type { Kysely } from 'kysely';
import { byRunner, type Of } from './by-runner.ts';
import type { Database } from './database/tables.ts';

/** How a runner likes things. Nothing here is about health, so it is kept as it is. */
export interface Settings {
	readonly name: string | null;
	readonly units: string | null;
	readonly paceUnits: string | null;
	/** IANA name. */
	readonly timeZone: string | null;
	readonly emergencyNumber: string | null;
	readonly theme: string | null;
}

/** Nothing is assumed of a runner: the emergency number least of all. */
export const UNSET: Settings = {
	name: null,
	units: null,
	paceUnits: null,
	timeZone: null,
	emergencyNumber: null,
	theme: null
};

export async function load(database: Kysely<Database>, runnerId: string): Promise<Settings> {
	return (await loadMany(database, [runnerId]))(runnerId);
}

/** The same for many runners. */
export async function loadMany(
	database: Kysely<Database>,
	runnerIds: readonly string[]
): Promise<Of<Settings>> {
	const rows = await database
		.selectFrom('runner_settings')
		.selectAll()
		.where('runner_id', 'in', runnerIds)
		.execute();
	const of = byRunner(rows);
	return (runnerId) => {
		const row = of(runnerId)[0];
		if (!row) return UNSET;
		return {
			name: row.name,
			units: row.units,
			paceUnits: row.pace_units,
			timeZone: row.time_zone,
			emergencyNumber: row.emergency_number,
			theme: row.theme
		};
	};
}

/** Writes the settings that are given and leaves the others. */
export async function save(
	database: Kysely<Database>,
	runnerId: string,
	changes: Partial<Settings>
): Promise<void> {
	const columns = Object.fromEntries(
		Object.entries({
			name: changes.name,
			units: changes.units,
			pace_units: changes.paceUnits,
			time_zone: changes.timeZone,
			emergency_number: changes.emergencyNumber,
			theme: changes.theme
		}).filter(([, setting]) => setting !== undefined)
	);
	await database
		.insertInto('runner_settings')
		.values({ runner_id: runnerId, ...columns })
		.onConflict((conflict) =>
			// Without a change the row is written as it is: an empty update is not valid SQL.
			conflict.column('runner_id').doUpdateSet({ runner_id: runnerId, ...columns })
		)
		.execute();
}
