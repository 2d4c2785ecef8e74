import { describe, expect, it } from 'vitest';
import * as advice from '$lib/server/advice.ts';
import * as audit from '$lib/server/audit.ts';
import * as consents from '$lib/server/consents.ts';
import * as events from '$lib/server/events.ts';
import * as profiles from '$lib/server/profiles.ts';
import * as settings from '$lib/server/settings.ts';
import type { AdviceWords } from '$lib/server/shapes.ts';
import { Unreadable } from '$lib/server/vault.ts';
import * as wellAgain from '$lib/server/well-again.ts';
import { DATABASES, DAY, inHouse, MINUTE, NOW } from './in-house.ts';
import { ZONE } from './sample.ts';

// Our own rules, no source; the ten minutes for a tick by mistake among them.

describe.each(DATABASES)('consent on %s', (type) => {
	const here = inHouse(type);
	const given = (runner: string) => consents.given(here.database, runner);

	it('is not there until it is given', async () => {
		const runner = await here.stranger();
		expect(await given(runner)).toBe(false);
		await consents.give(here.database, runner, NOW);
		expect(await given(runner)).toBe(true);
		expect(await given(await here.stranger())).toBe(false);
	});

	it('given twice, also at once, is one', async () => {
		const runner = await here.stranger();
		const give = () => consents.give(here.database, runner, NOW);
		await Promise.all([give(), give(), give()]);
		expect(await consents.list(here.database, runner)).toHaveLength(1);
	});

	it('that was taken back stays in the list, and can be given again', async () => {
		const runner = await here.stranger();
		await consents.give(here.database, runner, NOW);
		await consents.withdraw(here.database, runner, NOW + 1);
		expect(await given(runner)).toBe(false);
		await consents.give(here.database, runner, NOW + 2);
		expect(await given(runner)).toBe(true);
		expect(await consents.list(here.database, runner)).toMatchObject([
			{ givenAt: NOW + 2, withdrawnAt: null },
			{ givenAt: NOW, withdrawnAt: NOW + 1 }
		]);
	});
});

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

describe.each(DATABASES)('well again on %s', (type) => {
	const here = inHouse(type);
	const record = (runner: string, date: string) =>
		wellAgain.record(here.database, runner, date, NOW);

	it('is the last day on which it was said', async () => {
		const runner = await here.runner();
		expect(await wellAgain.latest(here.database, runner)).toBeNull();
		await record(runner, '2026-11-24');
		await record(runner, '2026-12-01');
		await record(runner, '2026-11-30');
		await record(runner, '2026-12-01');
		expect(await wellAgain.latest(here.database, runner)).toBe('2026-12-01');
		expect(await wellAgain.list(here.database, runner)).toHaveLength(3);
	});

	it('needs a day that exists, and consent', async () => {
		await expect(record(await here.runner(), '2026-11-31')).rejects.toThrow();
		await expect(record(await here.stranger(), '2026-11-25')).rejects.toThrow(
			consents.ConsentMissing
		);
	});
});

describe.each(DATABASES)('a profile on %s', (type) => {
	const here = inHouse(type);
	const load = (runner: string) => profiles.load(here.database, here.vault, runner);
	const save = (runner: string, profile: profiles.Profile) =>
		profiles.save(here.database, here.vault, runner, profile, NOW);
	const full: profiles.Profile = {
		mornings: [{ bpm: 62.5, on: '2026-11-24', method: 'strap' }],
		sex: 'woman',
		heightCentimetres: 168,
		weightKilograms: 71.5,
		activityLevel: 2,
		supervisedMaximumBpm: 181,
		supervisedCapacity: 31.5,
		restingAskFirstSince: '2026-11-20'
	};

	it('is empty until something is told', async () => {
		expect(await load(await here.runner())).toEqual(profiles.EMPTY);
	});

	it('is kept and written over', async () => {
		const runner = await here.runner();
		await save(runner, profiles.EMPTY);
		await save(runner, full);
		expect(await load(runner)).toEqual(full);
	});

	it('is sealed: no plain column holds a part of it', async () => {
		const runner = await here.runner();
		await save(runner, full);
		const row = await here.database
			.selectFrom('profile')
			.selectAll()
			.where('runner_id', '=', runner)
			.executeTakeFirstOrThrow();
		expect(JSON.stringify(row)).not.toMatch(/woman|71\.5/);
	});

	it('is not stored without consent or in another shape', async () => {
		await expect(save(await here.stranger(), full)).rejects.toThrow(consents.ConsentMissing);
		const odd = { ...full, activityLevel: 8 };
		await expect(save(await here.runner(), odd)).rejects.toThrow();
	});

	it('forgets every pulse, and not that advice was asked for', async () => {
		const runner = await here.runner();
		await save(runner, full);
		await profiles.forgetPulses(here.database, here.vault, runner, NOW);
		expect(await load(runner)).toEqual({ ...full, mornings: [], supervisedMaximumBpm: null });
	});
});

describe('the mornings of a profile', () => {
	const on = (day: number, bpm: number): profiles.Morning => ({
		bpm,
		on: `2026-11-${String(day).padStart(2, '0')}`,
		method: 60
	});
	const after = (...mornings: profiles.Morning[]) =>
		mornings.reduce(profiles.withMorning, profiles.EMPTY);

	it('are the newest seven, oldest first, whatever the order they were told in', () => {
		const told = [3, 1, 9, 2, 8, 4, 7, 5, 6].map((day) => on(day, 50 + day));
		expect(after(...told).mornings.map(({ bpm }) => bpm)).toEqual([53, 54, 55, 56, 57, 58, 59]);
	});

	it('count one a day, the last that was told', () => {
		expect(after(on(1, 60), on(1, 64)).mornings).toEqual([on(1, 64)]);
	});

	// Twice under 40 or over 100 at rest: pulse off until advice (clinical convention, from memory).
	it('ask for advice at the second that lies outside 40 to 100, and go on asking', () => {
		expect(after(on(1, 104)).restingAskFirstSince).toBeNull();
		expect(after(on(1, 104), on(2, 60)).restingAskFirstSince).toBeNull();
		expect(after(on(1, 104), on(2, 39)).restingAskFirstSince).toBe('2026-11-02');
		const calm = [3, 4, 5, 6, 7, 8, 9].map((day) => on(day, 60));
		expect(after(on(1, 104), on(2, 39), ...calm).restingAskFirstSince).toBe('2026-11-02');
	});
});

describe.each(DATABASES)('settings on %s', (type) => {
	const here = inHouse(type);

	it('are not guessed', async () => {
		expect(await settings.load(here.database, await here.stranger())).toEqual(settings.UNSET);
	});

	it('change one by one, and can be cleared', async () => {
		const runner = await here.stranger();
		await settings.save(here.database, runner, { name: 'Ines', emergencyNumber: '112' });
		await settings.save(here.database, runner, { theme: 'dark', timeZone: ZONE });
		await settings.save(here.database, runner, { emergencyNumber: null, units: undefined });
		await settings.save(here.database, runner, {});
		expect(await settings.load(here.database, runner)).toEqual({
			...settings.UNSET,
			name: 'Ines',
			theme: 'dark',
			timeZone: ZONE
		});
	});
});
