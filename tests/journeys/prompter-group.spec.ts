import { answerDay, button, heading, open, take } from './an-outing.ts';
import { plusDays, todayIn } from './days.ts';
import { become, expect, test, type LanternStreet } from './lantern-street.ts';
import { leadsTo } from './walk.ts';

/*
 * What a coach has planned, in the hand of a runner. Our own rules, no source. Beats: rest 68, age 34,
 * maximum 208 - 0.7 x 34 = 184.2 (Tanaka 2001), shares of the reserve between them (Karvonen 1957).
 */

test.use({ viewport: { width: 360, height: 780 }, timezoneId: 'Europe/Dublin' });

const today = () => todayIn('Europe/Dublin');
const phases = [
	['warm-up-walk', '6:30'],
	['brisk-walk', '4:00'],
	['steady-run', '0:50'],
	['cool-down-walk', '6:00']
];

/** Writes an outing down and plans it for a day. */
async function plan({ coach, path }: LanternStreet, name: string, onDate: string, of = phases) {
	const outing = await coach.lead(`${path}/outings?/make`);
	const parts = of.flatMap(([kind, seconds], part) => [
		[`parts-${part}-kind`, kind ?? ''],
		[`parts-${part}-seconds`, seconds ?? '']
	]);
	await coach.lead(`${outing}?/save`, { name, revision: 1, ...Object.fromEntries(parts) });
	await coach.lead(`${outing}?/plan`, { onDate });
}

const ready = async (page: Parameters<typeof take>[0], name: string) => {
	await open(page);
	await take(page, name);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
};

test('the outing of today is in the list and written down as done; later ones stand apart', async ({
	page,
	lantern,
	stranger
}) => {
	await plan(lantern, 'Mill park one', today());
	await plan(lantern, 'Mill park two', plusDays(today(), 3));
	await plan(lantern, 'Mill park three', plusDays(today(), 20));
	const ines = await lantern.join(await stranger(), 'Ines');
	await become(page, ines);
	await open(page);
	const list = (name: string) =>
		page.getByRole('heading', { level: 2, name }).locator('xpath=following-sibling::ul[1]');
	await expect(list('Today')).toContainText('Mill park one');
	await expect(list('Today')).toContainText('Lantern Street beginners');
	await expect(list('In the next 14 days')).toContainText('Mill park two');
	await expect(page.getByText('Mill park three')).toHaveCount(0);
	await take(page, 'Mill park one');
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await button(page, 'Start').click();
	await page.clock.runFor(391_000);

	// Whoever may run has a band for a brisk walk too: 40 to 59 % of the reserve (Garber 2011).
	await expect(heading(page)).toHaveText('Brisk walk');
	await expect(page.locator('.now')).toContainText('114–137');
	await page.clock.runFor(241_000);
	await expect(heading(page)).toHaveText('Steady run');
	await button(page, 'End early').click();
	await button(page, 'End now').click();
	await expect(heading(page)).toHaveText('Done');
	await expect(page.getByText('waiting to be sent')).toHaveCount(0);
	const roster = await (await lantern.coach.get(`${lantern.path}/attendance?on=${today()}`)).text();
	expect(roster).toContain('started the outing, by their phone');
});

test('where something feels wrong stand the number of the group and where help finds it', async ({
	page,
	lantern,
	stranger
}) => {
	await plan(lantern, 'Mill park one', today());
	await become(page, await lantern.join(await stranger(), 'Ines'));
	await ready(page, 'Mill park one');
	await button(page, 'Start').click();
	await button(page, 'Something feels wrong').click();
	await expect(heading(page)).toHaveText('Stop and stand still');
	await expect(page.getByRole('link', { name: 'Call 112' })).toHaveAttribute('href', 'tel:112');
	await expect(page.getByText('East gate, by the clock')).toBeVisible();
	// The other pages name it as well, until the runner chooses another.
	await page.goto('/safety');
	await expect(page.getByRole('link', { name: 'Call 112' })).toBeVisible();
	await expect(page.getByRole('link', { name: '999' })).toHaveCount(0);
});

