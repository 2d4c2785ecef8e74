import { describe, expect, it } from 'vitest';
import * as advice from '$lib/server/advice.ts';
import * as consents from '$lib/server/consents.ts';
import type { AdviceWords } from '$lib/server/shapes.ts';
import { Unreadable } from '$lib/server/vault.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';

// Our own rules, no source.

describe.each(DATABASES)('advice on %s', (type) => {
	const here = inHouse(type);
	const words: AdviceWords = {
		givenOn: '2026-11-20',
		role: 'doctor',
		scope: 'walkrun',
		covers: ['R-AGE-45'],
		limitBpm: 130
	};
	const record = (runner: string, now = NOW) =>
		advice.record(here.database, here.vault, runner, words, now);
	const list = (runner: string) => advice.list(here.database, here.vault, runner);

	it('is kept as the runner wrote it down, newest first, and removed', async () => {
		const runner = await here.runner();
		const first = await record(runner);
		const second = await record(runner, NOW + 1);
		expect(first).toEqual({ ...words, id: expect.any(String), recordedAt: NOW });
		expect(await list(runner)).toEqual([second, first]);
		expect(await advice.remove(here.database, runner, first.id, NOW)).toBe('removed');
		expect(await advice.remove(here.database, runner, first.id, NOW)).toBe('not-found');
		expect(await list(runner)).toEqual([second]);
	});

	it('is not stored when it is no advice, or without consent', async () => {
		const runner = await here.runner();
		const wrong = { ...words, givenOn: '2026-02-30' };
		await expect(advice.record(here.database, here.vault, runner, wrong, NOW)).rejects.toThrow();
		expect(await list(runner)).toEqual([]);
		await expect(record(await here.stranger())).rejects.toThrow(consents.ConsentMissing);
	});

	it('moved from one runner to another does not open', async () => {
		const [one, other] = [await here.runner(), await here.runner()];
		const { id } = await record(one);
		await here.database
			.updateTable('advice')
			.set({ runner_id: other })
			.where('id', '=', id)
			.execute();
		await expect(list(other)).rejects.toThrow(Unreadable);
	});

	it('copied onto another row of the same runner does not open', async () => {
		const runner = await here.runner();
		const { id } = await record(runner);
		const { sealed } = await here.database
			.selectFrom('advice')
			.select('sealed')
			.where('id', '=', id)
			.executeTakeFirstOrThrow();
		await here.database
			.insertInto('advice')
			.values({ id: `${runner}-copy`, runner_id: runner, sealed, recorded_at: NOW })
			.execute();
		await expect(list(runner)).rejects.toThrow(Unreadable);
	});
});
