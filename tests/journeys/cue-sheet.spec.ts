import { plusDays, todayIn, written } from './days.ts';
import { LanternStreet, become, expect, test } from './lantern-street.ts';
import { printed, sheets } from './sheets.ts';

// Our own rules, no source.

test('the cue sheet prints an outing of the group, and never one of another', async ({
	page,
	lantern
}) => {
	const made = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	await page.goto(`${lantern.path}/print`);
	await page.getByRole('link', { name: 'Outing 1', exact: true }).click();
	await expect(page.getByRole('heading', { name: 'Outing 1', exact: true })).toBeVisible();
	await page.goto(made);
	await page.getByRole('link', { name: 'Print a cue sheet of it' }).click();
	await expect(page.getByRole('heading', { name: 'Outing 1', exact: true })).toBeVisible();
	await expect(page.getByText('in 5 runs, the longest 0:50')).toBeVisible();
	await expect(page.getByText('The lengths are a plain outing')).toHaveCount(0);
	const path = page.url();
	expect(await sheets(page, path)).toEqual({ A4: 1, Letter: 1 });

	// What is set for the next day comes first, as it was when it was set.
	const day = plusDays(todayIn('Europe/Dublin'), 3);
	await lantern.coach.lead(`${made}?/plan`, { onDate: day });
	await page.goto(`${lantern.path}/print`);
	const sheetLinks = page.getByRole('listitem').filter({ hasText: 'Cue sheet' }).getByRole('link');
	await expect(sheetLinks.nth(0)).toHaveText(`Cue sheet for ${written(day)}`);
	await expect(sheetLinks.nth(1)).toHaveText('Cue sheet for a plain outing');
	await sheetLinks.first().click();
	await expect(page).toHaveURL(`${lantern.path}/cues?day=${day}`);
	await expect(page.getByRole('heading', { name: 'Outing 1', exact: true })).toBeVisible();
	await expect(page.getByText('in 5 runs, the longest 0:50')).toBeVisible();

	// Its own words, and as many runs as an outing of a programme ever has.
	const save = (fields: Record<string, string>) => lantern.coach.lead(`${made}?/save`, fields);
	await save({
		name: 'Tens',
		revision: '1',
		...fieldsOf(Array.from({ length: 10 }, () => '0:40'))
	});
	expect(await sheets(page, path)).toEqual({ A4: 1, Letter: 1 });
	expect(await printed(page, path)).toContain('Past the lamp 10');
	await save({ name: 'A walk', revision: '2', ...fieldsOf([]) });
	expect(await printed(page, path)).toContain('all of it walking');

	const another = await LanternStreet.found(lantern.coach);
	await become(page, another.coach);
	const id = path.split('outing=')[1];
	for (const wrong of [
		`${another.path}/cues?outing=${id}`,
		`${another.path}/cues?day=${day}`,
		`${lantern.path}/cues?outing=nothing`,
		`${lantern.path}/cues?day=someday`,
		`${lantern.path}/cues?day=${plusDays(day, 1)}`
	]) {
		expect((await page.goto(wrong))?.status(), wrong).toBe(404);
	}
});

/** The fields of an outing with runs of these lengths, each with a cue of its own. */
function fieldsOf(runs: readonly string[]): Record<string, string> {
	const phases = runs.flatMap((seconds, i) => [
		{ kind: 'steady-run', seconds, cue: `Past the lamp ${i + 1}` },
		{ kind: 'recovery-walk', seconds: '1:50', cue: '' }
	]);
	const walk = { kind: 'warm-up-walk', seconds: '7:00', cue: '' };
	const all = [walk, ...phases.slice(0, -1), { ...walk, kind: 'cool-down-walk' }];
	return Object.fromEntries(
		all.flatMap((phase, i) =>
			Object.entries(phase).map(([field, value]) => [`parts-${i}-${field}`, value])
		)
	);
}
