import { describe, expect, it } from 'vitest';
import * as audit from '$lib/server/audit.ts';
import * as consents from '$lib/server/consents.ts';
import * as events from '$lib/server/events.ts';
import { Unreadable } from '$lib/server/vault.ts';
import { DATABASES, DAY, inHouse, MINUTE, NOW } from './in-house.ts';
import { ZONE } from './sample.ts';

// Our own rules, no source; the ten minutes for a tick by mistake among them.

describe.each(DATABASES)('an urgent event on %s', (type) => {
	const here = inHouse(type);
	const chest = { source: 'prompter', signs: ['chest'], happenedAt: NOW, timeZone: ZONE } as const;
	const record = (runner: string, event: events.NewEvent = chest, now = NOW) =>
		events.record(here.database, here.vault, runner, event, now);
	const list = (runner: string) => events.list(here.database, here.vault, runner);

	it('is kept with its day and its signs', async () => {
		const runner = await here.runner();
		const recorded = await record(runner);
		expect(await list(runner)).toEqual([recorded]);
		expect(recorded).toEqual({
			id: expect.any(String),
			source: 'prompter',
			signs: ['chest'],
			happenedAt: NOW,
			happenedOn: '2026-11-25',
			withdrawnAt: null
		});
	});

	it('that a phone tells later keeps its own time; one from the future is from now', async () => {
		const runner = await here.runner();
		expect((await record(runner, { ...chest, happenedAt: NOW - DAY })).happenedOn).toBe(
			'2026-11-24'
		);
		expect((await record(runner, { ...chest, happenedAt: NOW + DAY })).happenedAt).toBe(NOW);
	});

	it('can be taken back for ten minutes and not a moment longer', async () => {
		const runner = await here.runner();
		const back = (id: string, after: number) =>
			events.withdraw(here.database, runner, id, NOW + after);
		const [one, two, three] = [await record(runner), await record(runner), await record(runner)];
		expect(await back(one.id, 10 * MINUTE)).toBe('withdrawn');
		expect(await back(two.id, 10 * MINUTE + 1)).toBe('too-late');
		expect(await back(three.id, 11 * MINUTE)).toBe('too-late');
		expect(await back(one.id, 10 * MINUTE)).toBe('not-found');
		const held = await list(runner);
		expect(held.find(({ id }) => id === one.id)?.withdrawnAt).toBe(NOW + 10 * MINUTE);
		expect(held.filter(({ withdrawnAt }) => withdrawnAt === null)).toHaveLength(2);
	});

	it("that was taken back stays in the runner's own list and history", async () => {
		const runner = await here.runner();
		const { id } = await record(runner);
		await events.withdraw(here.database, runner, id, NOW + 1);
		const history = await audit.list(here.database, runner);
		expect(history[0]).toMatchObject({
			what: 'event.withdrawn',
			at: NOW + 1,
			detail: { eventId: id }
		});
		expect(await list(runner)).toHaveLength(1);
	});

	it('that is old news from a phone cannot be taken back', async () => {
		const runner = await here.runner();
		const { id } = await record(runner, { ...chest, happenedAt: NOW - 11 * MINUTE });
		expect(await events.withdraw(here.database, runner, id, NOW)).toBe('too-late');
	});

	it('needs consent', async () => {
		await expect(record(await here.stranger())).rejects.toThrow(consents.ConsentMissing);
	});

	it('that was changed in the store is an error, never skipped', async () => {
		const runner = await here.runner();
		await record(runner);
		await here.database
			.updateTable('health_event')
			.set({ sealed: 'AA' })
			.where('runner_id', '=', runner)
			.execute();
		await expect(list(runner)).rejects.toThrow(Unreadable);
	});
});
