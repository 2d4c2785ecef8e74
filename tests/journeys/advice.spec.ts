import { recordAdvice } from './advice.ts';
import { aYearAfter, plusDays, todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

const MAY_RUN = 'From what you told us, you may run';
const MAY_WALK = 'From what you told us, you may walk';
const today = todayIn('UTC');

test.use({ timezoneId: 'UTC' });

test('advice about one of two reasons leaves the other, and the strictest of them decides', async ({
	page,
	phone
}) => {
	await phone.screen({ ...leadsTo.askFirst, ...leadsTo.mayWalk });
	expect(await phone.result()).toBe('Ask first');
	await recordAdvice(phone, { covers: 'R-AGE-45' });
	expect(await phone.result()).toBe('Ask first');
	await page.goto('/screening/advice');
	// The one that is covered may be covered again, by newer advice.
	await expect(page.getByRole('checkbox')).toHaveCount(2);
	await expect(page.getByLabel('Your ankles swell up.')).not.toBeChecked();
	await recordAdvice(phone, { covers: 'R-SIGN-ANKLES' });
	expect(await phone.result()).toBe('From what you told us, you begin by walking');
});

test('"walking only" gives walking bands, and nothing of a run', async ({ page, phone }) => {
	await phone.screen(leadsTo.askFirst);
	await recordAdvice(phone, { covers: 'R-SIGN-ANKLES', scope: 'walk' });
	expect(await phone.result()).toBe('From the advice you had, you may walk');
	await page.goto('/bands');
	await expect(page.getByRole('heading', { name: 'Brisk walk' })).toBeVisible();
	await expect(page.getByText('Steady run')).toHaveCount(0);
});

test('"nothing yet" closes what was open, until it is removed', async ({ page, phone }) => {
	await phone.screen(leadsTo.mayWalk);
	await recordAdvice(phone, { covers: 'R-AGE-45', scope: 'none' });
	expect(await phone.result()).toBe('Ask first');
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByText('nothing yet, not before you are seen again')).toBeVisible();
	await page.goto('/screening/advice');
	await page.getByRole('button', { name: /^Remove the advice of/ }).click();
	await expect(page.getByText('None yet.')).toBeVisible();
	expect(await phone.result()).toBe(MAY_WALK);
});

test('a limit in beats is the only number that is shown with pulse off', async ({
	page,
	phone
}) => {
	await phone.screen({ ...leadsTo.mayWalk, ...leadsTo.byTalk });
	await recordAdvice(phone, { covers: 'R-AGE-45', limitBpm: '127' });
	await page.goto('/bands');
	await expect(page.getByText('Limit from your care team: 127 beats a minute.')).toBeVisible();
	const shown = await page.locator('main').innerText();
	expect(shown.match(/\b(1\d\d|2[01]\d)\b/g)).toEqual(['127']);
	expect(shown).not.toMatch(/\bbpm\b/);
	await recordAdvice(phone, { covers: 'R-AGE-45', role: 'exercise-professional', limitBpm: '150' });
	await page.reload();
	await expect(page.getByText('Limit from your care team: 127')).toBeVisible();
});

test('a limit counts before a resting pulse is known: with the bands, the result and the card', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.askFirst);
	await recordAdvice(phone, { covers: 'R-SIGN-ANKLES', limitBpm: '120' });
	for (const path of ['/bands', '/screening/result']) {
		await page.goto(path);
		await expect(page.getByText('Limit from your care team: 120 beats a minute.')).toBeVisible();
	}
	await page.goto('/bands/card');
	await expect(page.getByText('120').first()).toBeVisible();
});

test('a limit in beats cuts each band, and only from above', async ({ page, phone }) => {
	await phone.screen(leadsTo.mayWalk);
	await phone.measureResting(68, today);
	await recordAdvice(phone, { covers: 'R-AGE-45', limitBpm: '130' });
	await page.goto('/bands');
	// Age 52, resting 68: a steady run is 50 to 62 % of 103.6 over 68, 119.8 to 132.23, cut at 130.
	await expect(page.getByRole('region', { name: 'Steady run' })).toContainText('120–130');
	await expect(page.getByText('132')).toHaveCount(0);
});

test('advice counts for twelve months: a year old is too old, a day younger is not', async ({
	phone,
	house
}) => {
	await phone.screen(leadsTo.mayWalk);
	let day = plusDays(today, -365);
	while (aYearAfter(day) > today) day = plusDays(day, -1);
	const old = await recordAdvice(phone, { covers: 'R-AGE-45', givenOn: day });
	expect(await old.text()).toContain('Advice counts for twelve months. This one is older.');
	await recordAdvice(phone, { covers: 'R-AGE-45', givenOn: plusDays(day, 1) });
	expect(await phone.result()).toBe(MAY_RUN);
	await house.reopen({ daysAhead: 1 });
	expect(await phone.result(), 'tomorrow it has ended').toBe(MAY_WALK);
});
