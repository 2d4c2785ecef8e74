import { expectAskFirst, tickASign } from './sign.ts';
import { expect, test } from './test.ts';

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
