import type { Page } from '@playwright/test';
import { House } from './house.ts';
import { resetLink } from './reset-link.ts';
import { expect, test as base } from './test.ts';
import { ready } from './walk.ts';

// Our own rules, no source. A house of their own, which is empty when the first test begins, and
// which they go through in order.

const test = base.extend<object, { house: House }>({
	house: [
		async ({}, use) => {
			const house = await House.build();
			await use(house);
			await house.tearDown();
		},
		{ scope: 'worker' }
	]
});
test.describe.configure({ mode: 'serial' });

const EMAIL = 'odile+lantern@example.org';
const FIRST = 'seven blue kettles';
const SECOND = 'four green umbrellas';
const THIRD = 'nine quiet harbours';

const heading = (page: Page) => page.getByRole('heading', { level: 1 });

async function signIn(page: Page, password: string, email = EMAIL) {
	await page.goto('/coach/sign-in');
	await ready(page);
	await page.getByLabel('E-mail').fill(email);
	await page.getByLabel('Password').fill(password);
	await page.getByRole('button', { name: 'Sign in', exact: true }).click();
}

async function signOut(page: Page) {
	await page.goto('/coach/account');
	await ready(page);
	await page.getByRole('button', { name: 'Sign out on this device' }).click();
	await expect(page.getByText('You are signed out on this device.')).toBeVisible();
}

test('the desk is shut without a sign-in', async ({ phone }) => {
	for (const path of ['/coach', '/coach/account', '/coach/some-group']) {
		expect((await phone.get(path)).headers()).toMatchObject({ location: '/coach/sign-in' });
		expect((await phone.send(path)).status()).toBe(403);
	}
});

test('the first coach comes through the second door, and becomes the host', async ({ page }) => {
	await page.goto('/');
	await page.getByRole('link', { name: 'I coach a group' }).click();
	await expect(page).toHaveURL(/\/coach\/sign-up$/);
	await expect(page.getByText('You are the first coach here.')).toBeVisible();

	await page.getByLabel('Your name').fill('Odile O’Marr');
	await page.getByLabel('Your qualification').fill('Run leader');
	await page.getByLabel('E-mail').fill(' Odile+Lantern@Example.org ');
	await page.getByLabel('Password').fill('password 123');
	await page.getByRole('button', { name: 'Make my account' }).click();
	// What was typed is still there, but for the password.
	await expect(page.getByRole('alert')).toContainText('Many people use this one');
	await expect(page.getByLabel('Your name')).toHaveValue('Odile O’Marr');
	await expect(page.getByLabel('Password')).toHaveValue('');

	await page.getByLabel('Password').fill(FIRST);
	await page.getByRole('button', { name: 'Make my account' }).click();
	await expect(page).toHaveURL(/\/coach$/);
	await page.goto('/coach/account');
	await expect(page.getByText(`You sign in as ${EMAIL}.`)).toBeVisible();
	await expect(page.getByText('You are the host of this Breathmark.')).toBeVisible();
	await expect(page.getByRole('heading', { name: 'Where you are signed in' })).toBeVisible();
	await expect(page.getByText('(this device)')).toBeVisible();
	await signOut(page);
	await page.goto('/coach/account');
	await expect(page).toHaveURL(/\/coach\/sign-in$/);
});

test('who is no coach, and who mistypes, read the same', async ({ page }) => {
	const answers: string[] = [];
	for (const email of [EMAIL, 'nobody@example.org']) {
		await signIn(page, 'not the password', email);
		answers.push(await page.getByRole('alert').innerText());
		await expect(page.getByLabel('E-mail')).toHaveValue(email);
	}
	expect(answers[0]).toContain('do not go together');
	expect(answers[1]).toBe(answers[0]);
});

test('capitals in the e-mail do not matter; the password is changed', async ({
	page,
	browser,
	house
}) => {
	const elsewhere = await (await browser.newContext({ baseURL: house.url })).newPage();
	await signIn(elsewhere, FIRST);
	await expect(elsewhere).toHaveURL(/\/coach$/);
	await signIn(page, FIRST, EMAIL.toUpperCase());
	await expect(page).toHaveURL(/\/coach$/);

	await page.goto('/coach/account');
	await ready(page);
	await page.getByLabel('Password now').fill('not this one');
	await page.getByLabel('New password').fill(SECOND);
	await page.getByRole('button', { name: 'Change it' }).click();
	await expect(page.getByRole('alert')).toContainText('This is not your password.');
	await page.getByLabel('Password now').fill(FIRST);
	await page.getByLabel('New password').fill(SECOND);
	await page.getByRole('button', { name: 'Change it' }).click();
	await expect(page.getByText('Your password is changed.')).toBeVisible();

	await elsewhere.goto('/coach/account');
	await expect(elsewhere).toHaveURL(/\/coach\/sign-in$/);
	await signIn(elsewhere, FIRST);
	await expect(elsewhere.getByRole('alert')).toContainText('do not go together');
	await elsewhere.context().close();
});

