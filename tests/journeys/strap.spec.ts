import { todayIn } from './days.ts';
import { EmulatedStrap } from './emulated-strap.ts';
import { expect, test as base } from './test.ts';
import { leadsTo, ready } from './walk.ts';

type Options = Parameters<typeof EmulatedStrap.attach>[2];

/** One radio a browser: each test has a strap of its own, and lets it go. */
const test = base.extend<{ strapOptions: Options; strap: EmulatedStrap }>({
	strapOptions: [{}, { option: true }],
	strap: async ({ page, context, phone, strapOptions }, use) => {
		await phone.screen();
		await phone.measureResting(68, todayIn('UTC'));
		const strap = await EmulatedStrap.attach(page, context, strapOptions);
		await use(strap);
		await strap.detach();
	}
});

async function open(page: import('@playwright/test').Page) {
	await page.goto('/prompter/strap');
	await ready(page);
	const meter = page.getByRole('region', { name: 'Your pulse now' });
	return {
		meter,
		now: meter.locator('.now strong'),
		status: meter.getByRole('status').filter({ visible: true }),
		press: (name: string) => meter.getByRole('button', { name, exact: true }).click()
	};
}

/** A strap that was picked from the list, and has not sent a beat yet. */
async function choose(page: import('@playwright/test').Page) {
	const opened = await open(page);
	await opened.press('Choose a strap');
	await expect(opened.meter).toContainText('Waiting for its first beats');
	return opened;
}

test.describe('a strap', () => {
	test.use({ strapOptions: { batteryPercent: 80 } });

	test('is chosen and read; the breath mark stands at the pulse; nothing is stored', async ({
		page,
		strap
	}) => {
		const stored: string[] = [];
		page.on('request', (request) => request.method() !== 'GET' && stored.push(request.url()));
		const { meter, now } = await choose(page);
		await expect(meter).toContainText('Its battery is at 80 %');
		await strap.beat(125);
		await expect(now).toHaveText('125');
		await expect(meter).toContainText('The strap is connected.');
		await expect(meter.getByRole('img')).toHaveAccessibleName(/Your pulse is 125/);
		const low = await meter.locator('.mark').boundingBox();
		// The median of the last seconds: more of the new than of the old.
		await strap.beat(140, 5);
		await expect(now).toHaveText('140');
		await expect
			.poll(async () => (await meter.locator('.mark').boundingBox())?.x ?? 0)
			.toBeGreaterThan((low?.x ?? 0) + 20);
		expect(stored).toEqual([]);
	});

	test('that drops out is tried again by itself, and no old number stays', async ({
		page,
		strap
	}) => {
		const { meter, now, press } = await choose(page);
		await strap.beat(125);
		await expect(now).toHaveText('125');
		await strap.drop({ comesBack: false });
		await expect(meter).toContainText('The strap is gone. Trying again by itself.');
		await expect(now).toHaveCount(0);
		await page.waitForTimeout(1500);
		await expect(meter).toContainText('The strap is gone.');
		strap.comeBack();
		await expect(meter).toContainText('The strap is connected', { timeout: 20_000 });
		await strap.beat(118);
		await expect(now).toHaveText('118');
		await press('Let the strap go');
		await expect(now).toHaveCount(0);
		await expect(meter.getByRole('button', { name: 'Choose a strap' })).toBeVisible();
	});
});

test('contact that is lost takes the number away, at once and in words', async ({
	page,
	strap
}) => {
	const { meter, now } = await choose(page);
	await strap.beat(125);
	await expect(now).toHaveText('125');
	await strap.send(0x04, 171);
	await expect(now).toHaveCount(0);
	await expect(meter).toContainText('has lost your skin');
	await strap.beat(126);
	await expect(now).toHaveText('126');
	await expect(now, 'a strap that falls silent').toHaveCount(0, { timeout: 15_000 });
	await expect(meter).toContainText('has gone quiet');
});

test('bytes that no strap should send do no harm', async ({ page, strap }) => {
	const errors: string[] = [];
	page.on('pageerror', ({ message }) => errors.push(message));
	const { now } = await choose(page);
	for (const bytes of [[], [0x01], [0x01, 0x40], [0xff], [0x18, 72, 1], [0x06, 0], [0x06, 255]]) {
		await strap.send(...bytes);
	}
	await strap.beat(125, 5);
	await expect(now).toHaveText('125');
	expect(errors).toEqual([]);
});

test('talk comes first when talk and pulse disagree, and the page says so', async ({
	page,
	strap
}) => {
	const { meter, now } = await choose(page);
	await strap.beat(190);
	await expect(now).toHaveText('190');
	await expect(meter).not.toContainText('Talk decides');
	await page.getByRole('button', { name: 'Comfortable' }).click();
	await expect(meter).toContainText('Talk decides: stay as you are, and go no faster.');
	await page.getByRole('button', { name: 'Broke off' }).click();
	await expect(meter).not.toContainText('Talk decides');
	await strap.beat(72, 8);
	await expect(now).toHaveText('72');
	await expect(meter).toContainText('Talk decides: ease off until you can say the line.');
});

