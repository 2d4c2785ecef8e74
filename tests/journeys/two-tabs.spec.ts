import { expect, test } from './test.ts';
import { answer } from './walk.ts';

test('an answer that is changed in another tab counts, also on a check page drawn before', async ({
	page,
	phone
}) => {
	await phone.answerAll();
	await page.goto('/screening/check');
	await page.getByLabel('My answers are true').check();
	await phone.lead('/screening/questions/10?from=check', {
		question: 'signs.other',
		answer: 'ankles',
		from: 'check'
	});
	await page.getByRole('button', { name: 'See my result' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ask first');
});

test('a question that another tab took away is shown as the one that stands there now', async ({
	page,
	context,
	phone
}) => {
	await phone.answerAll({ 'joint.sore': 'yes', 'joint.now': ['none'] });
	await page.goto('/screening/questions/15?from=check');
	await expect(page.locator('input[name=question]')).toHaveValue('joint.now');
	const other = await context.newPage();
	await other.goto('/screening/questions/14?from=check');
	await answer(other, { 'joint.sore': 'no' });
	await page.getByLabel('None of these').check();
	await page.getByRole('button', { name: 'Keep this answer' }).click();
	await expect(page.locator('input[name=question]')).toHaveValue('recent.event');
});