test('a forgotten password: the host prints a link, which works once', async ({ page, house }) => {
	await page.goto('/coach/forgot');
	await expect(page.getByText('This Breathmark sends no mail.')).toBeVisible();
	await expect(page.getByText('npm run reset-password -- you@example.org')).toBeVisible();

	const link = await resetLink(house, EMAIL);
	expect(link).toContain(house.url);
	await page.goto(link);
	await page.getByLabel('New password').fill('short');
	await page.getByRole('button', { name: 'Set this password' }).click();
	await expect(page.getByRole('alert')).toContainText('at least 10 characters');
	await page.goto(link);
	await page.getByLabel('New password').fill(THIRD);
	await page.getByRole('button', { name: 'Set this password' }).click();
	await expect(page.getByText('Your new password is set.')).toBeVisible();
	await page.goto(link);
	await expect(heading(page)).toHaveText('This link does not work');
	await signIn(page, SECOND);
	await expect(page.getByRole('alert')).toBeVisible();
	await signIn(page, THIRD);
	await expect(page).toHaveURL(/\/coach$/);
});

test('a passkey is added, signs in, and is removed', async ({ page }) => {
	const devtools = await page.context().newCDPSession(page);
	await devtools.send('WebAuthn.enable');
	await devtools.send('WebAuthn.addVirtualAuthenticator', {
		options: {
			protocol: 'ctap2',
			transport: 'internal',
			hasResidentKey: true,
			hasUserVerification: true,
			isUserVerified: true,
			automaticPresenceSimulation: true
		}
	});
	await signIn(page, THIRD);
	await page.goto('/coach/account');
	await ready(page);
	await page.getByRole('button', { name: 'Add a passkey' }).click();
	await expect(page.getByText('The passkey is added.')).toBeVisible();
	await expect(page.getByText('Passkey from')).toBeVisible();
	await signOut(page);

	await page.goto('/coach/sign-in');
	await ready(page);
	await page.getByRole('button', { name: 'Sign in with a passkey' }).click();
	await expect(page).toHaveURL(/\/coach$/);
	await page.goto('/coach/account');
	await ready(page);
	await page.getByRole('button', { name: 'Remove' }).click();
	await expect(page.getByText('Passkey from')).toHaveCount(0);
});