test('whoever may walk finds the same outing without a run in it', async ({
	page,
	lantern,
	stranger
}) => {
	await plan(lantern, 'Mill park one', today());
	await become(page, await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk));
	await ready(page, 'Mill park one');
	await expect(page.getByText('Runs are brisk walks for you now.')).toBeVisible();
	await button(page, 'Start').click();
	await page.clock.runFor(631_000);
	await expect(heading(page)).toHaveText('Brisk walk');
	await expect(page.getByText('part 3 of 4')).toBeVisible();
});

test('a recovery of the group is timed: nobody makes it longer; who needs longer walks on', async ({
	page,
	lantern,
	stranger
}) => {
	await plan(lantern, 'Mill park one', today(), [
		['warm-up-walk', '6:30'],
		['steady-run', '0:40'],
		['recovery-walk', '1:50'],
		['cool-down-walk', '6:00']
	]);
	await become(page, await lantern.join(await stranger(), 'Ines'));
	await ready(page, 'Mill park one');
	await button(page, 'Start').click();
	await page.clock.runFor(435_000);
	await expect(heading(page)).toHaveText('Recovery walk');
	await expect(page.getByText('Walk on while the others run.')).toBeVisible();
	await expect(button(page, '30 s more')).toHaveCount(0);
	await page.clock.runFor(110_000);
	await expect(heading(page)).toHaveText('Cool-down walk');
	await expect(page.getByText('Walk on while the others run.')).toHaveCount(0);
});

test('heat that a coach marked is given: not to be unmarked, with its caution, not compared', async ({
	page,
	lantern,
	stranger
}) => {
	await plan(lantern, 'Mill park one', today());
	const ines = await lantern.join(await stranger(), 'Ines');
	await page.goto(lantern.path);
	await page.getByRole('button', { name: 'It is hot today' }).click();
	await expect(page.getByText('Today is marked as hot.')).toBeVisible();
	await page.goto(`${lantern.path}/programme`);
	await expect(page.getByText('marked as hot')).toBeVisible();

	await become(page, ines);
	await page.goto('/outings');
	await expect(page.getByText('Your coach has marked this day as hot.')).toBeVisible();
	await ready(page, 'Mill park one');
	await expect(page.getByText('Your coach has marked today as hot.')).toBeVisible();
	await expect(page.getByText('In a public heat warning do not run.')).toBeVisible();
	await expect(page.getByLabel('It is hot today')).toHaveCount(0);
	await button(page, 'Start').click();
	await expect(page.getByText('drink when you are thirsty')).toBeVisible();
	await button(page, 'End early').click();
	await button(page, 'End now').click();
	await expect(heading(page)).toHaveText('Done');
	await expect(page.getByText('waiting to be sent')).toHaveCount(0);
	await page.goto('/past');
	await expect(page.getByText('a hot day')).toBeVisible();
});

test('heat that no coach marked may be added; a mark that was taken back is gone', async ({
	page,
	lantern,
	stranger
}) => {
	await plan(lantern, 'Mill park one', today());
	const ines = await lantern.join(await stranger(), 'Ines');
	await page.goto(`${lantern.path}/programme`);
	await page.getByRole('button', { name: /^Mark as hot/ }).click();
	await expect(page.getByText('marked as hot')).toBeVisible();
	await page.getByRole('button', { name: /^Not hot after all/ }).click();
	await expect(page.getByText('marked as hot')).toHaveCount(0);
	await become(page, ines);
	await ready(page, 'Mill park one');
	await expect(page.getByText('In a public heat warning do not run.')).toHaveCount(0);
	await page.getByLabel('It is hot today').check();
	await expect(page.getByText('In a public heat warning do not run.')).toBeVisible();
});
