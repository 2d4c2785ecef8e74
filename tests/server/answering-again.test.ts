import { describe, expect, it } from 'vitest';
import * as advice from '$lib/server/advice.ts';
import * as drafts from '$lib/server/drafts.ts';
import * as profiles from '$lib/server/profiles.ts';
import * as screenings from '$lib/server/screenings.ts';
import { standing } from '$lib/server/standing.ts';
import { DATABASES, DAY, inHouse, NOW } from './in-house.ts';
import { screened } from './sample.ts';

// Our own rules, no source.

describe.each(DATABASES)('an older result on %s', (type) => {
	const here = inHouse(type);
	const now = NOW + DAY;
	const stands = (runner: string, at = now) => standing(here.database, here.vault, runner, at);
	const answer = (runner: string, questionId: string, aboutNow = false) =>
		drafts.save(
			here.database,
			here.vault,
			runner,
			{ questionId, answer: ['rest'], aboutNow, rulesetId: '2026-11', revision: null },
			now
		);

	it('ends with the first answer that is given again, and does not come back', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		expect(await stands(runner)).toMatchObject({ allowed: true });
		await answer(runner, 'chest.pain');
		expect(await stands(runner)).toMatchObject({ allowed: false, code: 'RESCREEN' });
		// Left standing, the form is gone after a week; the result stays ended.
		expect(await drafts.load(here.database, here.vault, runner, now + 8 * DAY)).toBeNull();
		expect(await stands(runner, now + 8 * DAY)).toMatchObject({ code: 'RESCREEN' });
	});

	it('stays with the urgent question alone', async () => {
		const runner = await here.runner();
		await screened(here, runner);
		await answer(runner, 'now.urgent', true);
		expect(await stands(runner)).toMatchObject({ allowed: true });
	});

	it('that was answered again is not a change of health: older advice still counts', async () => {
		const runner = await here.runner();
		const pressure = { 'bp.told': 'yes', 'bp.hard': 'no', 'bp.last': 'over' };
		await screened(here, runner, pressure);
		const words = { givenOn: '2026-08-01', role: 'doctor', scope: 'all', limitBpm: null } as const;
		const covers = ['R-BP-HIGH'];
		await advice.record(here.database, here.vault, runner, { ...words, covers }, NOW);
		await answer(runner, 'chest.pain');
		await screened(here, runner, pressure, now);
		expect(await stands(runner)).toMatchObject({ allowed: true, coveredReasons: ['R-BP-HIGH'] });
		await screenings.invalidate(here.database, runner, now);
		await screened(here, runner, pressure, now + 1);
		expect(await stands(runner, now + 1)).toMatchObject({ allowed: false, reasons: ['R-BP-HIGH'] });
	});

	it('of the profile keeps what two forms sent at once', async () => {
		const runner = await here.runner();
		const change = (changed: (before: profiles.Profile) => profiles.Profile) =>
			profiles.change(here.database, here.vault, runner, changed, NOW);
		const morning = (on: string) => (before: profiles.Profile) =>
			profiles.withMorning(before, { bpm: 104, on, method: 60 });
		await Promise.all([
			change(morning('2026-11-20')),
			change((before) => ({ ...before, weightKilograms: 70 })),
			change(morning('2026-11-21'))
		]);
		expect(await profiles.load(here.database, here.vault, runner)).toMatchObject({
			weightKilograms: 70,
			mornings: [{ on: '2026-11-20' }, { on: '2026-11-21' }],
			restingAskFirstSince: expect.any(String)
		});
	});
});
