import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { Entry } from '$lib/outing/entry.ts';
import * as audit from '$lib/server/audit.ts';
import { forgetPulses } from '$lib/server/forget-pulses.ts';
import * as guesses from '$lib/server/guesses.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import * as profiles from '$lib/server/profiles.ts';
import { standing } from '$lib/server/standing.ts';
import { openVault, Unreadable, VaultClosed } from '$lib/server/vault.ts';
import { DATABASES, DAY, freshKey, inHouse, MINUTE, NOW, type InHouse } from './in-house.ts';
import { CLEAR, screened } from './sample.ts';
import { unevenRuns } from './sample-outing.ts';

// Our own rules, no source.

const PULSE_OFF = { ...CLEAR, 'meds.rate': 'yes', 'meds.why': 'minor' };
const TABLES = ['profile', 'guess', 'past_entry'] as const;
type Table = (typeof TABLES)[number];

async function keepPulses(here: InHouse) {
	const { database, vault } = here;
	const runnerId = await here.runner();
	await screened(here, runnerId, {}, NOW - DAY);
	const mornings = [{ bpm: 61, on: '2026-11-24', method: 60 as const }];
	await profiles.save(database, vault, runnerId, { ...profiles.EMPTY, mornings }, NOW);
	for (const pulseBpm of [118, 124]) {
		const guess = { on: '2026-11-25', phase: 'brisk-walk', effort: 5, pulseBpm } as const;
		await guesses.make(database, vault, runnerId, guess, NOW);
		await database
			.updateTable('guess')
			.set({ guessed_at: NOW - pulseBpm })
			.where('runner_id', '=', runnerId)
			.execute();
	}
	const outingRunId = randomUUID();
	const told = { outingRunId, at: NOW - MINUTE, elapsedMs: 0 };
	const began = { plannedId: null, place: 'outdoors', hot: false, outing: unevenRuns } as const;
	const entries: Entry[] = [
		{ ...told, id: randomUUID(), seq: 1, kind: 'started', ...began },
		{ ...told, id: randomUUID(), seq: 2, kind: 'paused' }
	] as Entry[];
	await pastOutings.append(database, vault, runnerId, entries, { now: NOW, timeZone: 'UTC' });
	return runnerId;
}

describe.each(DATABASES)('pulses that are forgotten on %s', (type) => {
	const here = inHouse(type);

	const spoil = (table: Table, runnerId: string) =>
		here.database
			.updateTable(table)
			.set({ sealed: 'spoilt' })
			.where('runner_id', '=', runnerId)
			.execute();
	const sealedIn = async (table: Table, runnerId: string) =>
		(
			await here.database
				.selectFrom(table)
				.select('sealed')
				.where('runner_id', '=', runnerId)
				.execute()
		).map(({ sealed }) => sealed);

	it.each(TABLES)(
		'need not be opened: a spoilt %s keeps no stricter result away',
		async (table) => {
			const runnerId = await keepPulses(here);
			const count = (await sealedIn(table, runnerId)).length;
			expect(count).toBeGreaterThan(0);
			await spoil(table, runnerId);
			// It throws where the result cannot be stored.
			await screened(here, runnerId, PULSE_OFF, NOW);
			const access = await standing(here.database, here.vault, runnerId, NOW);
			expect(access.allowed && access.pulse.on).toBe(false);
			// Their content is gone; that something cannot be read stays, for that closes what it closed.
			expect(await sealedIn(table, runnerId)).toEqual(Array.from({ length: count }, () => ''));
			const reads = {
				profile: () => profiles.load(here.database, here.vault, runnerId),
				guess: () => guesses.list(here.database, here.vault, runnerId),
				past_entry: () => pastOutings.list(here.database, here.vault, runnerId)
			};
			await expect(reads[table]()).rejects.toThrow(Unreadable);
			const what = (await audit.list(here.database, runnerId)).map((entry) => entry.what);
			expect(what).toContain('pulses.forgotten');
		}
	);

	it('are gone beside one that is spoilt, and what else is readable stays', async () => {
		const runnerId = await keepPulses(here);
		await spoil('guess', runnerId);
		await forgetPulses(here.database, here.vault, runnerId, NOW);
		expect((await profiles.load(here.database, here.vault, runnerId)).mornings).toEqual([]);
		expect(await pastOutings.list(here.database, here.vault, runnerId)).toHaveLength(1);
	});

	it('are left where the key is wrong: nothing is emptied that could be read again', async () => {
		const runnerId = await keepPulses(here);
		const before = await sealedIn('guess', runnerId);
		const other = await openVault(here.database, freshKey());
		await expect(forgetPulses(here.database, other, runnerId, NOW)).rejects.toThrow(VaultClosed);
		expect(await sealedIn('guess', runnerId)).toEqual(before);
	});
});
