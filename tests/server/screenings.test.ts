import { describe, expect, it } from 'vitest';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import * as audit from '$lib/server/audit.ts';
import * as consents from '$lib/server/consents.ts';
import { openDatabase } from '$lib/server/database/open.ts';
import * as drafts from '$lib/server/drafts.ts';
import * as events from '$lib/server/events.ts';
import * as profiles from '$lib/server/profiles.ts';
import * as results from '$lib/server/results.ts';
import * as screenings from '$lib/server/screenings.ts';
import { openVault, Unreadable, VaultClosed } from '$lib/server/vault.ts';
import { DATABASES, DAY, freshKey, inHouse, NOW } from './in-house.ts';
import { answer, CLEAR, finish, screened, ZONE } from './sample.ts';

// What is kept, and that the newest of several counts (of two at once the strictest): our own rules.

describe.each(DATABASES)('a finished form on %s', (type) => {
	const here = inHouse(type);
	const complete = (runner: string, now = NOW) =>
		screenings.complete(here.database, here.vault, runner, finish, now);
	const newest = (runner: string) => screenings.newest(here.database, here.vault, runner);

	it('leaves a result and no answers', async () => {
		const runner = await here.runner();
		await answer(here, runner, CLEAR);
		const done = await complete(runner);
		if (done.kind !== 'stored') throw new Error(done.kind);
		expect(done.result).toEqual({
			id: expect.any(String),
			rulesetId: currentRuleset.id,
			rulesetVersion: currentRuleset.version,
			status: 'CLEARED_ALL',
			reasons: [],
			plan: 'walkrun',
			ageYears: 34,
			activity: { days: 4, minutes: 40, months: 'ge3', hard: 'yes' },
			completedAt: NOW,
			completedOn: '2026-11-25',
			timeZone: ZONE,
			invalidatedAt: null
		});
		expect(await newest(runner)).toEqual(done.result);
		expect(await drafts.load(here.database, here.vault, runner, NOW)).toBeNull();
	});

	it('is dated by the calendar of the runner, not of the server', async () => {
		const runner = await here.runner();
		await answer(here, runner, CLEAR);
		const far = { ...finish, timeZone: 'Pacific/Auckland' };
		const evening = Date.UTC(2026, 10, 25, 20);
		const done = await screenings.complete(here.database, here.vault, runner, far, evening);
		expect(done).toMatchObject({ result: { completedOn: '2026-11-26' } });
	});

	it('keeps status and reasons out of every plain column', async () => {
		const runner = await here.runner();
		await screened(here, runner, { 'chest.pain': ['exercise'] });
		const row = await here.database
			.selectFrom('screening_result')
			.selectAll()
			.where('runner_id', '=', runner)
			.executeTakeFirstOrThrow();
		const history = await audit.list(here.database, runner);
		const plain = JSON.stringify([row, history]);
		expect(plain).not.toMatch(/SEEK_ADVICE|R-CHEST|walkrun/);
	});

	it('is the same result when it is sent twice', async () => {
		const runner = await here.runner();
		await answer(here, runner, CLEAR);
		const first = await complete(runner);
		const second = await complete(runner, NOW + 1000);
		expect(second).toEqual({ kind: 'already', result: (first as { result: unknown }).result });
		expect(await screenings.list(here.database, here.vault, runner)).toHaveLength(1);
	});

	it('is one result when it is sent five times at once, also by two servers', async () => {
		const runner = await here.runner();
		await answer(here, runner, CLEAR);
		const sent = [complete(runner), complete(runner), complete(runner), complete(runner)];
		if (type === 'postgres') {
			const other = await openDatabase(here.place);
			sent.push(screenings.complete(other, here.vault, runner, finish, NOW));
			await Promise.all(sent);
			await other.destroy();
		}
		const kinds = (await Promise.all(sent)).map(({ kind }) => kind);
		expect(kinds.filter((kind) => kind === 'stored')).toHaveLength(1);
		expect(kinds.filter((kind) => kind === 'already')).toHaveLength(sent.length - 1);
		expect(await screenings.list(here.database, here.vault, runner)).toHaveLength(1);
	});

	it('uses the very answers that it deletes, also when one changes meanwhile', async () => {
		const runner = await here.runner();
		await answer(here, runner, CLEAR);
		let calls = 0;
		const change = {
			questionId: 'chest.pain',
			answer: ['exercise'],
			rulesetId: currentRuleset.id,
			revision: null
		};
		let meanwhile: Promise<unknown> = Promise.resolve();
		const slow: screenings.Finish = {
			...finish,
			decide(answers, rulesetId) {
				calls += 1;
				if (calls === 1) {
					meanwhile = drafts.save(here.database, here.vault, runner, change, NOW);
				}
				return finish.decide(answers, rulesetId);
			}
		};
		const done = await screenings.complete(here.database, here.vault, runner, slow, NOW);
		await meanwhile;
		const left = await drafts.load(here.database, here.vault, runner, NOW);
		// Either the change came first and is in the result, or it came too late and stands alone.
		if (calls === 2) expect(done).toMatchObject({ result: { status: 'SEEK_ADVICE' } });
		else expect(left?.answers).toEqual({ 'chest.pain': ['exercise'] });
	});

	it('with an answer missing stays open', async () => {
		const runner = await here.runner();
		await answer(here, runner, { ...CLEAR, 'faint.year': undefined });
		expect(await complete(runner)).toEqual({ kind: 'incomplete' });
		expect(await newest(runner)).toBeNull();
		expect(await drafts.load(here.database, here.vault, runner, NOW)).not.toBeNull();
	});

	it('of somebody under age leaves nothing at all', async () => {
		const runner = await here.runner();
		await answer(here, runner, { ...CLEAR, 'age.years': 17 });
		expect(await complete(runner)).toEqual({ kind: 'not-eligible' });
		expect(await newest(runner)).toBeNull();
		expect(await drafts.load(here.database, here.vault, runner, NOW)).toBeNull();
	});

	it('that nobody began is nothing', async () => {
		expect(await complete(await here.runner())).toEqual({ kind: 'nothing' });
	});

	it('whose answers ended is nothing', async () => {
		const runner = await here.runner();
		await answer(here, runner, CLEAR);
		expect(await complete(runner, NOW + 7 * DAY)).toEqual({ kind: 'nothing' });
	});

	it('needs consent', async () => {
		const runner = await here.stranger();
		await expect(complete(runner)).rejects.toThrow(consents.ConsentMissing);
	});

	it('with an emergency leaves an event that outlives it', async () => {
		const runner = await here.runner();
		const done = await screened(here, runner, { 'now.urgent': ['chest'] });
		expect(done.status).toBe('EMERGENCY');
		const held = await events.list(here.database, here.vault, runner);
		expect(held).toMatchObject([{ source: 'questions', happenedAt: NOW, withdrawnAt: null }]);
		await screened(here, runner, {}, NOW + DAY);
		expect(await events.list(here.database, here.vault, runner)).toEqual(held);
	});

	it('that turns pulse off forgets the pulses', async () => {
		const runner = await here.runner();
		const morning = { bpm: 61, on: '2026-11-24', method: 60 } as const;
		const before = { ...profiles.EMPTY, mornings: [morning], supervisedMaximumBpm: 181 };
		await profiles.save(here.database, here.vault, runner, before, NOW);
		await screened(here, runner);
		expect(await profiles.load(here.database, here.vault, runner)).toEqual(before);
		await screened(here, runner, { 'preg.status': 'pregnant', 'preg.ok': 'run' }, NOW + 1);
		expect(await profiles.load(here.database, here.vault, runner)).toEqual(profiles.EMPTY);
	});

	it('stays whole when keeping it fails half way', async () => {
		const runner = await here.runner();
		await answer(here, runner, CLEAR);
		const bad = { ...finish, timeZone: 'Nowhere/At_all' };
		const failing = screenings.complete(here.database, here.vault, runner, bad, NOW);
		await expect(failing).rejects.toThrow(RangeError);
		expect(await newest(runner)).toBeNull();
		expect((await drafts.load(here.database, here.vault, runner, NOW))?.answers).toEqual(CLEAR);
	});
});

