import { describe, expect, it } from 'vitest';
import * as consents from '$lib/server/consents.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';

// Our own rules, no source.

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
