import { describe, expect, it } from 'vitest';
import * as settings from '$lib/server/settings.ts';
import { DATABASES, inHouse } from './in-house.ts';
import { ZONE } from './sample.ts';

// Our own rules, no source.

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
