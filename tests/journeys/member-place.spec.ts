import AxeBuilder from '@axe-core/playwright';
import { plusDays, todayIn } from './days.ts';
import { become, expect, test } from './lantern-street.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source. Names are invented.

/** Two outings a week from today on, runs of up to 40 s first. */
const wishes = () => {
	const today = todayIn('Europe/Dublin');
	const weekdays = [today, plusDays(today, 3)].map(
		(day) => `${new Date(`${day}T00:00Z`).getUTCDay() || 7}`
	);
	return {
		weeks: '16',
		outingsAWeek: '2',
		firstRun: '0:40',
		goalKind: 'minutes',
		goalMinutes: '20',
		startsOn: today,
		weekdays
	};
};

test('a coach puts a runner at another step, and the runner does the outing of it', async ({
	page,
	lantern,
	stranger
}) => {
	const ines = await lantern.join(await stranger(), 'Ines');
	const member = `${lantern.path}/members/${lantern.runners.get('Ines')?.memberId}`;
	await page.goto(member);
	await expect(page.getByText('The group has no outing of a programme to come.')).toBeVisible();
	await lantern.coach.lead(`${lantern.path}/programme/new?/keep`, wishes());

	await page.goto(member);
	await expect(page.getByText(', with the group.')).toBeVisible();
	await expect(page.getByRole('button', { name: 'One outing earlier' })).toHaveCount(0);
	await expect(page.getByRole('button', { name: 'Back with the group' })).toHaveCount(0);
	const names = await page.getByLabel('Or put them at').locator('option').allTextContents();
	expect(names).toHaveLength(32);
	await page.getByLabel('Or put them at').selectOption({ label: names[4] ?? '' });
	await page.getByRole('button', { name: 'Put them there' }).click();
	await expect(page.getByText(', 4 outings ahead of the group.')).toBeVisible();
	await page.getByRole('button', { name: 'One outing earlier' }).click();
	await expect(page.getByText(', 3 outings ahead of the group.')).toBeVisible();
	await expect(page.getByRole('status')).toHaveText('Kept.');
	await expect(page.getByText('Odile Marr: 4 outings ahead of the group')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
		page.viewportSize()?.width ?? 0
	);

	// The roster says it, and the runner's own page.
	await page.goto(lantern.path);
	await expect(page.getByRole('row', { name: 'Ines' })).toContainText(`${names[3]}, on `);
	await expect(page.getByRole('row', { name: 'Ines' })).toContainText('3 outings ahead');
	await become(page, ines);
	await page.goto('/outings');
	await expect(page.getByText(`${names[3]}, Lantern Street beginners`)).toBeVisible();
	await expect(page.getByText(`${names[0]}, Lantern Street beginners`)).toHaveCount(0);
});

test('whoever changes it second is told, and settling in has no step with longer runs', async ({
	page,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Ines');
	await lantern.join(await stranger(), 'Tobias', leadsTo.settlingIn);
	await lantern.coach.lead(`${lantern.path}/programme/new?/keep`, wishes());
	const pathOf = (name: string) => `${lantern.path}/members/${lantern.runners.get(name)?.memberId}`;
	await page.goto(pathOf('Ines'));
	const other = await page.context().newPage();
	await other.goto(pathOf('Ines'));
	await other.getByRole('button', { name: 'One outing later' }).click();
	await expect(other.getByText(', one outing ahead of the group.')).toBeVisible();
	await other.close();
	await page.getByRole('button', { name: 'One outing later' }).click();
	await expect(page.getByRole('alert')).toContainText('Somebody else changed it meanwhile');
	await expect(page.getByText(', one outing ahead of the group.')).toBeVisible();
	await page.getByRole('button', { name: 'Back with the group' }).click();
	await expect(page.getByText(', with the group.')).toBeVisible();

	await page.goto(pathOf('Tobias'));
	await expect(page.getByText('They walk for now')).toBeVisible();
	const last = (await page.getByLabel('Or put them at').locator('option').allTextContents()).at(-1);
	await page.getByLabel('Or put them at').selectOption({ label: last ?? '' });
	await page.getByRole('button', { name: 'Put them there' }).click();
	await expect(page.getByRole('alert')).toContainText('Not yet: they are settling in');
	await expect(page.getByText(', with the group.')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
