import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import type { House } from '../house.ts';
import { rowsOf } from '../rows.ts';
import type { Ids } from './wall.ts';

export const memberIn = (house: House) => idOf(house, 'member', { name: 'Ines Quillon' });
export const adviceIn = (house: House) => idOf(house, 'advice', {});

/** The ids of what is Ines's and Odile's, read from the rows. */
export function idsIn(house: House): Omit<Ids, 'coachLinkToken' | 'today'> {
	const group = { group_id: idOf(house, 'running_group', { name: 'Lantern Street beginners' }) };
	const runner = { runner_id: valueOf(house, 'member', 'runner_id', { name: 'Ines Quillon' }) };
	const coach = (role: string) => valueOf(house, 'group_coach', 'coach_id', { ...group, role });
	const owner = coach('owner');
	const session = (userId: string) => idOf(house, 'session', { userId });
	return {
		group: group.group_id,
		member: memberIn(house),
		advice: adviceIn(house),
		doubt: idOf(house, 'band_doubt', {}),
		guess: idOf(house, 'guess', runner),
		pastRun: idOf(house, 'past_outing', runner),
		plan: idOf(house, 'outing_plan', { ...group, removed_at: null }),
		ownPlan: idOf(house, 'outing_plan', { ...runner, removed_at: null }),
		removedPlan: removedPlan(house, 'group_id', group.group_id),
		planned: firstPlanned(house, group.group_id),
		programme: idOf(house, 'programme', group),
		ownRemovedPlan: removedPlan(house, 'runner_id', runner.runner_id),
		link: idOf(house, 'group_invitation', group),
		linkToken: valueOf(house, 'group_invitation', 'token', group),
		coachLink: idOf(house, 'coach_invitation', { ...group, used_at: null }),
		houseLink: idOf(house, 'coach_invitation', { group_id: null }),
		helper: coach('helper'),
		owner,
		session: session(runner.runner_id),
		coachSession: session(owner),
		passkey: keepPasskey(house, runner.runner_id),
		coachPasskey: keepPasskey(house, owner)
	};
}

/** Only a browser makes one; what it opens is of no matter here. */
function keepPasskey({ dataFolder }: House, userId: string): string {
	const database = new DatabaseSync(join(dataFolder, 'breathmark.sqlite'), { timeout: 5000 });
	const id = randomUUID();
	const row = {
		id,
		userId,
		publicKey: 'x',
		credentialID: id,
		counter: 0,
		deviceType: 'x',
		backedUp: 0,
		createdAt: new Date().toISOString()
	};
	const names = Object.keys(row);
	database
		.prepare(
			`insert into passkey ("${names.join('", "')}") values (${names.map(() => '?').join(', ')})`
		)
		.run(...Object.values(row));
	database.close();
	return id;
}

function removedPlan(house: House, column: string, holder: string): string {
	const plans = rowsOf(house, 'outing_plan');
	const plan = plans.find((one) => one[column] === holder && one['removed_at'] !== null);
	return String(plan?.['id']);
}

function firstPlanned(house: House, groupId: string): string {
	const days = rowsOf(house, 'planned_outing').filter((one) => one['group_id'] === groupId);
	const byDate = days.map((one) => [String(one['on_date']), String(one['id'])] as const).sort();
	return byDate[0]?.[1] ?? '';
}

type Cells = Readonly<Record<string, unknown>>;

const idOf = (house: House, table: string, cells: Cells) => valueOf(house, table, 'id', cells);

/** Of the first row that has these cells. */
function valueOf(house: House, table: string, column: string, cells: Cells): string {
	const row = rowsOf(house, table).find((one) =>
		Object.entries(cells).every(([name, cell]) => one[name] === cell)
	);
	if (row === undefined) throw new Error(`nothing like ${JSON.stringify(cells)} in ${table}`);
	return String(row[column]);
}
