import type { Page } from '@playwright/test';
import { plusDays, todayIn, ZONE } from './days.ts';
import type { Phone } from './phone.ts';
import { expect, test } from './test.ts';
import { ready } from './walk.ts';

test.use({ timezoneId: ZONE });

/** May run, at home in the zone; then a sign is ticked. */
async function tickASign(page: Page, phone: Phone) {
	await page.goto('/screening');
	await ready(page);
	await phone.screen();
	await page.goto('/bands');
	await expect(page.getByRole('heading', { name: 'Steady run' })).toBeVisible();
	await page.goto('/screening');
	await ready(page);
	await page.getByLabel('None of these').check();
	await page.getByRole('checkbox').first().check();
	await page.getByRole('button', { name: 'Go on' }).click();
	await expect(page).toHaveURL(/\/screening\/emergency$/);
}

async function expectAskFirst(page: Page) {
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ask first, today');
	await expect(page.getByText('You told us about an urgent sign.')).toContainText(
		'Who can lift this: a doctor.'
	);
}

test('with an account a sign closes the bands at once, and answering again does not open them', async ({
	page,
	phone
}) => {
	await tickASign(page, phone);
	await expect(page.getByText('We have kept a note that you had an urgent sign')).toBeVisible();
	await expectAskFirst(page);
	await expect(page.getByText('Please call your doctor or a health line today.')).toBeVisible();
	await phone.screen();
	await expectAskFirst(page);
	// Nor does saying that something changed, and then answering.
	await phone.lead('/screening/change');
	await expectAskFirst(page);
	await phone.screen();
	await expectAskFirst(page);
	await page.goto('/account');
	await expect(page.getByText('A sign was ticked on')).toBeVisible();
});

test('only the advice of a doctor, of that day or later, lifts it', async ({ page, phone }) => {
	await tickASign(page, phone);
	const today = todayIn();
	await page.goto('/screening/result');
	await page.getByRole('link', { name: 'I have had advice' }).click();
	await page.getByLabel('When was it?').fill(today);
	await page.getByLabel('A nurse').check();
	await page.getByLabel('You told us about an urgent sign.').check();
	await page.getByLabel('Walking and easy running').check();
	await page.getByRole('button', { name: 'Keep this advice' }).click();
	await expect(page.locator('#covers-issue')).toHaveText(
		'This person cannot cover that reason. See who can, beside each one.'
	);
	await expectAskFirst(page);

	const doctor = { role: 'doctor', scope: 'all', covers: 'R-EVENT', limitBpm: '' };
	const early = await phone.send('/screening/advice?/record', {
		...doctor,
		givenOn: plusDays(today, -1)
	});
	expect(early.status()).toBe(400);
	expect(await early.text()).toContain(
		'the advice has to be from the day of your answers or later'
	);
	await expectAskFirst(page);

	await phone.lead('/screening/advice?/record', { ...doctor, givenOn: today });
	await page.goto('/screening/result');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(
		'From what you told us, you may run'
	);
	await expect(page.getByText('Already covered by advice')).toBeVisible();
	// Whoever was told to stop begins with walking, whatever was said.
	await page.goto('/bands');
	await expect(page.getByText('You are settling in.')).toBeVisible();
	await expect(page.getByText('Steady run')).toHaveCount(0);
});

test('ticked by mistake: asked twice, taken back within ten minutes, and kept that it was', async ({
	page,
	phone
}) => {
	await tickASign(page, phone);
	await page.getByRole('button', { name: 'I ticked this by mistake' }).click();
	await expect(page.getByText('Are you sure that you have none of these signs')).toBeVisible();
	await page.getByRole('link', { name: 'No, keep it' }).click();
	await expectAskFirst(page);

	await page.goto('/screening/emergency');
	await page.getByRole('button', { name: 'I ticked this by mistake' }).click();
	await page.getByRole('button', { name: 'Yes, I have none of them' }).click();
	await expect(page.getByRole('status')).toContainText('The note is removed.');
	await page.goto('/bands');
	await expect(page.getByRole('heading', { name: 'Steady run' })).toBeVisible();
	await page.goto('/account');
	await expect(page.getByText('(taken back as a mistake)')).toBeVisible();
	await page.getByText('What happened, and when').click();
	await expect(page.getByText('The note of an urgent sign was taken back')).toBeVisible();
});

test('eleven minutes later it stays, also for a page that was left open', async ({
	page,
	phone,
	house
}) => {
	await tickASign(page, phone);
	await page.getByRole('button', { name: 'I ticked this by mistake' }).click();
	await house.reopen({ minutesAhead: 11 });
	await page.getByRole('button', { name: 'Yes, I have none of them' }).click();
	await expect(page.getByRole('alert')).toContainText('only in the first ten minutes');
	await expectAskFirst(page);
	await page.goto('/screening/emergency');
	await expect(page.getByText('I ticked this by mistake')).toHaveCount(0);
	expect((await phone.send('/screening/emergency?/withdraw')).status()).toBe(409);
});