describe.each(DATABASES)('of several results on %s', (type) => {
	const here = inHouse(type);
	const newest = (runner: string) => screenings.newest(here.database, here.vault, runner);
	const kept = async (runner: string, status: 'CLEARED_ALL' | 'SEEK_ADVICE', at: number) => {
		const { id: _, ...like } = await screened(here, await here.runner());
		const result = { ...like, id: crypto.randomUUID(), status, completedAt: at };
		await results.store(here.database, here.vault, runner, result);
	};

	it('the newest counts, and an older one that arrives late changes nothing', async () => {
		const runner = await here.runner();
		await kept(runner, 'SEEK_ADVICE', NOW);
		await kept(runner, 'CLEARED_ALL', NOW - DAY);
		expect((await newest(runner))?.status).toBe('SEEK_ADVICE');
		await kept(runner, 'CLEARED_ALL', NOW + 1);
		expect((await newest(runner))?.status).toBe('CLEARED_ALL');
	});

	it('two at the same moment count as the strictest, in either order', async () => {
		const [one, other] = [await here.runner(), await here.runner()];
		await kept(one, 'SEEK_ADVICE', NOW);
		await kept(one, 'CLEARED_ALL', NOW);
		await kept(other, 'CLEARED_ALL', NOW);
		await kept(other, 'SEEK_ADVICE', NOW);
		expect((await newest(one))?.status).toBe('SEEK_ADVICE');
		expect((await newest(other))?.status).toBe('SEEK_ADVICE');
	});

	it('all end when health changes, and open answers go', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		await answer(here, runner, { 'age.years': 34 });
		await screenings.invalidate(here.database, runner, NOW + 5);
		expect((await newest(runner))?.invalidatedAt).toBe(NOW + 5);
		expect(await drafts.load(here.database, here.vault, runner, NOW)).toBeNull();
		await screenings.invalidate(here.database, runner, NOW + 9);
		expect((await newest(runner))?.invalidatedAt).toBe(NOW + 5);
		await screened(here, runner, {}, NOW + 10);
		expect((await newest(runner))?.invalidatedAt).toBeNull();
	});

	it('one that was tampered with is an error, never skipped', async () => {
		const runner = await here.runner();
		const old = await screened(here, runner);
		await screened(here, runner, { 'chest.pain': ['exercise'] }, NOW + 1);
		// Moving the old, milder result into the future.
		await here.database
			.updateTable('screening_result')
			.set({ completed_at: NOW + 2 })
			.where('id', '=', old.id)
			.execute();
		await expect(newest(runner)).rejects.toThrow(Unreadable);
	});

	it('none is read or written with the wrong key', async () => {
		const runner = await here.runner();
		const held = await screened(here, runner);
		const wrong = await openVault(here.database, freshKey());
		await expect(screenings.newest(here.database, wrong, runner)).rejects.toThrow(VaultClosed);
		await expect(results.store(here.database, wrong, runner, held)).rejects.toThrow(VaultClosed);
	});
});
