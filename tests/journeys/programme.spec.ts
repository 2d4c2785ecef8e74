import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { clockChangeIn, plusDays, todayIn, written } from './days.ts';
import { become, expect, test, type LanternStreet } from './lantern-street.ts';
import { Phone } from './phone.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source. Names are invented.

const press = async (page: Page, name: string | RegExp) => {
	await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name }).click()]);
};
const weeks = (page: Page) => page.getByLabel('Weeks, settling in included');
const rows = (page: Page) => page.locator('tbody tr');

test('a programme is wished for, refused with what would work, taken, and kept', async ({
	page,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Ines');
	await page.goto(lantern.path);
	await page.getByRole('link', { name: 'Programme' }).click();
	await expect(page.getByText('There is no programme yet')).toBeVisible();
	await page.getByRole('link', { name: 'Make a programme' }).click();

	await weeks(page).fill('10');
	await page.getByLabel('Minutes', { exact: true }).fill('45');
	await page.getByLabel('Wednesday').uncheck();
	await page.getByLabel('Tuesday').check();
	await page.getByLabel('First day of break 1').fill('2027-02-08');
	await press(page, 'Show the weeks');
	await expect(page.getByRole('alert')).toContainText('grow by more than half');
	await expect(page.getByRole('alert')).toContainText('Leave a day off between two outings.');
	await expect(page.getByText('These are the weeks')).toHaveCount(0);
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

	// What was typed is kept, and one press fills in what would work.
	await expect(page.getByLabel('Minutes', { exact: true })).toHaveValue('45');
	await expect(page.getByLabel('First day of break 1')).toHaveValue('2027-02-08');
	const offer = page.getByRole('button', { name: /^The same in \d+ weeks$/ });
	const enough = /\d+/.exec((await offer.textContent()) ?? '')?.[0] ?? '';
	await press(page, /^The same in/);
	await expect(weeks(page)).toHaveValue(enough);
	await expect(page.getByRole('alert')).not.toContainText('grow by more than half');
	await press(page, 'Take Monday, Wednesday and Saturday');
	await expect(page.getByRole('alert')).toHaveCount(0);
	await expect(rows(page)).toHaveCount(Number(enough));
	await expect(rows(page).last()).toContainText('45 min');
	await expect(page.getByText('1.59 times as many')).toBeVisible();
	await expect(page.getByText('20.8 and 20.3 in a hundred')).toBeVisible();

	await press(page, 'Keep this programme');
	await expect(page.getByText('The programme is kept.')).toBeVisible();
	await expect(rows(page)).toHaveCount(Number(enough));
	await expect(page.getByText('an illustration, for the middle of one runner')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

	// A list of weeks on a phone.
	await page.setViewportSize({ width: 360, height: 780 });
	await expect(page.getByText(`Week ${enough}`, { exact: true })).toBeVisible();
	await expect(page.locator('table')).toBeHidden();
	expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
});

test('Enter in a field shows the weeks, and takes no offer', async ({ page, lantern }) => {
	await page.goto(`${lantern.path}/programme/new`);
	await weeks(page).fill('10');
	await page.getByLabel('Minutes', { exact: true }).fill('60');
	await press(page, 'Show the weeks');
	await expect(page.getByRole('button', { name: /^The same in/ })).toBeVisible();
	await Promise.all([page.waitForEvent('load'), weeks(page).press('Enter')]);
	await expect(weeks(page)).toHaveValue('10');
});

/** What the form holds, and what is changed. */
const wishes = (changed: Record<string, string | readonly string[]> = {}) => ({
	weeks: '16',
	outingsAWeek: '2',
	firstRun: '0:40',
	goalKind: 'minutes',
	goalMinutes: '20',
	startsOn: todayIn('Europe/Dublin'),
	weekdays: ['1', '4'],
	...changed
});

const DAY_MINUTES = 24 * 60;

/** A programme that begins today, with its second outing three days on, and so each week. */
async function startToday(lantern: LanternStreet): Promise<readonly string[]> {
	const today = todayIn('Europe/Dublin');
	const days = [0, 3, 7, 10, 14].map((nth) => plusDays(today, nth));
	const weekdays = days.slice(0, 2).map((day) => `${new Date(`${day}T00:00Z`).getUTCDay() || 7}`);
	const to = await lantern.coach.lead(`${lantern.path}/programme/new?/keep`, wishes({ weekdays }));
	expect(to).toContain('/programme?made');
	return days;
}

const dayOf = (page: Page, date: string) =>
	// The 4th is not the 14th.
	page.locator('li[id^=d-]').filter({ hasText: new RegExp(`\\b${written(date)}`) });
const said = (what: string, date: string) => new RegExp(`^${what}: .*${written(date)}$`);

test('without script, with nobody in the group, and with a start in the past', async ({
	browser,
	lantern
}) => {
	const context = await browser.newContext({
		javaScriptEnabled: false,
		baseURL: lantern.coach.url,
		storageState: await lantern.coach.request.storageState()
	});
	const page = await context.newPage();
	await page.goto(`${lantern.path}/programme/new`);
	await expect(page.getByText('Nobody is in the group yet.')).toBeVisible();
	await page.getByLabel('First day', { exact: true }).fill('2020-01-06');
	await page.getByRole('button', { name: 'Show the weeks' }).click();
	await expect(page.getByText('Choose today or a later day.').first()).toBeVisible();
	await page.getByLabel('First day', { exact: true }).fill('9999-12-31');
	await page.getByRole('button', { name: 'Show the weeks' }).click();
	await expect(page.getByText('Choose a day within a year from today.').first()).toBeVisible();
	await page.getByRole('button', { name: 'Begin today' }).click();
	await expect(page.getByRole('heading', { name: 'These are the weeks' })).toBeVisible();
	await expect(page.getByText('No mean or highest can be drawn yet.')).toBeVisible();
	await page.getByRole('button', { name: 'Keep this programme' }).click();
	await expect(page.getByText('The programme is kept.')).toBeVisible();
	await context.close();
});

test('a programme that crosses a change of the clocks keeps its weekdays, none left out and none twice', async ({
	page,
	lantern
}) => {
	const today = todayIn('Europe/Dublin');
	// A Sunday in March or October, and an outing on that very day.
	const change = clockChangeIn('Europe/Dublin', plusDays(today, 15));
	const startsOn = plusDays(change, -14);
	const weekdays = ['7', '3'];
	const to = await lantern.coach.lead(
		`${lantern.path}/programme/new?/keep`,
		wishes({ startsOn, weekdays })
	);
	await page.goto(to);
	const days = Array.from({ length: 16 }, (_, week) => plusDays(startsOn, week * 7));
	for (const sunday of days) {
		await expect(dayOf(page, sunday), sunday).toHaveCount(1);
		await expect(dayOf(page, plusDays(sunday, 3))).toHaveCount(1);
	}
	await expect(page.locator('li[id^=d-]')).toHaveCount(32);
	await expect(dayOf(page, change)).toContainText('Outing 5,');
});

test('replacing asks first, and whoever is second is told and loses nothing', async ({
	page,
	lantern
}) => {
	const path = `${lantern.path}/programme`;
	await page.goto(`${path}/new`);
	await press(page, 'Show the weeks');
	await press(page, 'Keep this programme');
	await page.goto(`${path}/new`);
	await page.getByLabel('Minutes', { exact: true }).fill('25');
	await press(page, 'Show the weeks');
	await expect(page.getByText('48 outings that are still to come go.')).toBeVisible();
	await press(page, 'Keep this programme');
	await expect(page.getByRole('alert')).toContainText('Tick the box first.');

	// Meanwhile somebody else makes one, from another window.
	const other = await page.context().newPage();
	await other.goto(`${path}/new`);
	await press(other, 'Show the weeks');
	await other.getByLabel('Put the new programme in its place').check();
	await press(other, 'Keep this programme');
	await expect(other.getByText('The programme is kept.')).toBeVisible();
	await other.close();

	await page.getByLabel('Put the new programme in its place').check();
	await press(page, 'Keep this programme');
	await expect(page.getByText('Somebody else made or changed the programme')).toBeVisible();
	await expect(page.getByLabel('Minutes', { exact: true })).toHaveValue('25');
	await page.getByLabel('Put the new programme in its place').check();
	await press(page, 'Keep this programme');
	await expect(rows(page).last()).toContainText('25 min');
});

test('nobody may run: the programme can be made, and says so', async ({
	page,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk);
	await lantern.join(await stranger(), 'Gwen', leadsTo.askFirst);
	await page.goto(`${lantern.path}/programme/new`);
	await expect(page.getByText('Nobody here may run for now.')).toBeVisible();
	await press(page, 'Show the weeks');
	await expect(page.getByText('for the middle of one runner')).toBeVisible();
	expect(await page.content()).not.toMatch(/Gwen|Tobias|H-|R-|CLEARED/);
});

const aboutMe = {
	sex: 'none',
	heightCentimetres: '',
	weightKilograms: '',
	activityLevel: '',
	supervisedMaximumBpm: '',
	speedUnits: 'km/h',
	paceUnits: 'min/km'
};

test('where a run asks too much of somebody, each week says of how many its mean and highest are', async ({
	page,
	lantern,
	stranger
}) => {
	// The slowest run, 5.0 km/h, costs 20.2 mL/kg/min (ACSM): more than 18.
	for (const [name, supervisedCapacity] of [
		['Ines', '40'],
		['Mei-Lin', '40'],
		['Pavel', '18']
	] as const) {
		const runner = await lantern.join(await stranger(), name);
		await runner.lead('/bands/about-you', { ...aboutMe, name, supervisedCapacity });
	}
	const settling = { settlingIn: 'yes', weeks: '18' };
	await lantern.coach.lead(`${lantern.path}/programme/new?/keep`, wishes(settling));
	await page.goto(`${lantern.path}/programme`);
	await expect(page.getByRole('columnheader', { name: 'Of how many' })).toBeVisible();
	await expect(rows(page).first()).toContainText('3 of 3');
	await expect(rows(page).last()).toContainText('2 of 3');
	await expect(page.getByText('so the middle is that of the others')).toBeVisible();
	await expect(page.getByText('for the middle of')).toHaveCount(0);
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	await page.setViewportSize({ width: 360, height: 780 });
	await expect(page.getByText('(middle of 2 of 3 runners)').first()).toBeVisible();
	expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
});

test('a helper reads the programme, and makes none', async ({ page, lantern, stranger, house }) => {
	const helper = await helperOf(lantern, new Phone(await stranger(), house.url));
	await become(page, helper);
	await page.goto(`${lantern.path}/programme`);
	await expect(page.getByText('An owner of the group makes it.')).toBeVisible();
	const form = await page.goto(`${lantern.path}/programme/new`);
	expect(form?.status()).toBe(404);
	const sent = await helper.send(`${lantern.path}/programme/new?/keep`, wishes());
	expect(sent.status()).toBe(404);
});

/** A second coach, invited as a helper. */
async function helperOf(lantern: LanternStreet, phone: Phone): Promise<Phone> {
	const page = await (await lantern.coach.send(`${lantern.path}/settings?/inviteCoach`)).text();
	const link = /\/coach\/invited\/[\w-]+/.exec(page)?.[0] ?? '';
	const fields = {
		name: 'Bram Holt',
		email: 'bram.programme@lantern.example',
		password: 'nine red ladders'
	};
	await phone.send(`${link}?/signUp`, { ...fields, qualification: '' });
	await phone.lead(`${link}?/signIn`, { ...fields, stay: 'yes' });
	return phone;
}

test('a missed week comes again, a coach sees what moved, and takes it back', async ({
	page,
	lantern,
	house
}) => {
	const path = `${lantern.path}/programme`;
	const [first = '', second = '', third = '', fourth = ''] = await startToday(lantern);
	await page.goto(path);
	await expect(dayOf(page, first)).toContainText('today');
	await expect(page.getByRole('button', { name: said('Missed', second) })).toHaveCount(0);
	await house.reopen({ minutesAhead: 4 * DAY_MINUTES });
	await page.goto(path);
	await expect(page.getByText('What became of these 2 outings?')).toBeVisible();
	await press(page, said('Missed', first));
	await expect(page.getByText('Nothing else moves.')).toBeVisible();
	await press(page, said('Missed', second));
	await expect(page.getByText(`come again, from outing 1 on ${written(third)}.`)).toBeVisible();
	await expect(dayOf(page, third).first()).toContainText('Outing 1,');
	await expect(dayOf(page, fourth).first()).toContainText('Outing 2,');
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	await press(page, 'Take it back');
	await expect(dayOf(page, third).first()).toContainText('Outing 3,');
	await press(page, said('Done', second));
	await expect(page.getByText('Nothing else moves.')).toBeVisible();
	await expect(dayOf(page, third).first()).toContainText('Outing 3,');

	// A window that was left open says something else of the same day: it is told.
	const stale = { id: '', was: 'planned', state: 'missed' };
	await page.getByText('Done and missed (2)').click();
	const html = await page.content();
	const id = /id="d-([\w-]+)"(?![\s\S]*id="d-)/.exec(html)?.[1] ?? '';
	const to = await lantern.coach.lead(`${path}?/say`, { ...stale, id });
	expect(to).toContain('?meanwhile');
	await page.goto(to);
	await expect(page.getByText('your last press changed nothing')).toBeVisible();
});

test('a holiday moves what follows, a day is taken off and put back', async ({ page, lantern }) => {
	const path = `${lantern.path}/programme`;
	const [first = '', second = '', third = '', fourth = ''] = await startToday(lantern);
	await page.goto(path);
	await press(page, said('Take off', second));
	await expect(page.getByText(`Taken off: ${written(second)}`)).toBeVisible();
	await expect(page.getByText(`Outing 2 is on ${written(third)} instead of`)).toBeVisible();
	await expect(page.getByText(`No outing: ${written(second)}`)).toBeVisible();
	await press(page, 'Put it back');
	await expect(dayOf(page, second)).toContainText('Outing 2,');

	await page.getByText('Change the days').click();
	await page.getByLabel('First day of break 1').fill(second);
	await page.getByLabel('Last day of break 1').fill(third);
	await press(page, 'Keep these days');
	await expect(page.getByText('The days are kept.')).toBeVisible();
	await expect(page.getByText(`No outing: ${written(second)} to ${written(third)}`)).toBeVisible();
	await expect(dayOf(page, fourth)).toContainText('Outing 2,');
	await expect(dayOf(page, first)).toContainText('Outing 1,');

	// As many days as outings, and a day off between: what was typed is kept.
	await page.getByText('Change the days').click();
	for (const day of ['Monday', 'Tuesday', 'Wednesday']) await page.getByLabel(day).check();
	await press(page, 'Keep these days');
	await expect(page.getByRole('alert')).toContainText('Choose as many days as there are outings');
	await expect(page.getByLabel('Tuesday')).toBeChecked();
	await expect(page.getByLabel('First day of break 1')).toHaveValue(second);

	// Somebody else changed the days since this form was opened.
	const stale = { revision: '1', weekdays: ['1', '4'], holidayFrom: '', holidayUntil: '' };
	const answer = await lantern.coach.send(`${path}?/days`, stale);
	expect(answer.status()).toBe(409);
	expect(await answer.text()).toContain('Somebody else changed the days while you were at it.');
});

test('an outing by itself keeps its day, and a day without rest is pointed out', async ({
	page,
	lantern
}) => {
	const path = `${lantern.path}/programme`;
	const [first = '', second = ''] = await startToday(lantern);
	await page.goto(path);
	await expect(page.getByText('once there is one')).toBeVisible();
	await lantern.coach.lead(`${lantern.path}/outings?/make`);
	await page.goto(path);
	await page.getByLabel('Day', { exact: true }).fill(first);
	await press(page, 'Set it');
	await expect(page.getByRole('alert')).toContainText('The group has an outing on that day');
	await expect(page.getByLabel('Day', { exact: true })).toHaveValue(first);
	await page.getByLabel('Day', { exact: true }).fill(plusDays(second, 1));
	await press(page, 'Set it');
	const alone = dayOf(page, plusDays(second, 1));
	await expect(alone).toContainText('set for this day by itself');
	await expect(page.getByText('Leave a day of rest between runs.')).toHaveCount(2);
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	await press(page, said('Take off', plusDays(second, 1)));
	await expect(alone).toHaveCount(0);
	await expect(page.getByText('Leave a day of rest between runs.')).toHaveCount(0);
});
