import { plusDays, todayIn, ZONE } from './days.ts';
import { expectAskFirst, tickASign } from './sign.ts';
import { expect, test } from './test.ts';

test.use({ timezoneId: ZONE });

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
		'From what you told us, you begin by walking'
	);
	await expect(page.getByText('Already covered by advice')).toBeVisible();
	// Whoever was told to stop begins with walking, whatever was said.
	await page.goto('/bands');
	await expect(page.getByText('You are settling in.')).toBeVisible();
	await expect(page.getByText('Steady run')).toHaveCount(0);
});
