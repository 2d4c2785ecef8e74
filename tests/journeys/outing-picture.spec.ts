import type { Page } from '@playwright/test';
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './lantern-street.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

const about = {
	name: 'Ines',
	sex: 'none',
	heightCentimetres: '',
	weightKilograms: '',
	activityLevel: '',
	supervisedMaximumBpm: '',
	speedUnits: 'km/h',
	paceUnits: 'min/km'
};

test('the picture of an outing follows a length while it is dragged, and names what does not fit', async ({
	page,
	lantern,
	stranger
}) => {
	const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	await page.goto(path);
	await expect(page.getByText('The expected pulse stands here once somebody')).toBeVisible();
	await lantern.join(await stranger(), 'Mei-Lin');
	await lantern.join(await stranger(), 'Rashid', leadsTo.byTalk);
	await lantern.join(await stranger(), 'Gwen', leadsTo.askFirst);

	await page.setViewportSize({ width: 1280, height: 800 });
	await page.goto(path);
	await page.waitForSelector('html[data-ready]');
	const chart = page.getByRole('img', { name: /Expected pulse through the outing/ });
	await expect(chart).toBeVisible();
	await expect(page.getByText('An illustration')).toBeVisible();
	const before = await chart.getAttribute('aria-label');
	await page.getByLabel('Length of phase 4').fill('80');
	await expect(chart).not.toHaveAttribute('aria-label', before ?? '');

	// Of those who go by talk, or are not for today, nothing is drawn and no name is offered.
	await expect(page.getByLabel('Show').getByRole('option')).toHaveText([
		'The whole group',
		'Mei-Lin'
	]);
	const sent = await page.content();
	expect(sent).not.toMatch(/ageYears|restingBpm|maximumBpm/);
	await page.getByText('The same as a table').click();
	await expect(page.getByRole('row', { name: /Steady run/ }).first()).toContainText('%'.slice(1));
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('the picture of one runner says peak, mean, lengths and minutes, and loses nothing that is not kept', async ({
	page,
	lantern,
	stranger
}) => {
	const runner = await lantern.join(await stranger(), 'Ines');
	// A run of 5.0 km/h takes 81 % of the reserve of somebody with 24 mL/kg/min.
	await runner.lead('/bands/about-you', { ...about, supervisedCapacity: '24' });
	const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	await page.setViewportSize({ width: 1280, height: 800 });
	await page.goto(path);
	await page.waitForSelector('html[data-ready]');
	const length = page.getByLabel('How long').nth(1);
	await length.fill('1:15');
	await page.getByLabel('How long').nth(3).fill('1:1');
	page.on('dialog', (dialog) => {
		throw new Error(`the browser asks: ${dialog.message()}`);
	});
	await page.getByLabel('Show').selectOption('Ines');
	await page.getByRole('button', { name: 'Draw it' }).click();
	const picture = page.getByRole('region', { name: 'What to expect for Ines' });
	await expect(picture).toBeVisible();
	for (const said of [
		/^Highest: about \d+ % of reserve at \d+:\d\d, give or take \d+\.$/,
		/^On the average: about \d+ % of reserve, give or take \d+\.$/,
		/^By intensity: (very )?light .*\d+ (min|s), .*moderate .*\d+ (min|s)/,
		/^Longest run that is expected to stay inside their band: \d+ (s|min)/,
		/^(Shortest walk that brings them back down|They are back down)/
	]) {
		await expect(picture.getByText(said)).toBeVisible();
	}
	await expect(picture.getByText('An illustration')).toBeVisible();
	await expect(picture).not.toContainText(/beats|mL|capacity/);
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

	// Kept or not, right or wrong: what was typed stands.
	await expect(length).toHaveValue('1:15');
	await expect(page.getByLabel('How long').nth(3)).toHaveValue('1:1');
	await expect(page.getByRole('status').filter({ hasText: 'Not kept yet.' })).toBeVisible();
	const highest = picture.getByText(/^Highest/);
	const before = await highest.textContent();
	await length.fill('4:00');
	await expect(highest).not.toHaveText(before ?? '');
	await page.getByLabel('How long').nth(3).fill('0:40');
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(page.getByRole('status').filter({ hasText: /^Kept\.$/ })).toBeVisible();
	await expect(picture).toBeVisible();
	await page.setViewportSize({ width: 360, height: 780 });
	await expect(picture.getByRole('img')).toBeVisible();
});

test('a picture that does not come leaves the outing as it was typed', async ({
	page,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Mei-Lin');
	await page.goto(await lantern.coach.lead(`${lantern.path}/outings?/make`));
	await page.waitForSelector('html[data-ready]');
	await page.getByLabel('How long').nth(1).fill('1:15');
	await page.getByLabel('Show').selectOption('Mei-Lin');
	await page.route(/\?\/draw$/, (route) => route.abort());
	await page.getByRole('button', { name: 'Draw it' }).click();
	await expect(page.getByText('It could not be drawn just now.')).toBeVisible();
	await expect(page.getByLabel('How long').nth(1)).toHaveValue('1:15');
	await page.unroute(/\?\/draw$/);
	await page.getByRole('button', { name: 'Draw it' }).click();
	await expect(page.getByRole('heading', { name: 'What to expect for Mei-Lin' })).toBeVisible();
	await expect(page.getByText('It could not be drawn just now.')).toHaveCount(0);
});

test.describe('without script', () => {
	test.use({ javaScriptEnabled: false });

	test('another runner is drawn, and what was typed comes back with it', async ({
		page,
		lantern,
		stranger
	}) => {
		await lantern.join(await stranger(), 'Mei-Lin');
		await page.goto(await lantern.coach.lead(`${lantern.path}/outings?/make`));
		await page.getByLabel('How long').nth(1).fill('1:15');
		await page.getByLabel('How long').nth(3).fill('10:00:00');
		await page.getByLabel('Show').selectOption('Mei-Lin');
		await page.getByRole('button', { name: 'Draw it' }).click();
		await expect(page.getByRole('heading', { name: 'What to expect for Mei-Lin' })).toBeVisible();
		await expect(page.getByText(/^Highest: about \d+ % of reserve/)).toBeVisible();
		await expect(page.getByText(/^By intensity: /)).toBeVisible();
		await expect(page.getByLabel('How long').nth(1)).toHaveValue('1:15');
		await expect(page.getByLabel('How long').nth(3)).toHaveValue('10:00:00');
		await page.getByLabel('How long').nth(3).fill('0:55');
		await page.getByLabel('Name', { exact: true }).press('Enter');
		await expect(page.getByRole('status').filter({ hasText: 'Kept.' })).toBeVisible();
		await expect(page.getByRole('heading', { name: 'What to expect for Mei-Lin' })).toBeVisible();
	});
});

for (const [name, width] of [
	['a phone', 360],
	['a desk', 1280]
] as const) {
	test(`on ${name} the hand that drags a run sees whom it gets too long for, and what fits all`, async ({
		page,
		lantern,
		stranger
	}) => {
		const runner = await lantern.join(await stranger(), 'Ines');
		// A run of 5.0 km/h takes 81 % of the reserve of somebody with 24 mL/kg/min.
		await runner.lead('/bands/about-you', { ...about, supervisedCapacity: '24' });
		await lantern.join(await stranger(), 'Mei-Lin');
		const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
		await page.setViewportSize({ width, height: 780 });
		await page.goto(path);
		await page.waitForSelector('html[data-ready]');
		await expect(page.locator('canvas')).toBeVisible();

		const change = page.getByText(
			/^Phase 4: for 1 of 2 this run is longer than their band allows; \d+ s fits all/
		);
		const drop = await dragHalfWay(page, 'Length of phase 4');
		await expect(change).toBeInViewport();
		await expect(page.getByText('An illustration')).toBeAttached();
		await drop();
		await expect(change).toBeVisible();
		expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	});
}

test('a runner whom a run asks for too much is told of, not left out', async ({
	page,
	lantern,
	stranger
}) => {
	const runner = await lantern.join(await stranger(), 'Ines');
	// The slowest run, 5.0 km/h, costs 20.2 mL/kg/min (ACSM): more than 18.
	await runner.lead('/bands/about-you', { ...about, supervisedCapacity: '18' });
	const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	await page.goto(path);
	await expect(page.getByText(/^For 1 of 1 a part asks for more than can be/)).toBeVisible();
	await lantern.join(await stranger(), 'Mei-Lin');
	await page.goto(path);
	await expect(page.getByText(/^For 1 of 2 a part asks for more than can be/)).toBeVisible();
	await expect(page.getByText('fits everybody')).toHaveCount(0);
});

test('a coach reads what becomes of a run for whoever may only walk, the same with nobody and with somebody', async ({
	page,
	lantern,
	stranger
}) => {
	const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	const told = page.getByText('Whoever may only walk does each run as a brisk walk, just as long.');
	await page.goto(path);
	await expect(told).toBeVisible();
	await lantern.join(await stranger(), 'Mei-Lin');
	await page.goto(path);
	await expect(told).toBeVisible();
	const before = await page.locator('section[aria-labelledby=picture] > p').allTextContents();
	await lantern.join(await stranger(), 'Tobias', leadsTo.mayWalk);
	await page.goto(path);
	await expect(told).toBeVisible();
	const after = await page.locator('section[aria-labelledby=picture] > p').allTextContents();
	expect(after).toEqual(before);
});

/** Takes hold of a slider and moves it to the middle; answers how to let go. */
async function dragHalfWay(page: Page, label: string): Promise<() => Promise<void>> {
	const slider = page.getByLabel(label, { exact: true });
	await slider.scrollIntoViewIfNeeded();
	// The picture stays at the top of a phone: what lies under it is brought into the open.
	await slider.evaluate((it) => it.scrollIntoView({ block: 'center' }));
	const box = await slider.boundingBox();
	if (!box) throw new Error('no slider');
	const thumb = await slider.evaluate((it: HTMLInputElement) => it.valueAsNumber / Number(it.max));
	const y = box.y + box.height / 2;
	await page.mouse.move(box.x + 8 + thumb * (box.width - 16), y);
	await page.mouse.down();
	await page.mouse.move(box.x + box.width / 2, y, { steps: 8 });
	return () => page.mouse.up();
}
