import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './lantern-street.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

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
