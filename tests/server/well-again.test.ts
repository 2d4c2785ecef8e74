import { describe, expect, it } from 'vitest';
import * as consents from '$lib/server/consents.ts';
import * as wellAgain from '$lib/server/well-again.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';

// Our own rules, no source.

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
