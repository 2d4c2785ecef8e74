import { describe, expect, it } from 'vitest';
import * as programmes from '$lib/server/programmes.ts';
import { sealProgrammes } from '$lib/server/seal-programmes.ts';
import { openVault } from '$lib/server/vault.ts';
import { makeCoach, makeGroup } from './coached-group.ts';
import { DATABASES, freshKey, inHouse, NOW } from './in-house.ts';
import { plainWishes } from './sample-outing.ts';

// Our own rules, no source.

describe.each(DATABASES)('what a programme was made from, on %s', (type) => {
	const here = inHouse(type);

	async function made() {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const words = { inputs: plainWishes, startsOn: '2026-12-03', weekdays: [4], holidays: [] };
		const making = { words, planned: [] };
		await programmes.make(here.database, here.vault, coach, groupId, making, NOW);
		const rows = here.database
			.selectFrom('programme')
			.select('inputs')
			.where('group_id', '=', groupId);
		const column = async () => (await rows.executeTakeFirstOrThrow()).inputs;
		const current = () => programmes.current(here.database, here.vault, coach.coachId, groupId);
		const write = (inputs: string) =>
			here.database
				.updateTable('programme')
				.set({ inputs })
				.where('group_id', '=', groupId)
				.execute();
		return { coach, groupId, words, column, current, write };
	}

	it('is sealed when it is made and when it is changed: no share stands in a row', async () => {
		const { coach, groupId, words, column, current } = await made();
		expect(await column()).not.toMatch(/share|pulse|\{/i);
		expect(await current()).toMatchObject({ inputs: plainWishes });
		const making = { words, planned: [], revision: 1 };
		await programmes.change(here.database, here.vault, coach, groupId, making, NOW);
		expect(await column()).not.toMatch(/share|pulse|\{/i);
		expect(await current()).toMatchObject({ inputs: plainWishes, revision: 2 });
	});

	it('that stood there as plain JSON is sealed when the house opens, and makes the same weeks', async () => {
		const { column, current, write } = await made();
		await write(JSON.stringify(plainWishes));
		await sealProgrammes(here.database, here.vault);
		const sealed = await column();
		expect(sealed).not.toMatch(/share|\{/i);
		expect(await current()).toMatchObject({ inputs: plainWishes });
		await sealProgrammes(here.database, here.vault);
		expect(await column()).toBe(sealed);
	});

	it('stays as it is while the key is wrong, and where it cannot be read', async () => {
		const { column, current, write } = await made();
		const plain = JSON.stringify(plainWishes);
		await write(plain);
		await sealProgrammes(here.database, await openVault(here.database, freshKey()));
		expect(await column()).toBe(plain);
		await write('{');
		await sealProgrammes(here.database, here.vault);
		expect(await column()).toBe('{');
		expect(await current()).toMatchObject({ inputs: null });
	});
});
