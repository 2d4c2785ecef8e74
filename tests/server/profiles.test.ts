import { describe, expect, it } from 'vitest';
import * as consents from '$lib/server/consents.ts';
import * as profiles from '$lib/server/profiles.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';

// Our own rules, no source.

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
		walkCheck: {
			on: '2026-11-23',
			walks: [80.4, 93.8, 107.2].map((speedMetresPerMinute, nth) => ({
				speedMetresPerMinute,
				grade: 0,
				pulseBpm: [98, 106, 115][nth]!
			}))
		},
		mileWalk: { on: '2026-11-24', weightKilograms: 59, sex: null, minutes: 12.75, pulseBpm: 147 },
		outsideOn: [],
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
		expect(await load(runner)).toEqual({
			...full,
			mornings: [],
			supervisedMaximumBpm: null,
			walkCheck: null,
			mileWalk: null
		});
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
