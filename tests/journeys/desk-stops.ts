import type { APIRequestContext, Page } from '@playwright/test';
import { LanternStreet, SIGN_IN } from './lantern-street.ts';
import { resetLink } from './reset-link.ts';
import type { Look, Walk } from './stops.ts';
import { leadsTo, ready } from './walk.ts';

/** A list with a slip of each kind, in the letters of an older spreadsheet (Windows-1252). */
const SLIPS = Buffer.from('Name;Town\r\nSiobh\xE1n;Cork\r\n;Cork\r\nSIOBH\xC1N;\r\n', 'latin1');

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

const contactOf = (lantern: LanternStreet, name: string) =>
	`${lantern.path}/contact/${lantern.runners.get(name)?.memberId}`;

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
		async go({ page, phone, house }, look) {
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
			await page.goto(await resetLink(house, SIGN_IN.email));
			await look('reset', page);
			await page.getByLabel('New password').fill('short');
			await press(page, 'Set this password');
			await look('reset: issue', page);
			const { path } = await LanternStreet.found(phone, { name: 'Quay Street beginners' });
			await see(page, look, 'the coach’s groups', '/coach');
			await see(page, look, 'the coach’s account', '/coach/account');
			await see(page, look, 'a new group', '/coach/new');
			await press(page, 'Make this group');
			await ready(page);
			await look('a new group: issues', page);
			await page.goto(`${path}/settings`);
			await press(page, 'Make a link for a coach');
			await look('settings: a link for a coach', page);
			const invited = await page.getByText(/\/coach\/invited\//).innerText();
			await see(page, look, 'invited: as a coach', invited);
			await page.context().clearCookies();
			await see(page, look, 'invited', invited);
			await press(page, 'Make my account');
			await look('invited: issues', page);
			await see(page, look, 'invited: who has an account', `${invited}?account`);
			await press(page, /^Sign in/);
			await look('invited: sign in, issues', page);
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
			await see(page, look, 'outings: none yet', `${path}/outings`);
			const outing = await phone.lead(`${path}/outings?/make`);
			await see(page, look, 'outings', `${path}/outings`);
			await see(page, look, 'an outing in the editor', outing);
			await phone.lead(`${path}?/start`);
			await see(page, look, 'an outing is on', path);
			await see(page, look, 'whom to call: nobody named', contactOf(lantern, 'Tobias'));
			await lantern.runners.get('Ines')?.phone.lead('/account?/contact', {
				contactName: 'Fatima Haddad',
				contactPhone: '+353 20 910 1234',
				contactRelation: 'sister'
			});
			await see(page, look, 'whom to call', contactOf(lantern, 'Ines'));
		}
	},
	{
		name: 'the desk: names from a list',
		async go({ page, phone }, look) {
			const { path } = await LanternStreet.found(phone);
			const list = { name: 'names.csv', mimeType: 'text/csv' };
			const take = async (buffer: Buffer) => {
				await page.goto(`${path}/import`);
				await page.getByLabel('File with names').setInputFiles({ ...list, buffer });
				await press(page, 'Look at the names');
			};
			await see(page, look, 'import: nothing yet', `${path}/import`);
			await press(page, 'Look at the names');
			await look('import: nothing sent', page);
			await take(SLIPS);
			await look('import: lines with slips', page);
			await take(Buffer.from('Runner\n'.repeat(10_000)));
			await look('import: too many', page);
			await take(Buffer.from('Runner;Somewhere far away, where nobody runs\n'.repeat(20_000)));
			await look('import: too large', page);
			const many = Array.from({ length: 60 }, (_, i) => `Runner ${i}`).join('\n');
			await take(Buffer.from(`Ines\nراشد\nGwen D'Arcy\n${UNBROKEN}\n${many}`));
			await look('import: to add', page);
			await press(page, /^Add these/);
			await take(Buffer.from('Ines'));
			await look('import: all there', page);
		}
	},
	{
		name: 'a tablet that goes round',
		async go({ page, phone }, look) {
			const { groupId, path } = await LanternStreet.found(phone);
			await see(page, look, 'tablet: not shared', `/tablet/${groupId}`);
			const tablet = await phone.lead(`${path}/invite?/tablet`);
			await see(page, look, 'tablet: your turn', tablet);
			await phone.begin();
			await see(page, look, 'tablet: somebody began', tablet);
			await phone.screen();
			await see(page, look, 'tablet: joining', tablet);
			await press(page, /^Join, and clear/);
			await look('tablet: joining, issues', page);
			await page.getByLabel('Your name').fill('Dagny');
			await page.getByLabel('I agree that the coaches').check();
			await press(page, /^Join, and clear/);
			await look('tablet: the code, shown once', page);
			const text = (await page.locator('main').textContent()) ?? '';
			const code = /[2-9A-Z]{4}-[2-9A-Z]{4}/.exec(text)?.[0] ?? '';
			await see(page, look, 'tablet: done', `${tablet}/done`);
			await page.goto(tablet);
			await page.getByLabel('Your code').fill('AAAA-2222');
			await press(page, /^Answer again/);
			await look('tablet: a code that does not work', page);
			await phone.lead(`${tablet}?/back`, { code });
			await see(page, look, 'tablet: come back, not answered', tablet);
			await phone.screen();
			await see(page, look, 'result: come back with a code', '/screening/result');
			await see(page, look, 'tablet: come back, answered', tablet);
		}
	},
	{
		name: 'joining a group',
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
