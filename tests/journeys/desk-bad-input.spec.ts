import type { Page } from '@playwright/test';
import { expect, test, type LanternStreet } from './lantern-street.ts';
import { Phone } from './phone.ts';
import { printed } from './sheets.ts';
import { rowsOf } from './rows.ts';

// What goes wrong at a coach's desk. Our own rules, no source; people are invented.

test.describe.configure({ timeout: 120_000 });

const PASSWORD = 'four green umbrellas';
const words = { qualification: '', password: PASSWORD };

const linkIn = (page: string) => /\/coach\/invited\/[\w-]+/.exec(page)?.[0] ?? '';

/** Makes an invitation to help with the group; answers its place. */
async function invitation({ coach, path }: LanternStreet): Promise<string> {
	return linkIn(await (await coach.send(`${path}/settings?/inviteCoach`)).text());
}

test('an invitation to coach that was taken back or used: the page says so, and nobody comes of it', async ({
	page,
	lantern,
	house
}) => {
	const coachesBefore = rowsOf(house, 'coach').length;
	const link = await invitation(lantern);
	await page.context().clearCookies();
	await page.goto(link);
	await page.getByLabel('Your name').fill('Bram Holt');
	await page.getByLabel('E-mail').fill('not an address');
	await page.getByLabel('Password').fill(PASSWORD);
	await page.getByRole('button', { name: 'Make my account' }).click();
	// What is wrong stands at its field, and what was typed stays; never the password.
	await expect(page.getByLabel('E-mail')).toHaveAttribute('aria-invalid', 'true');
	await expect(page.getByLabel('E-mail')).toHaveValue('not an address');
	await expect(page.getByLabel('Your name')).toHaveValue('Bram Holt');
	await expect(page.getByLabel('Password')).toHaveValue('');

	// It is taken back while the form is open.
	const settings = await (await lantern.coach.get(`${lantern.path}/settings`)).text();
	const id = /\?\/revokeCoach".*?name="id" value="([\w-]+)"/s.exec(settings)?.[1] ?? '';
	await lantern.coach.lead(`${lantern.path}/settings?/revokeCoach`, { id });
	await page.getByLabel('E-mail').fill('bram@lantern.example');
	await page.getByLabel('Password').fill(PASSWORD);
	await page.getByRole('button', { name: 'Make my account' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('This invitation does not work');
	expect(rowsOf(house, 'coach')).toHaveLength(coachesBefore);
	await page.goto(link);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('This invitation does not work');
	// Nor for somebody who coaches here already.
	expect(await lantern.coach.lead(`${link}?/accept`)).toBe(link);
});

test('an e-mail with a plus sign and capitals is one account, also by an invitation', async ({
	lantern,
	stranger,
	house
}) => {
	const as = async (email: string, link: string) => {
		const who = new Phone(await stranger(), lantern.coach.url);
		await who.send(`${link}?/signUp`, { ...words, name: 'Bram Holt', email });
		return who;
	};
	const first = await invitation(lantern);
	const who = await as('Bram+Lantern@Lantern.Example', first);
	const emails = () => rowsOf(house, 'user').map(({ email }) => email);
	expect(emails()).toContain('bram+lantern@lantern.example');
	const before = emails().length;
	// The same one in other letters makes no second account, and uses no invitation up.
	const second = await invitation(lantern);
	await as('bram+LANTERN@lantern.example', second);
	expect(emails()).toHaveLength(before);
	const typed = { ...words, email: ' BRAM+lantern@LANTERN.example ', stay: 'yes' };
	expect(await who.lead('/coach/sign-in', typed)).toBe('/coach');
	expect((await who.get(lantern.path)).status()).toBe(200);
	expect((await (await who.get(second)).text()).includes('does not work')).toBe(false);
	// Without what stands after the plus it is somebody else.
	const other = await as('bram@lantern.example', second);
	expect(emails()).toHaveLength(before + 1);
	await other.lead('/coach/sign-in', { ...words, email: 'bram@lantern.example', stay: 'yes' });
	expect((await other.get(lantern.path)).status()).toBe(200);
});

test('names in Arabic and with an apostrophe stand on every page, paper and file as they were written', async ({
	page,
	phone,
	lantern,
	stranger
}) => {
	const names = ['راشد الحداد', "Gwen D'Arcy", 'Siobhán O’Neill'];
	for (const name of names) await lantern.join(await stranger(), name);
	for (const part of ['', '/bands', '/attendance', '/cards']) {
		await page.goto(lantern.path + part);
		for (const name of names) {
			const isolated = page.locator('bdi').getByText(name, { exact: true }).first();
			await expect(isolated, `${name} at ${part}`).toBeVisible();
		}
	}
	const paper = await printed(page, `${lantern.path}/cards`);
	for (const name of names) expect(paper).toContain(name);
	for (const name of names) {
		const { memberId } = lantern.runners.get(name) ?? {};
		await page.goto(`${lantern.path}/members/${memberId}`);
		await expect(page.getByRole('heading', { level: 1 })).toHaveText(name);
		await page.goto(lantern.bandsOf(name));
		await expect(page.getByRole('heading', { level: 1 })).toContainText(name);
	}
	const table = await (await phone.get(`${lantern.path}/export.csv`)).text();
	expect(table.startsWith('\uFEFF')).toBe(true);
	for (const name of names) expect(table).toContain(`\r\n${name},`);
	const file = (await (await phone.get(`${lantern.path}/export.json`)).json()) as {
		members: { name: string }[];
	};
	expect(file.members.map(({ name }) => name).sort()).toEqual([...names].sort());

	await page.goto(lantern.path);
	const search = page.getByLabel('Name', { exact: true }).first();
	for (const [typed, found] of [
		['حداد', 'راشد الحداد'],
		["d'arcy", "Gwen D'Arcy"],
		['d’arcy', "Gwen D'Arcy"],
		["siobhan o'n", 'Siobhán O’Neill']
	] as const) {
		await search.fill(typed);
		await expect(page.locator('tbody th bdi')).toHaveText([found]);
	}
});

test('a name that cannot be kept is refused at its field, and stays typed', async ({
	page,
	lantern
}) => {
	await page.goto(lantern.path);
	const field = page.locator('form[action*="?/add"] input[name="name"]');
	for (const typed of ['—', 'x'.repeat(61)]) {
		await page.goto(lantern.path);
		const isShown = await field.isVisible();
		if (!isShown) await page.getByText('Add a name').first().click();
		await field.evaluate((one) => one.removeAttribute('maxlength'));
		await field.fill(typed);
		await field.press('Enter');
		await expect(field).toHaveAttribute('aria-invalid', 'true');
		await expect(field).toHaveValue(typed);
	}
});

test('two pages of the group’s settings: what one keeps the other takes back only when it is told', async ({
	page,
	context,
	lantern
}) => {
	const other = await context.newPage();
	for (const each of [page, other]) await each.goto(`${lantern.path}/settings`);
	const defibrillator = (each: Page) => each.getByLabel('Nearest defibrillator');
	const keep = (each: Page) => each.getByRole('button', { name: 'Keep these changes' }).click();
	await defibrillator(page).fill('Club house, hall');
	await keep(page);
	await expect(page.getByRole('status')).toBeVisible();

	await other.getByLabel('First aider').fill('Siobhán');
	await keep(other);
	await expect(other.getByRole('status')).toBeVisible();
	await expect(defibrillator(other)).toHaveValue('Club house, hall');

	await defibrillator(page).fill('Swimming pool');
	await keep(page);
	await expect(page.getByRole('status')).toBeVisible();
	await defibrillator(other).fill('Boat house');
	await keep(other);
	await expect(other.getByRole('alert')).toContainText('changed on another page meanwhile');
	await expect(defibrillator(other)).toHaveValue('Boat house');
	await page.goto(`${lantern.path}/settings`);
	await expect(defibrillator(page)).toHaveValue('Swimming pool');
	await keep(other);
	await expect(other.getByRole('status')).toBeVisible();
	await page.goto(`${lantern.path}/settings`);
	await expect(defibrillator(page)).toHaveValue('Boat house');
	await expect(page.getByLabel('First aider')).toHaveValue('Siobhán');
});
