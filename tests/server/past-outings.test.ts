import { randomUUID } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry, EntryContent } from '$lib/outing/entry.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import * as account from '$lib/server/account.ts';
import * as consents from '$lib/server/consents.ts';
import * as events from '$lib/server/events.ts';
import * as pains from '$lib/server/pains.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import { standing } from '$lib/server/standing.ts';
import * as walks from '$lib/server/walks.ts';
import { DATABASES, DAY, inHouse, MINUTE, NOW } from './in-house.ts';
import { screened, ZONE } from './sample.ts';

// Our own rules, no source.

/** One outing run, numbered as they come. */
function outingRun(at = NOW - 30 * MINUTE) {
	const outingRunId = randomUUID();
	let seq = 0;
	return (content: EntryContent): Entry => {
		seq += 1;
		return { id: randomUUID(), outingRunId, at: at + seq, seq, elapsedMs: 0, ...content };
	};
}

const started = (kind: 'brisk-walk' | 'steady-run'): EntryContent => ({
	kind: 'started',
	outing: { name: 'One', parts: [plainPhase('warm-up-walk', 400), plainPhase(kind, 400)] },
	plannedId: null,
	place: 'outdoors',
	hot: false
});
const done = (phase: number): EntryContent => ({
	kind: 'phase-done',
	phase,
	activeSeconds: 400,
	how: 'whole'
});
const ended: EntryContent = { kind: 'ended', how: 'finished' };
const answer = (phase: number): EntryContent => ({
	kind: 'talk-answer',
	phase,
	secondsIntoPhase: 300,
	talk: 'with-breaths',
	effort: 6,
	speedKmh: null,
	afterPassage: false,
	pulse: null
});

