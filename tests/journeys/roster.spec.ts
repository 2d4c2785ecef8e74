import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { plusDays, todayIn } from './days.ts';
import { become, expect, test } from './lantern-street.ts';
import { Phone } from './phone.ts';
import { rowsOf } from './rows.ts';
import { leadsTo, ready } from './walk.ts';

// Our own rules, no source, but where one is named. Names are invented.

const rowOf = (page: Page, name: string) => page.getByRole('row').filter({ hasText: name });
const names = (page: Page) => page.locator('tbody th bdi').allTextContents();

const ID = /[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g;

test('one word a runner, by name, searched and filtered, and not today is one grey word', async ({
	page,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Mei-Lin');
	await lantern.join(await stranger(), 'راشد', leadsTo.byTalk);
	await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk);
	await lantern.join(await stranger(), 'Gwen', leadsTo.askFirst);
	await lantern.join(await stranger(), 'Dagny', leadsTo.notToday);
	await lantern.coach.send(`${lantern.path}?/add`, { name: 'Bram' });
	await page.goto(lantern.path);
	expect(await names(page)).toEqual(['Bram', 'Dagny', 'Gwen', 'Mei-Lin', 'Tobias', 'راشد']);
	await expect(rowOf(page, 'Mei-Lin')).toContainText('may run');
	await expect(rowOf(page, 'راشد')).toContainText('may run, by talk');
	await expect(rowOf(page, 'Tobias')).toContainText('may walk');

	// Ill today and ask first: the same words, the same grey, nothing else to tell them apart.
	const seen = async (name: string) =>
		(await rowOf(page, name).innerHTML()).replaceAll(name, '').replaceAll(ID, '');
	expect(await seen('Gwen')).toBe(await seen('Dagny'));
	const colour = (name: string) =>
		rowOf(page, name)
			.getByText('not today')
			.evaluate((one) => getComputedStyle(one).color);
	expect(await colour('Gwen')).toBe(await colour('Dagny'));
	expect(await page.content()).not.toMatch(/ankle|ill today|medicine|H-MEDS|R-|CLEARED|SEEK|WAIT/);
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

	await ready(page);
	await page.getByLabel('May do').selectOption({ label: 'not today' });
	expect(await names(page)).toEqual(['Dagny', 'Gwen']);
	await page.getByRole('link', { name: 'Show everybody' }).click();
	expect(await names(page)).toHaveLength(6);
	await page.getByLabel('Name', { exact: true }).first().fill('LIN');
	expect(await names(page)).toEqual(['Mei-Lin']);

	// Two taps: the group, and the press. The search stays, and stands in no address.
	await page.getByRole('button', { name: 'Mei-Lin is here' }).click();
	await expect(page.getByText('1 here today')).toBeVisible();
	expect(await names(page)).toEqual(['Mei-Lin']);
	expect(new URL(page.url()).search).toBe('');
	await page.goto('/coach');
	await page.locator(`a[href="${lantern.path}"]`).click();
	await page.getByRole('button', { name: 'Mei-Lin is here' }).click();
	await expect(page.getByText('0 here today')).toBeVisible();

	// Usable at 360: nothing hangs over the edge, the word and the press are there.
	await page.setViewportSize({ width: 360, height: 740 });
	await page.reload();
	expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
	await expect(page.getByRole('button', { name: 'Tobias is here' })).toBeVisible();
	await expect(rowOf(page, 'Tobias').getByText('may walk')).toBeVisible();
});

test('without script a name is looked for by a form, and stands in no address', async ({
	browser,
	lantern
}) => {
	for (const name of ['Ines', 'راشد', "D'Arcy"]) {
		await lantern.coach.send(`${lantern.path}?/add`, { name });
	}
	const context = await browser.newContext({
		javaScriptEnabled: false,
		storageState: await lantern.coach.request.storageState()
	});
	const page = await context.newPage();
	const addresses: string[] = [];
	page.on('request', (request) => addresses.push(request.url(), request.headers().referer ?? ''));
	await page.goto(lantern.coach.url + lantern.path);
	await page.getByLabel('Name', { exact: true }).first().fill('d’arcy');
	await page.getByRole('button', { name: 'Show', exact: true }).click();
	expect(await names(page)).toEqual(["D'Arcy"]);
	await expect(page.getByLabel('Name', { exact: true }).first()).toHaveValue('d’arcy');
	await page.getByRole('button', { name: "D'Arcy is here" }).click();
	await expect(page.getByText('1 here today')).toBeVisible();
	expect(await names(page)).toEqual(["D'Arcy"]);
	await page.getByRole('link', { name: 'Show everybody' }).click();
	expect(await names(page)).toHaveLength(3);
	await page.getByRole('button', { name: 'Ines is here' }).click();
	await expect(page.getByText('2 here today')).toBeVisible();
	expect(addresses.filter((address) => /darcy|d.{1,9}arcy/i.test(address))).toEqual([]);
	await context.close();
});

test('no outing without an emergency number, and contacts only while one is on', async ({
	page,
	phone,
	lantern,
	stranger
}) => {
	const runner = await lantern.join(await stranger(), 'Ines');
	await runner.lead('/account?/contact', {
		contactName: "Maeve O'Neill",
		contactPhone: '+353 87 123 45 67',
		contactRelation: 'sister'
	});
	const contact = `${lantern.path}/contact/${lantern.runners.get('Ines')?.memberId}`;
	expect((await phone.get(contact)).status()).toBe(404);

	const fields = { name: 'x', timeZone: 'UTC', units: 'km/h', paceUnits: 'min/km' };
	await phone.send(`${lantern.path}/settings?/change`, { ...fields, emergencyNumber: '' });
	await page.goto(lantern.path);
	await expect(page.getByRole('button', { name: 'Start today’s outing' })).toHaveCount(0);
	expect((await phone.send(`${lantern.path}?/start`)).status()).toBe(400);
	// It may be planned, and reaches no phone; both read why.
	const plan = await phone.lead(`${lantern.path}/outings?/make`);
	await phone.lead(`${plan}?/plan`, { onDate: plusDays(todayIn('UTC'), 1) });
	const onPhone = async () =>
		((await (await runner.get('/prompter/kept')).json()) as { outings: object[] }).outings;
	expect(await onPhone()).toEqual([]);
	expect(await (await runner.get('/outings')).text()).toContain('x has outings planned.');
	for (const path of ['/programme', '/programme/new', plan.slice(lantern.path.length)]) {
		const text = await (await phone.get(lantern.path + path)).text();
		expect(text, path).toContain('none reaches a runner’s phone');
		expect(text, path).toContain('settings#emergencyNumber');
	}
	await page.getByRole('link', { name: 'Write down the emergency number' }).click();
	await page.getByLabel('Emergency number where you run').fill('112');
	await page.getByRole('button', { name: 'Keep these changes' }).click();

	expect(await onPhone()).toMatchObject([{ help: { emergencyNumber: '112' } }]);
	expect(await (await runner.get('/outings')).text()).not.toContain('has outings planned.');

	await page.goto(lantern.path);
	await expect(page.getByText('No outing is set for today.')).toBeVisible();
	await page.getByRole('button', { name: 'Start today’s outing' }).click();
	await expect(page.getByRole('link', { name: 'Emergency: call 112' })).toBeVisible();
	await page.getByRole('link', { name: 'Emergency contact of Ines' }).click();
	await expect(page.getByText("Maeve O'Neill")).toBeVisible();
	await expect(page.getByRole('link', { name: 'Call +353871234567' })).toHaveAttribute(
		'href',
		'tel:+353871234567'
	);
	await page.goto(lantern.path);
	await page.getByRole('button', { name: 'End the outing' }).click();
	await expect(page.getByRole('button', { name: 'Start today’s outing' })).toBeVisible();
	await expect(page.getByRole('link', { name: /Emergency contact/ })).toHaveCount(0);
	expect((await phone.get(contact)).status()).toBe(404);

	await become(page, runner);
	await page.goto('/account');
	await expect(page.getByText('Odile Marr (x) saw whom to call for you')).toHaveCount(1);
	await page.getByRole('button', { name: 'Remove this contact' }).click();
	await expect(page.getByLabel('Their number')).toHaveValue('');
});

test('an outing that nobody ends ends by itself after four hours', async ({
	phone,
	lantern,
	house
}) => {
	await lantern.coach.send(`${lantern.path}?/add`, { name: 'Ines' });
	await phone.lead(`${lantern.path}?/start`);
	const isOn = async () => (await (await phone.get(lantern.path)).text()).includes('?/end');
	await house.reopen({ minutesAhead: 239 });
	expect(await isOn()).toBe(true);
	await house.reopen({ minutesAhead: 241 });
	expect(await isOn()).toBe(false);
});

test('names from a spreadsheet: looked at, mended, added whole, and taken away again', async ({
	page,
	phone,
	lantern,
	house
}) => {
	const kept = () => rowsOf(house, 'member').filter(({ group_id }) => group_id === lantern.groupId);
	await page.goto(`${lantern.path}/import`);
	// Windows-1252, as older spreadsheets write it: 0x92 is ’, 0xE1 is á (WHATWG Encoding, M).
	const bytes = Buffer.from(
		'Name;Town\r\nSiobh\xE1n O\x92Neill;Cork\r\n;Cork\r\nInes;\r\n',
		'latin1'
	);
	const file = { name: 'runners.csv', mimeType: 'text/csv', buffer: bytes };
	await page.getByLabel('File with names').setInputFiles(file);
	await page.getByRole('button', { name: 'Look at the names' }).click();
	await expect(page.getByText('Line 3: there is no name.')).toBeVisible();
	await expect(page.getByText('so we guessed (Windows-1252)')).toBeVisible();
	await expect(page.getByText('Siobhán O’Neill', { exact: true })).toBeVisible();
	await expect(page.getByRole('button', { name: /^Add/ })).toHaveCount(0);
	expect(kept()).toHaveLength(0);
	// Nor does a form that skips the look.
	const skipped = await phone.send(`${lantern.path}/import?/add`, { text: 'Ines\n—' });
	expect(skipped.status()).toBe(400);
	expect(kept()).toHaveLength(0);

	const list = page.getByLabel('The list as we read it');
	await list.fill((await list.inputValue()).replace('\n;Cork', '\nفاطمة;Cork'));
	await page.getByRole('button', { name: 'Look again' }).click();
	await page.getByRole('button', { name: 'Add these 3 names' }).click();
	await expect(page).toHaveURL(lantern.coach.url + lantern.path);
	expect(await names(page)).toEqual(['Ines', 'Siobhán O’Neill', 'فاطمة']);

	const many = Array.from({ length: 10_000 }, (_, i) => `Runner ${i}`).join('\n');
	await page.goto(`${lantern.path}/import`);
	await page
		.getByLabel('File with names')
		.setInputFiles({ name: 'club.csv', mimeType: 'text/csv', buffer: Buffer.from(many) });
	await page.getByRole('button', { name: 'Look at the names' }).click();
	await expect(page.getByRole('alert')).toContainText('This list has 10,000 names. At most 500');
	expect(kept()).toHaveLength(3);

	await phone.send(`${lantern.path}?/add`, { name: '=1+1' });
	const taken = await phone.get(`${lantern.path}/export.csv`);
	expect(taken.headers()['content-type']).toContain('text/csv');
	const lines = (await taken.text()).split('\r\n');
	expect(lines[0]).toBe('\uFEFFName,On the list since,Joined,Shares,Times here,Last here');
	expect(lines[1]).toMatch(/^'=1\+1,\d{4}-\d\d-\d\d,,no,0,$/);
	const all = (await (await phone.get(`${lantern.path}/export.json`)).json()) as {
		members: readonly { name: string }[];
		library: readonly unknown[];
	};
	expect(all.library).toEqual([]);
	expect(all.members.map(({ name }) => name)).toContain('فاطمة');
});

test('what is set for today, and how the list is taken along, stand there in words', async ({
	page,
	phone,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Ines');
	await page.goto(lantern.path);
	await expect(page.getByText('No outing is set for today.')).toBeVisible();
	const plan = await phone.lead(`${lantern.path}/outings?/make`);
	await phone.lead(`${plan}?/plan`, { onDate: todayIn('Europe/Dublin') });
	await page.goto(plan);
	const name = (await page.getByRole('heading', { level: 1 }).textContent()) ?? '';
	await page.goto(lantern.path);
	await expect(page.getByText(`Set for today: ${name}`)).toBeVisible();
	await expect(page.getByText('No outing is set for today.')).toHaveCount(0);

	await page.goto(`${lantern.path}/settings`);
	await expect(page.getByRole('heading', { name: 'Take the list with you' })).toBeVisible();
	for (const [label, path] of [
		['Get the table', '/export.csv'],
		['Get all of the group', '/export.json']
	] as const) {
		const link = page.getByRole('link', { name: label });
		await expect(link).toHaveAttribute('href', lantern.path + path);
		const file = page.waitForEvent('download');
		await link.click();
		expect((await file).suggestedFilename()).toMatch(path.endsWith('csv') ? /\.csv$/ : /\.json$/);
	}
});

test('a helper sees and leads; what an owner decides, and another coach’s group, are not there', async ({
	phone,
	lantern,
	stranger,
	house
}) => {
	await lantern.join(await stranger(), 'Ines');
	const member = `${lantern.path}/members/${lantern.runners.get('Ines')?.memberId}`;
	const invited = await (await phone.send(`${lantern.path}/settings?/inviteCoach`)).text();
	const link = /\/coach\/invited\/[\w-]+/.exec(invited)?.[0] ?? '';
	const helper = new Phone(await stranger(), phone.url);
	const words = { name: 'Bram Holt', qualification: '', password: 'four green umbrellas' };
	await helper.send(`${link}?/signUp`, { ...words, email: 'bram.roster@lantern.example' });
	await helper.send('/coach/sign-in', {
		...words,
		email: 'bram.roster@lantern.example',
		stay: 'yes'
	});
	for (const path of ['', '/settings', '/invite', '/import', '/attendance']) {
		expect((await helper.get(lantern.path + path)).status(), path).toBe(200);
	}
	expect((await helper.get(member)).status()).toBe(200);
	// A link is an owner's to make: without one a helper reads whom to ask.
	const invite = `${lantern.path}/invite`;
	const open = await (await phone.get(invite)).text();
	expect(open).toContain('Take this link back');
	expect(open).not.toContain('Ask an owner');
	const shown = await (await helper.get(invite)).text();
	expect(shown).toContain('/join/');
	expect(shown).not.toMatch(/Take this link back|Make a link|Ask an owner/);
	await phone.lead(`${invite}?/revoke`, {
		id: String(rowsOf(house, 'group_invitation').at(-1)?.['id'])
	});
	const empty = await (await helper.get(invite)).text();
	expect(empty).toMatch(/There is no link yet\.\s+Ask an owner of the group to make one\./);
	expect(empty).not.toContain('Make a link');
	expect(await helper.lead(`${lantern.path}?/start`)).toBe(lantern.path);
	for (const path of ['/export.csv', '/export.json']) {
		expect((await helper.get(lantern.path + path)).status(), path).toBe(404);
	}
	for (const [path, fields] of [
		['/settings?/delete', { sure: 'yes' }],
		['/settings?/inviteCoach', {}],
		['/invite?/make', { endsOn: '2030-01-01' }]
	] as const) {
		expect((await helper.send(lantern.path + path, fields)).status(), path).toBe(404);
	}
	expect((await helper.send(`${member}?/remove`, { sure: 'yes' })).status()).toBe(404);

	await helper.send(`${lantern.path}/settings?/leave`);
	const runner = lantern.runners.get('Ines')?.phone;
	for (const path of ['', '/settings', '/invite', '/import', '/attendance', '/export.csv']) {
		expect((await helper.get(lantern.path + path)).status(), path).toBe(404);
		expect((await runner?.get(lantern.path + path))?.status(), path).toBe(303);
	}
	expect((await helper.get(member)).status()).toBe(404);
	expect((await helper.send(`${lantern.path}?/add`, { name: 'x' })).status()).toBe(404);
	expect((await phone.get(`/coach/${'0'.repeat(8)}`)).status()).toBe(404);
});

test('a page that is not there keeps the way around the group that it is missing from', async ({
	page,
	lantern
}) => {
	const missing = await page.goto(`${lantern.path}/members/nobody`);
	expect(missing?.status()).toBe(404);
	await expect(page.getByRole('link', { name: 'Lantern Street beginners' })).toBeVisible();
	await page.getByRole('link', { name: 'Bands' }).click();
	await expect(page).toHaveURL(`${lantern.path}/bands`);
	// Somebody else's group is not known here, not even by name.
	await page.goto('/coach/nothing/bands');
	await expect(page.getByRole('link', { name: 'Bands' })).toHaveCount(0);
});
