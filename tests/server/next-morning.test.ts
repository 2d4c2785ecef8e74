import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { Entry } from '$lib/outing/entry.ts';
import * as consents from '$lib/server/consents.ts';
import * as nextMorning from '$lib/server/next-morning.ts';
import * as pains from '$lib/server/pains.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import { standing } from '$lib/server/standing.ts';
import { DATABASES, DAY, inHouse, NOW } from './in-house.ts';
import { screened, ZONE } from './sample.ts';

// Our own rules, no source.

describe.each(DATABASES)('the morning after, on %s', (type) => {
	const here = inHouse(type);
	const told = { now: NOW, timeZone: ZONE };
	const asked = (runner: string, today = '2026-11-25') =>
		nextMorning.asked(here.database, here.vault, runner, today);
	const say = (runner: string, run: string, level: 'none' | 'new') =>
		nextMorning.say(here.database, here.vault, runner, run, { level, where: 'knee' }, told);

	async function ranOn(runner: string, at: number): Promise<string> {
		const outingRunId = randomUUID();
		const ended: Entry = {
			id: randomUUID(),
			outingRunId,
			at,
			seq: 3,
			elapsedMs: 900_000,
			kind: 'ended',
			how: 'finished'
		};
		await pastOutings.append(here.database, here.vault, runner, [ended], told);
		return outingRunId;
	}

	it('is asked about once, and written down as an entry of its outing', async () => {
		const runner = await here.runner();
		expect(await asked(runner)).toBeNull();
		const run = await ranOn(runner, NOW - DAY);
		expect(await asked(runner, '2026-11-24')).toBeNull();
		expect(await asked(runner)).toEqual({ id: run, onDate: '2026-11-24' });
		const answered = () => nextMorning.answered(here.database, here.vault, runner, '2026-11-25');
		expect(await answered()).toEqual([]);
		expect(await say(runner, run, 'none')).toBe('kept');
		expect(await answered()).toEqual([run]);
		expect(await asked(runner)).toBeNull();
		const outing = await pastOutings.of(here.database, here.vault, runner, run);
		expect(outing?.painNextMorning).toMatchObject({ level: 'none', where: null, seq: 4 });
	});

	it('is asked about again where the answer cannot be read', async () => {
		const runner = await here.runner();
		const run = await ranOn(runner, NOW - DAY);
		await say(runner, run, 'none');
		const answer = await pastOutings.of(here.database, here.vault, runner, run);
		await here.database
			.updateTable('past_entry')
			.set({ sealed: 'spoilt' })
			.where('id', '=', answer?.painNextMorning?.id ?? '')
			.execute();
		expect(await asked(runner)).toEqual({ id: run, onDate: '2026-11-24' });
		expect(await say(runner, run, 'none')).toBe('kept');
		expect(await asked(runner)).toBeNull();
	});

	it('with new pain stops runs until it is gone', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		const run = await ranOn(runner, NOW - DAY);
		await say(runner, run, 'new');
		const may = () => standing(here.database, here.vault, runner, NOW);
		expect(await may()).toMatchObject({ run: false, walkOnlyByPain: true });
		expect(await pains.stands(here.database, runner)).toBe(true);
		await pains.gone(here.database, runner, NOW + 1);
		expect(await may()).toMatchObject({ run: true });
	});

	it('of an outing that is deleted, or another’s, is not taken', async () => {
		const [mine, other] = [await here.runner(), await here.runner()];
		const run = await ranOn(mine, NOW - DAY);
		expect(await say(other, run, 'new')).toBe('not-found');
		expect(await pains.stands(here.database, other)).toBe(false);
		await pastOutings.remove(here.database, here.vault, mine, run, NOW);
		expect(await asked(mine)).toBeNull();
		expect(await say(mine, run, 'new')).toBe('not-found');
	});

	it('is not asked about once the agreement is taken back', async () => {
		const runner = await here.runner();
		const run = await ranOn(runner, NOW - DAY);
		await consents.withdraw(here.database, runner, NOW);
		expect(await asked(runner)).toBeNull();
		await expect(say(runner, run, 'new')).rejects.toThrow(consents.ConsentMissing);
	});
});
