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

	await page.getByLabel('Show').selectOption('Mei-Lin');
	page.on('dialog', (dialog) => dialog.accept());
	await page.getByRole('button', { name: 'Draw it' }).click();
	await expect(page.getByRole('heading', { name: 'What to expect for Mei-Lin' })).toBeVisible();
	await page.setViewportSize({ width: 360, height: 780 });
	await expect(chart).toBeVisible();
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