test.describe('a strap with a low battery', () => {
	test.use({ strapOptions: { batteryPercent: 12 } });

	test('says so', async ({ page, strap }) => {
		void strap;
		const { meter, press } = await open(page);
		await press('Choose a strap');
		await expect(meter).toContainText('Its battery is low, at 12 %.');
	});
});

test.describe('a list that is closed again', () => {
	test.use({ strapOptions: { cancels: true } });

	test('is no fault of anybody: it can be opened once more', async ({ page, strap }) => {
		void strap;
		const { meter, press } = await open(page);
		await press('Choose a strap');
		await expect(meter).toContainText('No strap was chosen.');
		await expect(meter.getByRole('button', { name: 'Choose a strap' })).toBeEnabled();
	});
});

test.describe('a device without a pulse', () => {
	test.use({ strapOptions: { isMute: true } });

	test('is told apart from one that cannot be reached', async ({ page, strap }) => {
		const { meter, press } = await open(page);
		await press('Choose a strap');
		await expect(meter).toContainText('That device sends no pulse in the open way.');
		void strap;
	});
});

test('a device without a radio is told so, and looked at again', async ({ page, strap }) => {
	await strap.radio('absent');
	const { meter, press } = await open(page);
	await expect(meter).toContainText('Bluetooth is off, or this device has none.');
	await strap.radio('powered-on');
	await press('Look again');
	await expect(meter.getByRole('button', { name: 'Choose a strap' })).toBeVisible();
});

base.describe('without Bluetooth', () => {
	base.beforeEach(async ({ page, phone }) => {
		await phone.screen();
		await phone.measureResting(68, todayIn('UTC'));
		await page.addInitScript(() => {
			Reflect.deleteProperty(Navigator.prototype, 'bluetooth');
		});
	});

	base('a plain sentence stands where the strap would be', async ({ page }) => {
		const { meter } = await open(page);
		await expect(meter).toContainText('This browser cannot speak to a strap.');
		await expect(meter.getByRole('button', { name: 'Choose a strap' })).toHaveCount(0);
	});

	base('a pulse is tapped along, by finger and by key, with how sure it is', async ({ page }) => {
		const { meter, now, press } = await open(page);
		await press('Tap along');
		const button = meter.getByRole('button', { name: 'Tap with each beat' });
		await button.click();
		await expect(meter).toContainText('9 more taps.');
		await button.focus();
		for (let n = 0; n < 11; n++) {
			await page.waitForTimeout(400);
			await page.keyboard.press('Space');
		}
		await expect(meter).toContainText(/\d+ beats a minute, give or take \d+\./);
		const bpm = Number(await now.textContent());
		expect(bpm).toBeGreaterThan(90);
		expect(bpm).toBeLessThanOrEqual(150);
	});

	base(
		'a count of ten seconds says what it comes to, and how far it may be off',
		async ({ page }) => {
			await page.clock.install();
			const { meter, now, press } = await open(page);
			await press('Count 10 s');
			await press('Start counting');
			await page.clock.runFor(10_200);
			await expect(meter).toContainText('Time is up.');
			await meter.getByLabel('Beats in 10 seconds').fill('22 or so');
			await press('Work it out');
			await expect(meter).toContainText('Type a whole number of beats');
			await meter.getByLabel('Beats in 10 seconds').fill('3');
			await press('Work it out');
			await expect(meter).toContainText('Please count again.');
			await expect(now).toHaveCount(0);
			await meter.getByLabel('Beats in 10 seconds').fill('22');
			await press('Work it out');
			await expect(now).toHaveText('132');
			await expect(meter).toContainText('give or take 3, and never off by more than 6');
			await page.clock.runFor(31_000);
			await expect(now, 'a pulse by hand is one of its moment').toHaveCount(0);
		}
	);
});

base('with pulse off there is one sentence, and not one beat', async ({ page, phone }) => {
	await phone.screen(leadsTo.byTalk);
	await page.goto('/prompter/strap');
	await ready(page);
	const main = page.locator('.page');
	await expect(main).toContainText('Your result turns pulse numbers off');
	await expect(main.getByRole('button')).toHaveCount(0);
	await expect(main).not.toContainText(/bpm|beats|\d/);
	const html = await (await phone.get('/prompter/strap')).text();
	expect(html).not.toMatch(/bpm/i);
	await page.goto('/bands');
	await expect(page.getByRole('link', { name: 'Try a strap, or tap my pulse' })).toHaveCount(0);
});

base('before a resting pulse there is a pulse and no band', async ({ page, phone }) => {
	await phone.screen();
	await page.goto('/bands');
	await page.getByRole('link', { name: 'Try a strap, or tap my pulse' }).click();
	await expect(page.getByRole('heading', { name: 'Try your strap' })).toBeVisible();
	await expect(page.locator('.page')).toContainText('There is no band yet.');
	await expect(page.getByRole('button', { name: 'Chest strap' })).toBeVisible();
	await expect(page.getByRole('button', { name: 'Comfortable' })).toHaveCount(0);
});
