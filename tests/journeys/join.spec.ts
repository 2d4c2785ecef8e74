import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from '@playwright/test';
import { qrCode } from '../../src/lib/server/qr-code.ts';
import { plusDays, todayIn } from './days.ts';
import { expect, test, type LanternStreet } from './lantern-street.ts';
import { Phone } from './phone.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

const heading = (page: Page) => page.getByRole('heading', { level: 1 });

/** Another person's phone, beside the coach's page. */
async function openPhone(browser: Browser, { coach }: LanternStreet): Promise<Page> {
	const context = await browser.newContext({
		baseURL: coach.url,
		viewport: { width: 360, height: 740 },
		locale: 'en-GB'
	});
	return context.newPage();
}

const rowOf = (page: Page, name: string) => page.getByRole('row').filter({ hasText: name });

test('a runner opens the link, answers first, joins under the name that the coach wrote, and decides what is seen', async ({
	page,
	browser,
	lantern
}) => {
	for (const name of ["Siobhán O'Neill", 'Somebody Secret']) {
		await lantern.coach.send(`${lantern.path}?/add`, { name });
	}
	const phone = await openPhone(browser, lantern);
	await phone.goto(lantern.link);
	await expect(heading(phone)).toHaveText('Join Lantern Street beginners');
	await expect(phone.getByText('With Odile Marr.')).toBeVisible();
	await expect(phone.getByText('No page shows your coach your answers')).toBeVisible();
	expect(await phone.content()).not.toContain('Secret');
	await expect(phone.getByRole('button', { name: 'Join the group' })).toHaveCount(0);
	expect((await new AxeBuilder({ page: phone }).analyze()).violations).toEqual([]);

	await phone.getByRole('link', { name: 'Answer the first questions' }).click();
	await expect(heading(phone)).toHaveText('Do you have any of these right now?');
	await new Phone(phone.request, lantern.coach.url).screen(leadsTo.mayWalk);
	await phone.goto('/screening/result');
	await expect(phone.getByText('You were on the way into Lantern Street')).toBeVisible();
	await phone.getByRole('link', { name: 'Go on and join' }).click();

	// Nothing is ticked before; without the tick nobody joins, and the name stays.
	await expect(phone.getByLabel('I agree that the coaches')).not.toBeChecked();
	await phone.getByLabel('Your name').fill('siobhán o’neill');
	await phone.getByRole('button', { name: 'Join the group' }).click();
	await expect(phone.getByRole('alert')).toContainText('Tick the box if you agree');
	await expect(phone.getByLabel('Your name')).toHaveValue('siobhán o’neill');
	await page.goto(lantern.path);
	await expect(rowOf(page, "Siobhán O'Neill")).toContainText('not joined yet');

	await phone.getByLabel('I agree that the coaches').check();
	await phone.getByRole('button', { name: 'Join the group' }).click();
	await expect(heading(phone)).toHaveText('You are in Lantern Street beginners');

	// The coach's own page, at the same time.
	await page.reload();
	await expect(page.getByRole('row')).toHaveCount(3);
	await expect(rowOf(page, "Siobhán O'Neill")).toContainText('may walk');

	await phone.goto('/account');
	await expect(
		phone.getByText('Odile Marr (Lantern Street beginners) saw what you may do')
	).toBeVisible();
	await page.reload();
	await phone.reload();
	await expect(phone.getByText(/saw what you may do, \d+ times that day, last at/)).toBeVisible();
	await phone.getByRole('button', { name: 'Stop sharing: Lantern Street beginners' }).click();
	await expect(phone.getByText('They do not see your result.')).toBeVisible();
	await page.reload();
	await expect(rowOf(page, "Siobhán O'Neill")).toContainText('not shared');
	await expect(rowOf(page, "Siobhán O'Neill")).not.toContainText('may walk');

	await phone.getByRole('button', { name: 'Let them see it: Lantern Street beginners' }).click();
	await page.reload();
	await expect(rowOf(page, "Siobhán O'Neill")).toContainText('may walk');

	await phone.getByRole('button', { name: 'Leave: Lantern Street beginners' }).click();
	await expect(phone.getByText('You are in no group.')).toBeVisible();
	await page.reload();
	await expect(page.getByText('siobhán')).toHaveCount(0);
	await phone.context().close();
});

