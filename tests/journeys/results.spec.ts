import type { Page } from '@playwright/test';
import { todayIn, written, ZONE } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, measureResting, screen } from './walk.ts';

test.use({ timezoneId: ZONE });

const heading = (page: Page) => page.getByRole('heading', { level: 1 });

test('over 45 and new to hard effort: may walk, and no page or data knows of a run', async ({
	page,
	phone
}) => {
	await screen(page, leadsTo.mayWalk);
	await expect(heading(page)).toHaveText('From what you told us, you may walk');
	await expect(page.getByText('You are over 45 and new to hard exercise.')).toBeVisible();
	await expect(page.getByText('Who can lift this')).toHaveText(
		'Who can lift this: a doctor, a nurse, a physiotherapist, a midwife or a qualified exercise professional.'
	);
	await measureResting(page, 68);
	await page.goto('/bands');
	await expect(page.getByText('Your result is walking only')).toBeVisible();
	await expect(page.getByRole('heading', { name: 'Brisk walk' })).toBeVisible();
	// Age 52: 208 - 0.7 x 52 = 171.6 (Tanaka 2001); reserve over 68 is 103.6 (Karvonen 1957).
	// Brisk walk 40 to 59 % of it (moderate, Garber 2011): 109.44 to 129.12.
	await expect(page.getByRole('region', { name: 'Brisk walk' })).toContainText('109–129');
	await expect(page.getByText('Steady run')).toHaveCount(0);
	expect(await (await phone.get('/bands/__data.json')).text()).not.toMatch(/steady-run|recovery/);
});

test('a plan of walking only leads to walking bands, with no reason to lift', async ({
	page,
	phone
}) => {
	await phone.screen({ 'plan.effort': 'walk' });
	await page.goto('/screening/result');
	await expect(heading(page)).toHaveText('From what you told us, you may walk');
	await expect(page.getByText('You plan to walk only.')).toBeVisible();
	await expect(page.getByText('Who can lift this')).toHaveCount(0);
	await page.getByRole('link', { name: 'See my bands' }).click();
	await expect(page.getByRole('heading', { name: 'Brisk walk' })).toBeVisible();
	await expect(page.getByText('Steady run')).toHaveCount(0);
});

test('a sign of illness: ask first, with the reason, who can lift it, and a page for the doctor', async ({
	page
}) => {
	await screen(page, { ...leadsTo.askFirst, ...leadsTo.askAboutInjury });
	await expect(heading(page)).toHaveText('Ask first');
	const reason = (text: string) => page.getByRole('listitem').filter({ hasText: text });
	await expect(reason('Your ankles swell up.')).toContainText('Who can lift this: a doctor.');
	await expect(reason('Your sore or injured part')).toContainText(
		'Who can lift this: a doctor or a physiotherapist.'
	);
	await expect(page.getByText('Stop exercise until you have been checked.')).toBeVisible();
	await expect(page.getByText('call your doctor or a health line today')).toHaveCount(0);
	await expect(page.getByText('Nobody has to use this form.')).toBeVisible();

	await page.getByRole('link', { name: 'Bands' }).click();
	await expect(page).toHaveURL(/\/screening\/result$/);
	await page.getByRole('link', { name: 'Page for my doctor' }).click();
	await expect(heading(page)).toHaveText('For your doctor');
	await expect(page.getByText('Your ankles swell up.')).toBeVisible();
	await expect(page.getByText('Age 34. Answered on')).toContainText(written(todayIn()));
});

test('chest pain with effort: call today, with every emergency number and its countries', async ({
	page
}) => {
	await screen(page, leadsTo.askToday);
	await expect(heading(page)).toHaveText('Ask first, today');
	await expect(page.getByText('Please call your doctor or a health line today.')).toBeVisible();
	for (const number of ['112', '999', '911', '000', '111']) {
		await expect(page.getByRole('link', { name: number })).toHaveAttribute('href', `tel:${number}`);
	}
	await expect(page.getByText('Australia')).toBeVisible();
	await page.goto('/screening/doctor');
	await expect(page.getByText('These answers may need a same-day call.')).toBeVisible();
});
