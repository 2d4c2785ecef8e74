import type { Kysely } from 'kysely';
import type { Database } from './database/tables.ts';
import { programmeInputs } from './programme-inputs.ts';
import { inputsPlace } from './programme-rows.ts';
import type { Vault } from './vault.ts';

/**
 * Seals what older programmes were made from, which stood there as plain JSON: a migration has no
 * key, so it is done once the vault is open. What is no wishes stays as it is, and is read by nobody.
 */
export async function sealProgrammes(database: Kysely<Database>, vault: Vault): Promise<void> {
	if (vault.state !== 'right') return;
	const plain = await database
		.selectFrom('programme')
		.select(['id', 'group_id', 'inputs'])
		.where('inputs', 'like', '{%')
		.execute();
	for (const { id, group_id, inputs } of plain) {
		const read = programmeInputs.safeParse(jsonOf(inputs));
		if (!read.success) continue;
		await database
			.updateTable('programme')
			.set({ inputs: vault.seal(inputsPlace(group_id, id), read.data) })
			.where('id', '=', id)
			.where('inputs', '=', inputs)
			.execute();
	}
}

function jsonOf(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		return null;
	}
}
