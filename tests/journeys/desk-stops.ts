import type { APIRequestContext, Page } from '@playwright/test';
import { LanternStreet } from './lantern-street.ts';

import type { Look, Walk } from './stops.ts';
import { leadsTo, ready } from './walk.ts';

const press = async (page: Page, name: string | RegExp) => {
	await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name }).click()]);
};

/** Opens an address, waits for its script where it has one, and looks. */
async function see(page: Page, look: Look, stop: string, path: string) {
	await page.goto(path);
	if ((await page.locator('script[type=module], link[rel=modulepreload]').count()) > 0) {
		await ready(page);
	}
	await look(stop, page);
}

/** As long as a name may be, without a place to break it. */
const UNBROKEN = `${'W'.repeat(58)}🏃`;

/** Runners of every kind, each on a phone of their own. */
async function fill(lantern: LanternStreet, context: () => Promise<APIRequestContext>) {
	await lantern.join(await context(), 'Ines');
	await lantern.join(await context(), 'Tobias', leadsTo.mayWalk);
	await lantern.join(await context(), 'Rashid', leadsTo.byTalk);
	await lantern.join(await context(), 'Gwen', leadsTo.askFirst);
	await lantern.join(await context(), 'Dagny', leadsTo.settlingIn);
	await lantern.join(await context(), UNBROKEN);
}

const memberOf = (lantern: LanternStreet, name: string) =>
	`${lantern.path}/members/${lantern.runners.get(name)?.memberId}`;

/** A programme that is refused, taken as it would work, kept, and about to be replaced. */
async function programme(page: Page, path: string, look: Look) {
	await see(page, look, 'programme: the form', `${path}/programme/new`);
	await page.getByLabel('Weeks, settling in included').fill('10');
	await page.getByLabel('Wednesday').uncheck();
	await page.getByLabel('Tuesday').check();
	await press(page, 'Show the weeks');
	await look('programme: refused', page);
	await press(page, /^The same in/);
	await press(page, /^Take Monday/);
	await look('programme: the weeks', page);
	await press(page, 'Keep this programme');
	await look('programme: kept', page);
	await page
		.getByRole('button', { name: /^Take off/ })
		.first()
		.click();
	await page.waitForLoadState('load');
	await look('programme: a day taken off', page);
	await page.getByText('Change the days').click();
	await page.getByLabel('Tuesday').check();
	await press(page, 'Keep these days');
	await look('programme: days, issue', page);
	await page.goto(`${path}/programme/new`);
	await press(page, 'Show the weeks');
	await press(page, 'Keep this programme');
	await look('programme: not sure', page);
}

/** The coach's pages and what leads to them, in every state. */
export const deskWalks: readonly Walk[] = [
	{
		name: 'the desk: accounts',
		async go({ page, phone }, look) {
			await see(page, look, 'signing up, as the first where nobody is', '/coach/sign-up');
			await LanternStreet.found(phone);
			await page.context().clearCookies();
			for (const path of ['/coach/sign-in', '/coach/sign-up', '/coach/forgot', '/coach/gone']) {
				await see(page, look, path, path);
			}
			await page.goto('/coach/sign-in');
			await ready(page);
			await press(page, /^Sign in$/);
			await ready(page);
			await look('sign in: issues', page);
			await see(page, look, 'reset: a link that is none', '/coach/reset?token=none');
			await see(page, look, 'invited: a link that is none', '/coach/invited/none');
			await LanternStreet.found(phone, { name: 'Quay Street beginners' });
			await see(page, look, 'the coach’s groups', '/coach');
			await see(page, look, 'the coach’s account', '/coach/account');
			await see(page, look, 'a new group', '/coach/new');
			await press(page, 'Make this group');
			await ready(page);
			await look('a new group: issues', page);
		}
	},
	{
		name: 'the desk: a group without anybody, and without an emergency number',
		async go({ page, phone }, look) {
			const { path } = await LanternStreet.found(phone, { emergencyNumber: '' });
			for (const part of [
				'',
				'/attendance',
				'/bands',
				'/print',
				'/cards',
				'/outings',
				'/programme',
				'/programme/new'
			]) {
				if ((await phone.get(path + part)).status() === 404) continue;
				await see(page, look, `empty group${part}`, path + part);
			}
			await see(page, look, 'settings', `${path}/settings`);
			await see(page, look, 'import', `${path}/import`);
			await see(page, look, 'not there', `${path}/members/nobody`);
		}
	},
	{
		name: 'the desk: a group of all kinds',
		async go({ page, phone }, look) {
			const lantern = await LanternStreet.found(phone);
			await fill(lantern, () => anotherPhone(page));
			const { path } = lantern;
			for (const part of [
				'',
				'/attendance',
				'/bands',
				'/invite',
				'/print',
				'/cards',
				'/wall',
				'/stop-signs',
				'/cues'
			]) {
				await see(page, look, `group${part}`, path + part);
			}
			await programme(page, path, look);
			for (const name of ['Ines', 'Tobias', 'Rashid', 'Gwen', 'Dagny', UNBROKEN]) {
				await see(page, look, `member: ${name}`, memberOf(lantern, name));
				await see(page, look, `bands of ${name}`, lantern.bandsOf(name));
			}
			await phone.lead(`${path}?/start`);
			await see(page, look, 'an outing is on', path);
		}
	},
	{
		name: 'joining a group, and a tablet that goes round',
		async go({ page, phone }, look) {
			const lantern = await LanternStreet.found(phone);
			await see(page, look, 'join: as the coach', lantern.link);
			await page.context().clearCookies();
			await see(page, look, 'join: as nobody', lantern.link);
			await see(page, look, 'join: a link that is none', '/join/none');
			await phone.screen();
			await see(page, look, 'join', lantern.link);
			await press(page, /^Join/);
			await look('join: issue', page);
			await phone.lead(lantern.link, { name: 'Mei-Lin', agree: 'yes' });
			await see(page, look, 'join: in it already', lantern.link);
			await see(page, look, 'account: in a group', '/account');
		}
	}
];

/** A phone with cookies and an address of its own; closed with the page's browser. */
async function anotherPhone(page: Page): Promise<APIRequestContext> {
	const browser = page.context().browser();
	if (browser === null) throw new Error('the page has no browser');
	const context = await browser.newContext({
		extraHTTPHeaders: { 'x-phone-address': String(Math.random()) }
	});
	return context.request;
}
