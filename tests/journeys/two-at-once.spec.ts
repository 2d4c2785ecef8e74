import type { Browser, Page } from '@playwright/test';
import { todayIn, written } from './days.ts';
import { expect, test, type LanternStreet } from './lantern-street.ts';
import type { Phone } from './phone.ts';
import { leadsTo, ready } from './walk.ts';

// A coach at the desk and a runner on a phone, both open at once in browsers of their own: what one
// does, the other has at the next look. Our own rules, no source. People are invented.

const ofRun = (page: Page) => page.getByRole('region', { name: 'Steady run' });
const today = () => written(todayIn('Europe/Dublin'));

/** The runner's browser, beside the coach's. */
async function openPhone(browser: Browser, { coach }: LanternStreet, phone: Phone): Promise<Page> {
	const context = await browser.newContext({
		baseURL: coach.url,
		viewport: { width: 360, height: 780 },
		locale: 'en-GB'
	});
	await context.addCookies((await phone.request.storageState()).cookies);
	return context.newPage();
}

/** The page as it is now, asked for anew. */
async function again(page: Page) {
	await page.goto(new URL(page.url()).pathname);
	await ready(page);
}

test('advice is written down on the phone, confirmed at the desk, and named on the phone', async ({
	page,
	browser,
	lantern,
	stranger
}) => {
	const tobias = await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk);
	const phone = await openPhone(browser, lantern, tobias);
	await page.goto(lantern.bandsOf('Tobias'));
	await ready(page);
	await expect(page.getByText('No advice is written down.')).toBeVisible();
	await expect(ofRun(page)).toHaveCount(0);

	await phone.goto('/screening/advice');
	await phone.getByLabel('When was it?').fill(todayIn('Europe/Dublin'));
	await phone.getByRole('radio', { name: 'A qualified exercise professional' }).check();
	await phone
		.getByRole('group', { name: /Which of these did they talk about/ })
		.getByRole('checkbox')
		.first()
		.check();
	await phone.getByLabel('Walking and easy running').check();
	await phone.getByRole('button', { name: 'Keep this advice' }).click();
	await expect(phone).toHaveURL(/\/screening\/result/);

	await again(page);
	const advice = page.getByRole('region', { name: 'Advice' });
	await expect(ofRun(page)).toBeVisible();
	await expect(advice).toContainText('Walking and easy running.');
	await expect(advice).not.toContainText(/45|\bage\b|professional/i);
	await advice.getByRole('button', { name: 'Confirm this advice' }).click();
	await expect(advice.getByText(/^Confirmed by Odile Marr/)).toBeVisible();

	await phone.goto('/screening/advice');
	// The same coach has a qualification or none, as other journeys of this house left it.
	const confirmed = new RegExp(`^Confirmed by Odile Marr, .+, on ${today()}\\.$`);
	await expect(phone.getByText(confirmed)).toBeVisible();
	await phone.context().close();
});

test('a band is set at the desk and read on the phone; what feels wrong there is read at the desk, and seen', async ({
	page,
	browser,
	lantern,
	stranger
}) => {
	// Age 42, rest 68: 50 to 62 % is 123 to 137, 45 to 55 % is 118 to 129 (Tanaka 2001, Karvonen 1957).
	const ines = await lantern.join(await stranger(), 'Ines', { 'age.years': 42 });
	const phone = await openPhone(browser, lantern, ines);
	await phone.goto('/bands');
	await ready(phone);
	await expect(ofRun(phone)).toContainText('123–137');
	await page.goto(lantern.bandsOf('Ines'));
	await ready(page);
	await ofRun(page).getByLabel('From, % reserve').fill('45');
	await ofRun(page).getByLabel('To, % reserve').fill('55');
	await ofRun(page).getByRole('button', { name: 'Set this band' }).click();
	await expect(ofRun(page)).toContainText(`Set for this runner on ${today()}`);

	await again(phone);
	await expect(ofRun(phone)).toContainText('118–129');
	await expect(ofRun(phone)).toContainText(`Set with your coach on ${today()}`);
	await ofRun(phone).getByText('This feels wrong').click();
	await ofRun(phone).getByLabel('Too hard').check();
	await ofRun(phone).getByRole('button', { name: 'Tell my coach' }).click();
	await expect(ofRun(phone)).toContainText('Not seen yet.');

	await again(page);
	await expect(page.getByText('feels too hard')).toBeVisible();
	await page.getByRole('button', { name: 'I have seen it' }).click();
	await expect(page.getByText(`seen on ${today()}`)).toBeVisible();
	await ofRun(page).getByRole('button', { name: 'Use the group band again' }).click();
	await expect(ofRun(page)).toContainText('Usual band');
	await again(phone);
	await expect(ofRun(phone)).toContainText(`Seen on ${today()}.`);
	await expect(ofRun(phone)).toContainText('123–137');
	await phone.context().close();
});

test('who stops sharing or leaves is gone from the desk at once, also from a page that is open there', async ({
	page,
	browser,
	lantern,
	stranger
}) => {
	const ines = await lantern.join(await stranger(), 'Ines', { 'age.years': 42 });
	const phone = await openPhone(browser, lantern, ines);
	await page.goto(lantern.bandsOf('Ines'));
	await ready(page);
	await expect(ofRun(page)).toContainText('123–137');
	const roster = await page.context().newPage();
	await roster.goto(lantern.path);
	const row = roster.getByRole('row').filter({ hasText: 'Ines' });
	await expect(row).toContainText('may run');

	await phone.goto('/account');
	await ready(phone);
	await phone.getByRole('button', { name: /^Stop/ }).click();
	await expect(phone.getByRole('button', { name: /^Let them see it/ })).toBeVisible();
	// The page was open: its press sets nothing and shows nothing any more.
	await ofRun(page).getByLabel('To, % reserve').fill('60');
	await ofRun(page).getByRole('button', { name: 'Set this band' }).click();
	await expect(page.getByText('123–137')).toHaveCount(0);
	await expect(page.locator('main')).not.toContainText(/bpm|\d\d–\d\d/);
	await page.goto(lantern.bandsOf('Ines'));
	await expect(page.getByText('does not share a result with you')).toBeVisible();
	await roster.reload();
	await expect(row).not.toContainText('may run');

	await phone.getByRole('button', { name: /^Let them see it/ }).click();
	await expect(phone.getByRole('button', { name: /^Stop/ })).toBeVisible();
	await roster.reload();
	await expect(row).toContainText('may run');
	await phone.getByRole('button', { name: /^Leave/ }).click();
	await expect(phone.getByRole('button', { name: /^Leave/ })).toHaveCount(0);
	await roster.reload();
	await expect(row).toHaveCount(0);
	expect((await page.goto(lantern.bandsOf('Ines')))?.status()).toBe(404);
	await phone.context().close();
});
