import { describe, expect, it } from 'vitest';
import * as audit from '$lib/server/audit.ts';
import * as consents from '$lib/server/consents.ts';
import { forgetPulses } from '$lib/server/forget-pulses.ts';
import * as guesses from '$lib/server/guesses.ts';
import { Unreadable } from '$lib/server/vault.ts';
import { DATABASES, inHouse, MINUTE, NOW } from './in-house.ts';

// Our own rules, no source.

const guess = { on: '2026-11-25', phase: 'brisk-walk', effort: 5, pulseBpm: 128 } as const;
const seen = { talk: 'comfortable', pulseBpm: 136, method: 15 } as const;

describe.each(DATABASES)('guesses on %s', (type) => {
	const here = inHouse(type);
	const make = (runner: string, at = NOW, words: Omit<guesses.GuessWords, 'seen'> = guess) =>
		guesses.make(here.database, here.vault, runner, words, at);
	const look = (runner: string, at = NOW, what: guesses.Seen = seen) =>
		guesses.look(here.database, here.vault, runner, what, at);
	const list = (runner: string) => guesses.list(here.database, here.vault, runner);
	const open = (runner: string, at = NOW) => guesses.open(here.database, here.vault, runner, at);

	it('are kept before anything is seen, and what is seen is added once', async () => {
		const runner = await here.runner();
		expect(await open(runner)).toBeNull();
		expect(await look(runner)).toBe('none-open');
		await make(runner);
		expect(await open(runner)).toMatchObject({ ...guess, seen: null });
		expect(await look(runner)).toBe('kept');
		expect(await look(runner, NOW, { ...seen, pulseBpm: 128 })).toBe('none-open');
		expect(await open(runner)).toBeNull();
		expect(await list(runner)).toMatchObject([{ ...guess, seen }]);
	});

	it('have at most one open: a new one takes its place, and so does half an hour', async () => {
		const runner = await here.runner();
		await make(runner);
		await make(runner, NOW + MINUTE, { ...guess, effort: 6 });
		expect(await list(runner)).toMatchObject([{ effort: 6 }]);
		expect(await open(runner, NOW + 31 * MINUTE)).toBeNull();
		expect(await look(runner, NOW + 31 * MINUTE)).toBe('none-open');
	});

	it('are sealed: no plain column holds a part of one', async () => {
		const runner = await here.runner();
		await make(runner);
		await look(runner);
		const row = await here.database
			.selectFrom('guess')
			.selectAll()
			.where('runner_id', '=', runner)
			.executeTakeFirstOrThrow();
		expect(JSON.stringify(row)).not.toMatch(/brisk|comfortable|\b128\b|\b136\b/);
	});

	it('cannot be moved to somebody else', async () => {
		const [mine, other] = [await here.runner(), await here.runner()];
		await make(mine);
		await here.database
			.updateTable('guess')
			.set({ runner_id: other })
			.where('runner_id', '=', mine)
			.execute();
		await expect(list(other)).rejects.toThrow(Unreadable);
		await guesses.removeAll(here.database, other);
	});

	it('are not stored without consent or in another shape', async () => {
		await expect(make(await here.stranger())).rejects.toThrow(consents.ConsentMissing);
		const odd = { ...guess, effort: 11 } as unknown as typeof guess;
		await expect(make(await here.runner(), NOW, odd)).rejects.toThrow();
	});

	it('are the newest sixty, newest first', async () => {
		const runner = await here.runner();
		for (let n = 0; n < 63; n++) {
			await make(runner, NOW + n * MINUTE, { ...guess, pulseBpm: 100 + n });
			await look(runner, NOW + n * MINUTE);
		}
		const pulses = (await list(runner)).map(({ pulseBpm }) => pulseBpm);
		expect(pulses).toEqual(Array.from({ length: 60 }, (_, n) => 162 - n));
	});

	it('are removed one by one and all at once, by nobody else', async () => {
		const [mine, other] = [await here.runner(), await here.runner()];
		await make(mine);
		await look(mine);
		await make(mine, NOW + MINUTE);
		const [newest] = await list(mine);
		expect(await guesses.remove(here.database, other, newest?.id ?? '')).toBe('not-found');
		await guesses.removeAll(here.database, other);
		expect(await list(mine)).toHaveLength(2);
		expect(await guesses.remove(here.database, mine, newest?.id ?? '')).toBe('removed');
		expect(await list(mine)).toHaveLength(1);
		await guesses.removeAll(here.database, mine);
		expect(await list(mine)).toEqual([]);
	});

	it('lose their pulses, and nothing else, when pulse is turned off', async () => {
		const runner = await here.runner();
		await make(runner);
		await look(runner);
		await make(runner, NOW + MINUTE);
		await forgetPulses(here.database, here.vault, runner, NOW);
		expect(await list(runner)).toMatchObject([
			{ effort: 5, pulseBpm: null, seen: null },
			{ effort: 5, pulseBpm: null, seen: { talk: 'comfortable', pulseBpm: null, method: null } }
		]);
		await forgetPulses(here.database, here.vault, runner, NOW);
		const noted = (await audit.list(here.database, runner)).filter(
			({ what }) => what === 'pulses.forgotten'
		);
		expect(noted).toHaveLength(1);
	});
});