test('the link again is the same member, two groups are two, and what came before stays apart', async ({
	lantern,
	stranger
}) => {
	const phone = await lantern.join(await stranger(), 'راشد');
	const again = await phone.send(lantern.link, { name: 'Another name', agree: 'yes' });
	expect(again.status()).toBe(303);
	const { coach } = lantern;
	const second = await coach.lead('/coach/new', {
		name: 'Canal walkers',
		timeZone: 'Europe/Dublin',
		units: 'mph',
		paceUnits: 'min/mile'
	});
	await coach.lead(`${second}/invite?/make`, { endsOn: plusDays(todayIn('UTC'), 5) });
	const link = /\/join\/[\w-]+/.exec(await (await coach.get(`${second}/invite`)).text())?.[0] ?? '';
	await phone.lead(link, { name: "Rashid D'Arcy", agree: 'yes' });

	const roster = async (path: string) => (await coach.get(path)).text();
	expect((await roster(lantern.path)).match(/id="m-/g)).toHaveLength(1);
	expect(await roster(lantern.path)).toContain('راشد');
	expect(await roster(lantern.path)).not.toContain('Another name');
	expect(await roster(second)).toContain("Rashid D'Arcy");
	const account = await (await phone.get('/account')).text();
	expect(account).toContain('Lantern Street beginners');
	expect(account).toContain('Canal walkers');
});

test('a link that was taken back, one that has ended and one that nobody made', async ({
	page,
	browser,
	lantern,
	house
}) => {
	const phone = await openPhone(browser, lantern);
	await phone.goto(lantern.link);
	await page.goto(`${lantern.path}/invite`);
	// What a camera reads is the address that stands below it.
	const address = await page.locator('.address').innerText();
	expect(address).toContain(lantern.link);
	const picture = page.getByRole('img', { name: /Lantern Street/ }).locator('path');
	await expect(picture).toHaveAttribute('d', qrCode(address).path);
	await page.getByRole('button', { name: 'Take this link back' }).click();
	await expect(page.getByText('Taken back; it would have ended')).toBeVisible();
	await phone.reload();
	await expect(heading(phone)).toHaveText('This link no longer works');
	expect(await phone.content()).not.toContain('Lantern');
	// A form that was open meanwhile does nothing.
	const runner = new Phone(phone.request, lantern.coach.url);
	await runner.screen();
	expect(await runner.lead(lantern.link, { name: 'Ines', agree: 'yes' })).toBe(lantern.link);
	expect(await (await lantern.coach.get(lantern.path)).text()).not.toContain('Ines');

	await lantern.coach.lead(`${lantern.path}/invite?/make`, { endsOn: todayIn('Europe/Dublin') });
	const invite = await (await lantern.coach.get(`${lantern.path}/invite`)).text();
	const link = /\/join\/[\w-]+/.exec(invite)?.[0] ?? '';
	expect((await runner.get(link)).status()).toBe(200);
	await house.reopen({ daysAhead: 1 });
	await phone.goto(link);
	await expect(heading(phone)).toHaveText('This link no longer works');
	expect((await runner.get('/join/AAAAAAAAAAAAAAAAAAAAAA')).status()).toBe(404);
	await phone.context().close();
});

test('a coach who opens the link is told whose it is, and joins nothing', async ({
	page,
	lantern
}) => {
	await page.goto(lantern.link);
	await expect(page.getByText('You are signed in as a coach.')).toBeVisible();
	await expect(page.getByRole('button', { name: 'Join the group' })).toHaveCount(0);
	expect(await lantern.coach.lead(lantern.link, { name: 'Odile', agree: 'yes' })).toBe(
		lantern.link
	);
	expect(await (await lantern.coach.get(lantern.path)).text()).toContain('Nobody is here yet');
});