describe.each(DATABASES)('what a prompter wrote down, on %s', (type) => {
	const here = inHouse(type);
	const told = { now: NOW, timeZone: ZONE };
	const append = (runner: string, entries: readonly Entry[], now = NOW) =>
		pastOutings.append(here.database, here.vault, runner, entries, { ...told, now });
	const list = (runner: string) => pastOutings.list(here.database, here.vault, runner);
	const remove = (runner: string, id: string) =>
		pastOutings.remove(here.database, here.vault, runner, id, NOW);
	const allowed = async (runner: string) => standing(here.database, here.vault, runner, NOW);

	it('is acknowledged, and kept once however often and in what order it comes', async () => {
		const runner = await here.runner();
		const entry = outingRun();
		const all = [started('steady-run'), answer(0), done(0), answer(1), ended].map(entry);
		expect(await append(runner, all)).toEqual(all.map(({ id }) => id));
		expect(await append(runner, [...all].reverse())).toHaveLength(all.length);
		const [outing, ...more] = await list(runner);
		expect(more).toEqual([]);
		expect(outing?.answers).toHaveLength(2);
		expect(outing?.onDate).toBe('2026-11-25');
	});

	it('of two pages at once is kept whole, and of one id with two contents the first', async () => {
		const runner = await here.runner();
		const entry = outingRun();
		const all = [started('steady-run'), answer(0), done(0), answer(1), ended].map(entry);
		const [first, ...others] = all;
		await Promise.all([append(runner, all), append(runner, [...all].reverse())]);
		const changed = { ...first, hot: true } as Entry;
		expect(await append(runner, [changed, ...others])).toHaveLength(all.length);
		const kept = await pastOutings.entriesOf(here.database, here.vault, runner);
		expect(kept).toEqual(all);
	});

	it('in any pieces comes to the same', async () => {
		await fc.assert(
			fc.asyncProperty(fc.infiniteStream(fc.nat(4)), async (sizes) => {
				const runner = await here.runner();
				const entry = outingRun();
				const all = [started('steady-run'), ...[0, 1, 2, 3, 4].map(answer), ended].map(entry);
				for (let from = 0; from < all.length;) {
					const size = 1 + sizes.next().value;
					await append(runner, all.slice(Math.max(0, from - 1), from + size));
					from += size;
				}
				const kept = await pastOutings.entriesOf(here.database, here.vault, runner);
				expect(kept).toEqual(all);
			}),
			{ numRuns: 10 }
		);
	});

	it('is kept and deleted also where an older line cannot be read, and counts as no walk then', async () => {
		const runner = await here.runner();
		const entry = outingRun();
		const [first, spoilt] = [entry(started('brisk-walk')), entry(answer(0))];
		await append(runner, [first, spoilt]);
		await here.database
			.updateTable('past_entry')
			.set({ sealed: 'spoilt' })
			.where('id', '=', spoilt.id)
			.execute();
		const more = [done(0), done(1), ended].map(entry);
		expect(await append(runner, more)).toHaveLength(more.length);
		expect(await walks.list(here.database, runner)).toEqual([]);
		expect(await remove(runner, first.outingRunId)).toBe('removed');
	});

	it('as a sign becomes one urgent event of its own day, and closes', async () => {
		const runner = await here.runner();
		await screened(here, runner, {}, NOW - 5 * DAY);
		const entry = outingRun(NOW - 2 * DAY);
		const sign = entry({ kind: 'something-wrong', sign: 'call-now' });
		await append(runner, [sign]);
		await append(runner, [sign]);
		const held = await events.list(here.database, here.vault, runner);
		expect(held.map(({ happenedOn }) => happenedOn)).toEqual(['2026-11-23']);
		expect((await allowed(runner)).allowed).toBe(false);
	});

	it('of a sign arrives while the gate is closed', async () => {
		const runner = await here.runner();
		await append(runner, [outingRun()({ kind: 'something-wrong', sign: 'not-said' })]);
		expect(await events.list(here.database, here.vault, runner)).toHaveLength(1);
	});

	it('as "it was nothing" is no event, and pain is none either', async () => {
		const runner = await here.runner();
		const entry = outingRun();
		const signs = (['none', 'pain'] as const).map((sign) =>
			entry({ kind: 'something-wrong', sign })
		);
		await append(runner, signs);
		expect(await events.list(here.database, here.vault, runner)).toEqual([]);
	});

	it('as new pain stops runs until the runner says it is gone, whatever came in between', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		expect(await allowed(runner)).toMatchObject({ run: true, walkOnlyByPain: false });
		const entry = outingRun();
		await append(runner, [entry({ kind: 'pain', level: 'new', where: 'shin' })]);
		expect(await allowed(runner)).toMatchObject({
			allowed: true,
			status: 'CLEARED_WALK',
			run: false,
			ceiling: 'moderate',
			walkOnlyByPain: true
		});
		await append(runner, [entry({ kind: 'pain-next-morning', level: 'none', where: null })]);
		expect(await allowed(runner)).toMatchObject({ run: false });
		await pains.gone(here.database, runner, NOW);
		expect(await allowed(runner)).toMatchObject({ run: true });
	});

	it('as pain from before it was gone stops nothing, and pain from after it does', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		const pain = { kind: 'pain', level: 'growing', where: null } as const;
		await append(runner, [outingRun(NOW - DAY)(pain)]);
		await pains.gone(here.database, runner, NOW - MINUTE);
		await append(runner, [outingRun(NOW - 2 * DAY)(pain)]);
		expect(await allowed(runner)).toMatchObject({ run: true });
		await append(runner, [outingRun(NOW - MINUTE / 2)(pain)]);
		expect(await allowed(runner)).toMatchObject({ run: false });
	});

	it('counts a walked outing as the walk of its day, once', async () => {
		const runner = await here.runner();
		await walks.record(here.database, runner, '2026-11-25', NOW);
		for (const kind of ['brisk-walk', 'steady-run'] as const) {
			for (const daysAgo of kind === 'brisk-walk' ? [0, 0, 1] : [2]) {
				const entry = outingRun(NOW - daysAgo * DAY);
				await append(runner, [started(kind), done(0), done(1), ended].map(entry));
			}
		}
		expect(await walks.list(here.database, runner)).toEqual(['2026-11-25', '2026-11-24']);
	});

	it('is nobody else’s, and is taken by the same id for another runner as their own', async () => {
		const [mine, other] = [await here.runner(), await here.runner()];
		const entry = outingRun()(answer(0));
		await append(mine, [entry]);
		expect(await list(other)).toEqual([]);
		await append(other, [{ ...entry, elapsedMs: 7 }]);
		const kept = await pastOutings.entriesOf(here.database, here.vault, mine);
		expect(kept).toEqual([entry]);
		expect(await remove(other, randomUUID())).toBe('not-found');
	});

	it('stays deleted when a phone sends it again', async () => {
		const runner = await here.runner();
		const entry = outingRun();
		const all = [answer(0), answer(1)].map(entry);
		await append(runner, all);
		const id = all[0]?.outingRunId ?? '';
		expect(await remove(runner, id)).toBe('removed');
		expect(await append(runner, [...all, entry(ended)])).toHaveLength(3);
		expect(await list(runner)).toEqual([]);
		const kept = await pastOutings.entriesOf(here.database, here.vault, runner);
		expect(kept).toEqual([]);
	});

	it('takes its walk away when it is deleted, where no other outing of the day was one', async () => {
		const runner = await here.runner();
		const [one, two] = [outingRun(), outingRun(NOW - MINUTE)].map((entry) =>
			[started('brisk-walk'), done(0), done(1), ended].map(entry)
		);
		const ids = [one, two].map((entries) => entries?.[0]?.outingRunId ?? '');
		for (const entries of [one, two]) await append(runner, entries ?? []);
		expect(await remove(runner, ids[0] ?? '')).toBe('removed');
		expect(await walks.list(here.database, runner)).toEqual(['2026-11-25']);
		expect(await remove(runner, ids[1] ?? '')).toBe('removed');
		expect(await walks.list(here.database, runner)).toEqual([]);
		expect(await remove(runner, ids[1] ?? '')).toBe('not-found');
	});

	it('leaves a walk that the runner told of when it is deleted, told before or after', async () => {
		for (const toldFirst of [true, false]) {
			const runner = await here.runner();
			const tell = () => walks.record(here.database, runner, '2026-11-25', NOW);
			const all = [started('brisk-walk'), done(0), done(1), ended].map(outingRun());
			if (toldFirst) await tell();
			await append(runner, all);
			if (!toldFirst) await tell();
			await remove(runner, all[0]?.outingRunId ?? '');
			expect(await walks.list(here.database, runner)).toEqual(['2026-11-25']);
		}
	});

	it('keeps pulses only while they are on, and loses them with a result that turns them off', async () => {
		const runner = await here.runner();
		const entry = outingRun();
		const measured = { ...answer(1), pulse: { bpm: 131, source: 'chest-strap' } } as const;
		const guessed = { ...answer(0), guessedBpm: 124 } as const;
		const summary = {
			kind: 'pulse-summary',
			phase: 1,
			source: 'chest-strap',
			meanBpm: 128,
			highestBpm: 133,
			measuredSeconds: 390
		} as const;
		const pulsesOf = async () => {
			const kept = await pastOutings.entriesOf(here.database, here.vault, runner);
			return JSON.stringify(kept).match(/bpm":\d+/gi) ?? [];
		};
		await append(runner, [measured, guessed, summary].map(entry));
		expect(await pulsesOf(), 'closed').toEqual([]);
		await screened(here, runner);
		await append(runner, [measured, guessed, summary].map(entry));
		expect(await pulsesOf(), 'on').toHaveLength(4);
		await screened(here, runner, { 'meds.rate': 'yes', 'meds.why': 'minor' }, NOW + 1);
		expect(await pulsesOf(), 'off').toEqual([]);
		const late = [measured, guessed, summary].map(entry);
		expect(await append(runner, late, NOW + 2)).toEqual(late.map(({ id }) => id));
		expect(await pulsesOf(), 'sent later').toEqual([]);
		expect((await list(runner))[0]?.answers).toMatchObject([{ guessedBpm: null }, { pulse: null }]);
	});

	it('is not taken without the agreement, is sealed, exported, and goes with the account', async () => {
		const runner = await here.runner();
		const entry = outingRun();
		const all = [answer(0), entry({ kind: 'pain', level: 'new', where: 'knee' })] as const;
		await append(runner, [entry(answer(0)), all[1]]);
		const rows = await here.database
			.selectFrom('past_entry')
			.selectAll()
			.where('runner_id', '=', runner)
			.execute();
		expect(JSON.stringify(rows)).not.toMatch(/with-breaths|knee|talk-answer/);
		const file = await account.exportAll(here.database, here.vault, runner, NOW);
		expect(file.outingEntries).toHaveLength(2);
		expect(file.outings).toMatchObject([{ onDate: '2026-11-25', removedAt: null }]);
		expect(file.pain).toMatchObject({ where: 'knee' });
		await consents.withdraw(here.database, runner, NOW);
		await expect(append(runner, [entry(ended)])).rejects.toThrow(consents.ConsentMissing);
		await account.deleteAll(here.database, runner);
		expect(await list(runner)).toEqual([]);
	});
});
