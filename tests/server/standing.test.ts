import { describe, expect, it } from 'vitest';
import * as advice from '$lib/server/advice.ts';
import * as consents from '$lib/server/consents.ts';
import * as events from '$lib/server/events.ts';
import * as profiles from '$lib/server/profiles.ts';
import * as screenings from '$lib/server/screenings.ts';
import * as settings from '$lib/server/settings.ts';
import { standing } from '$lib/server/standing.ts';
import { openVault } from '$lib/server/vault.ts';
import { DATABASES, DAY, freshKey, inHouse, NOW } from './in-house.ts';
import { screened, ZONE } from './sample.ts';

/*
 * The gate over what is stored. What it decides is tested beside its rules; here, that it reads
 * everything, that one runner's record never opens another's gate, and that it fails shut.
 */

describe.each(DATABASES)('the gate on %s', (type) => {
	const here = inHouse(type);
	const at = (runner: string, now = NOW) => standing(here.database, here.vault, runner, now);

	it('is closed for somebody who said nothing, and for nobody', async () => {
		expect(await at(await here.stranger())).toMatchObject({ allowed: false, code: 'NO_RESULT' });
		expect(await at('nobody')).toMatchObject({ allowed: false, code: 'NO_RESULT' });
	});

	it('opens with a result that clears', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		expect(await at(runner)).toMatchObject({ allowed: true, run: true });
		expect(await at(await here.runner())).toMatchObject({ allowed: false });
	});

	it('closes when consent is taken back', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		await consents.withdraw(here.database, runner, NOW);
		expect(await at(runner)).toMatchObject({ allowed: false, code: 'NO_RESULT' });
	});

	it('closes when health changes', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		await screenings.invalidate(here.database, runner, NOW);
		expect((await at(runner)).allowed).toBe(false);
	});

	it('closes with an urgent sign until it is taken back, or a doctor said so', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		const sign = { source: 'prompter', signs: [], happenedAt: NOW, timeZone: ZONE } as const;
		const record = () => events.record(here.database, here.vault, runner, sign, NOW);
		const ticked = await record();
		expect(await at(runner)).toMatchObject({ allowed: false, code: 'SEEK_ADVICE' });
		await events.withdraw(here.database, runner, ticked.id, NOW + 1);
		expect((await at(runner)).allowed).toBe(true);
		await record();
		await screened(here, runner, {}, NOW + 2);
		expect(await at(runner, NOW + 2)).toMatchObject({ reasons: ['R-EVENT'] });
		const words = { givenOn: '2026-11-26', role: 'doctor', scope: 'all', limitBpm: null } as const;
		const said = { ...words, covers: ['R-EVENT'] };
		await advice.record(here.database, here.vault, runner, said, NOW + DAY);
		expect((await at(runner, NOW + DAY)).allowed).toBe(true);
	});

	it('has pulse off once two mornings asked for advice', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		expect(await at(runner)).toMatchObject({ pulse: { on: true } });
		const profile = { ...profiles.EMPTY, restingAskFirstSince: '2026-11-20' };
		await profiles.save(here.database, here.vault, runner, profile, NOW);
		expect(await at(runner)).toMatchObject({ pulse: { on: false } });
	});

	// A result of 25 November 2026 ends with 24 November 2027, by the calendar where the runner is.
	it('ends by the calendar of the runner', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		const midnightInDublin = Date.UTC(2027, 10, 25, 0);
		expect((await at(runner, midnightInDublin - 1)).allowed).toBe(true);
		expect(await at(runner, midnightInDublin)).toMatchObject({ allowed: false, code: 'EXPIRED' });
		await settings.save(here.database, runner, { timeZone: 'America/Los_Angeles' });
		expect((await at(runner, midnightInDublin)).allowed).toBe(true);
	});

	it('is closed, and says that it is our fault, with the wrong key', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		const wrong = await openVault(here.database, freshKey());
		const shut = { allowed: false, code: 'NO_RESULT', fault: 'vault' };
		expect(await standing(here.database, wrong, runner, NOW)).toMatchObject(shut);
		expect(await standing(here.database, wrong, await here.runner(), NOW)).toMatchObject(shut);
	});

	it.each(['screening_result', 'health_event', 'advice', 'profile'] as const)(
		'is closed when a row of %s cannot be read',
		async (table) => {
			const runner = await here.runner();
			await screened(here, runner);
			const place = { happened_at: NOW, happened_on: '2026-11-25', id: `${runner}-x` };
			const sealed = here.vault.seal({ table, owner: 'another', row: 'another' }, {});
			const own = { runner_id: runner, sealed };
			const { database } = here;
			if (table === 'health_event') {
				await database
					.insertInto(table)
					.values({ ...own, ...place })
					.execute();
			} else if (table === 'advice') {
				await database
					.insertInto(table)
					.values({ ...own, id: place.id, recorded_at: NOW })
					.execute();
			} else if (table === 'profile') {
				await database
					.insertInto(table)
					.values({ ...own, updated_at: NOW })
					.execute();
			} else {
				await database.updateTable(table).set({ sealed }).where('runner_id', '=', runner).execute();
			}
			expect(await at(runner)).toMatchObject({
				allowed: false,
				code: 'NO_RESULT',
				fault: 'unreadable'
			});
		}
	);

	it('never opens on an error', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		const broken = here.database.withSchema('no_such_schema');
		await expect(standing(broken, here.vault, runner, NOW)).rejects.toThrow();
	});
});
