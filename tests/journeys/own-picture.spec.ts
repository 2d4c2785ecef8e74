import AxeBuilder from '@axe-core/playwright';
import { todayIn } from './days.ts';
import { become, expect, test } from './lantern-street.ts';
import { Phone } from './phone.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

/** What a phone knows of somebody who answered, with a resting pulse of 68 where one counts. */
async function answered(phone: Phone, answers = {}) {
	await phone.screen(answers);
	const beats = { beats: 68, seconds: 60, on: todayIn('UTC') };
	await phone.send('/bands/resting-pulse?/add', beats);
	return phone.lead('/outings?/make');
}

test('whoever goes by pulse sees the own pulse through an outing, in beats, while a length changes', async ({
	page,
	house,
	stranger
}) => {
	const phone = new Phone(await stranger(), house.url);
	const path = await answered(phone);
	await become(page, phone);
	await page.goto(path);
	await page.waitForSelector('html[data-ready]');
	await expect(page.getByRole('heading', { name: 'What your pulse may do' })).toBeVisible();
	await expect(page.getByText('An illustration')).toBeVisible();
	const chart = page.getByRole('img', { name: /highest about \d+ beats a minute at \d+:\d\d/ });
	await expect(chart).toBeVisible();
	// A resting pulse of 68 and the maximum of somebody of 34: nothing lies outside.
	const highest = page.getByText(/^Highest: about \d+ beats a minute at/);
	const bpm = Number(/about (\d+)/.exec((await highest.textContent()) ?? '')?.[1]);
	expect(bpm).toBeGreaterThan(100);
	expect(bpm).toBeLessThan(184);
	await expect(page.getByText(/^On the average: about \d+ beats/)).toBeVisible();
	await expect(page.getByText(/^By intensity: .*moderate \d+ (min|s)/)).toBeVisible();
	await expect(page.getByText('Your runs are expected to stay inside your band')).toBeVisible();

	const before = await highest.textContent();
	await page.getByLabel('How long').nth(1).fill('9:00');
	await expect(highest).not.toHaveText(before ?? '');
	await page.getByText('The same as a table').click();
	await expect(page.getByRole('row', { name: /Steady run 9:00 \d+ \(\d+–\d+\)/ })).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('with a capacity that is known a run may be too long, or too much for any estimate', async ({
	page,
	house,
	stranger
}) => {
	const phone = new Phone(await stranger(), house.url);
	const path = await answered(phone);
	await aboutMe(phone, 24);
	await become(page, phone);
	await page.goto(path);
	await page.waitForSelector('html[data-ready]');
	// A run of 5.0 km/h takes 81 % of the reserve of somebody with 24 mL/kg/min.
	await expect(page.getByText(/^Longest run .* inside your band: \d+ (s|min)/)).toBeVisible();
	await expect(page.getByText('Shortest walk that brings you back down after a run')).toBeVisible();
	await page.getByLabel('How long').nth(1).fill('20:00');
	await page.getByLabel('How long').nth(2).fill('0:05');
	await expect(page.getByText('Longest run inside your band: none.')).toBeVisible();

	await aboutMe(phone, 18);
	page.on('dialog', (dialog) => void dialog.accept());
	await page.goto(path);
	await expect(page.getByText('No estimate: a run asks for more here')).toBeVisible();
	await expect(page.locator('canvas')).toHaveCount(0);
});

async function aboutMe(phone: Phone, supervisedCapacity: number) {
	await phone.lead('/bands/about-you', {
		name: 'Mei-Lin',
		sex: 'none',
		heightCentimetres: '',
		weightKilograms: '',
		activityLevel: '',
		supervisedMaximumBpm: '',
		supervisedCapacity,
		speedUnits: 'km/h',
		paceUnits: 'min/km'
	});
}

test('with pulse off there is no beat and no curve; without a resting pulse it says how to come by one', async ({
	page,
	house,
	stranger
}) => {
	const byTalk = new Phone(await stranger(), house.url);
	const path = await answered(byTalk, leadsTo.byTalk);
	await become(page, byTalk);
	await page.goto(path);
	await page.waitForSelector('html[data-ready]');
	await expect(page.getByRole('img', { name: 'A line for walking' })).toBeVisible();
	await expect(page.locator('canvas')).toHaveCount(0);
	const sent = (await page.content()) + (await page.locator('main').innerText());
	expect(sent).not.toMatch(/beats a minute|bpm|restingBpm|maximumBpm/i);

	const unmeasured = new Phone(await stranger(), house.url);
	await unmeasured.screen();
	const own = await unmeasured.lead('/outings?/make');
	await become(page, unmeasured);
	await page.goto(own);
	await expect(page.locator('canvas')).toHaveCount(0);
	await page.getByRole('link', { name: 'Measure my resting pulse' }).click();
	await expect(page).toHaveURL(/\/bands\/resting-pulse$/);
});

test('whoever may walk sees the walk, and whoever is referred sees nothing', async ({
	page,
	house,
	stranger
}) => {
	const phone = new Phone(await stranger(), house.url);
	const path = await answered(phone);
	await phone.screen(leadsTo.mayWalk);
	await become(page, phone);
	await page.goto(path);
	await page.waitForSelector('html[data-ready]');
	await expect(
		page.getByText('For you, each run is a brisk walk of the same length.')
	).toBeVisible();
	await expect(page.locator('section li').filter({ hasText: 'Longest run' })).toHaveCount(0);
	await page.getByText('The same as a table').click();
	await expect(page.getByRole('row', { name: /^Brisk walk/ }).first()).toBeVisible();
	await expect(page.getByRole('row', { name: /^Steady run/ })).toHaveCount(0);

	await phone.screen(leadsTo.askFirst);
	await page.goto(path);
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.locator('canvas')).toHaveCount(0);
});

test.describe('without script', () => {
	test.use({ javaScriptEnabled: false });

	test('the sentences and the table say it', async ({ page, house, stranger }) => {
		const phone = new Phone(await stranger(), house.url);
		const path = await answered(phone);
		await become(page, phone);
		await page.goto(path);
		await expect(page.getByText(/^Highest: about \d+ beats a minute/)).toBeVisible();
		await page.getByText('The same as a table').click();
		await expect(page.getByRole('row', { name: /^Steady run/ }).first()).toBeVisible();
	});
});