test('another coach comes by invitation only; the link works once', async ({
	page,
	browser,
	house
}) => {
	const stranger = await (await browser.newContext({ baseURL: house.url })).newPage();
	await stranger.goto('/coach/sign-up');
	await expect(heading(stranger)).toHaveText('Ask for an invitation');

	await signIn(page, THIRD);
	await page.goto('/coach/account');
	await ready(page);
	await expect(page.getByText('Time zone of this page')).toBeVisible();
	await page.getByRole('button', { name: 'Make a link' }).click();
	const link = await page.getByText(/\/coach\/invited\//).innerText();

	await stranger.goto(link);
	await expect(
		stranger.getByText('Odile O’Marr invites you to become a coach here.')
	).toBeVisible();
	await stranger.getByLabel('Your name').fill('ليلى حداد');
	await stranger.getByLabel('E-mail').fill('leila@example.org');
	await stranger.getByLabel('Password').fill(FIRST);
	await stranger.getByRole('button', { name: 'Make my account' }).click();
	await expect(stranger.getByText('your account is ready')).toBeVisible();
	await signIn(stranger, FIRST, 'leila@example.org');
	await expect(stranger).toHaveURL(/\/coach$/);
	// Only the host decides who comes.
	await stranger.goto('/coach/account');
	await expect(stranger.getByRole('button', { name: 'Make a link' })).toHaveCount(0);
	await stranger.context().clearCookies();
	await stranger.goto(link);
	await expect(heading(stranger)).toHaveText('This invitation does not work');
	await stranger.context().close();
});

test('a coach who has an account takes an invitation into a group up by signing in', async ({
	page,
	phone,
	browser,
	house
}) => {
	await signIn(page, THIRD);
	const group = await phone.lead('/coach/new', {
		name: 'Lantern Street beginners',
		timeZone: 'Europe/Dublin',
		units: 'km/h',
		paceUnits: 'min/km',
		emergencyNumber: '112'
	});
	const made = await (await phone.send(`${group}/settings?/inviteCoach`)).text();
	const link = /\/coach\/invited\/[\w-]+/.exec(made)?.[0] ?? '';

	const leila = await (await browser.newContext({ baseURL: house.url })).newPage();
	await leila.goto(link);
	await expect(
		leila.getByText('invites you to help with “Lantern Street beginners”')
	).toBeVisible();
	// Who made a second account by mistake is led back, in the words that a new coach reads too.
	await leila.getByLabel('Your name').fill('Leila');
	await leila.getByLabel('E-mail').fill('leila@example.org');
	await leila.getByLabel('Password').fill(THIRD);
	await leila.getByRole('button', { name: 'Make my account' }).click();
	await expect(leila.getByText('open the invitation again')).toBeVisible();
	await leila.goto(link);
	await leila.getByRole('link', { name: 'I have an account' }).click();
	await leila.getByLabel('E-mail').fill('leila@example.org');
	await leila.getByLabel('Password').fill('not this one');
	await leila.getByRole('button', { name: 'Sign in and accept' }).click();
	await expect(leila.getByRole('alert')).toContainText('do not go together');
	await leila.getByLabel('Password').fill(FIRST);
	await leila.getByRole('button', { name: 'Sign in and accept' }).click();
	await expect(leila).toHaveURL(house.url + group);
	await leila.goto(link);
	await expect(heading(leila)).toHaveText('This invitation does not work');
	await leila.context().close();

	// Nobody would decide over the group: it is handed over first.
	await page.goto('/coach/account');
	await expect(page.getByText('You are the only owner of these groups.')).toBeVisible();
	await expect(page.getByRole('button', { name: 'Delete my account now' })).toHaveCount(0);
	const settings = await (await phone.get(`${group}/settings`)).text();
	const ids = [...settings.matchAll(/name="id" value="([\w-]+)"/g)].map(([, id]) => id ?? '');
	for (const id of new Set(ids)) await phone.send(`${group}/settings?/role`, { id, role: 'owner' });
	await page.reload();
	await expect(page.getByText('You are the only owner of these groups.')).toHaveCount(0);
});

test('a runner’s account on the same phone is not put aside unawares', async ({ page, phone }) => {
	await phone.begin();
	await page.goto('/coach/sign-in');
	await ready(page);
	await expect(page.getByText('A runner’s account is on this device')).toBeVisible();
	await page.getByLabel('E-mail').fill(EMAIL);
	await page.getByLabel('Password').fill(THIRD);
	await page.getByRole('button', { name: 'Sign in', exact: true }).click();
	await expect(page.getByRole('alert')).toContainText('Tick the box');
	await page.getByLabel('Password').fill(THIRD);
	await page.getByLabel('Put the runner’s account aside').check();
	await page.getByRole('button', { name: 'Sign in', exact: true }).click();
	await expect(page).toHaveURL(/\/coach$/);
});

test('the host hands the house over, deletes the account, and can be a coach no more', async ({
	page,
	house
}) => {
	await signIn(page, THIRD);
	await page.goto('/coach/account');
	await ready(page);
	await expect(page.getByRole('button', { name: 'Delete my account now' })).toHaveCount(0);
	await page.getByRole('button', { name: 'Hand it over' }).click();
	await expect(page.getByText('You are the host')).toHaveCount(0);
	await page.getByRole('button', { name: 'Delete my account now' }).click();
	await expect(page.getByRole('alert')).toContainText('Tick the box first.');
	await page.getByLabel('I want to delete my account').check();
	await page.getByRole('button', { name: 'Delete my account now' }).click();
	await expect(heading(page)).toHaveText('Your account is deleted');
	await signIn(page, THIRD);
	await expect(page.getByRole('alert')).toContainText('do not go together');
	// Nothing of all this stands in the log.
	expect(house.printed).not.toMatch(/@example|kettles|umbrellas|harbours|Odile|reset\?/i);
});
