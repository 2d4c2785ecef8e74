import type { BrowserContext, Page } from '@playwright/test';
import { answerDay, button, heading, open, ready, take } from './an-outing.ts';
import { todayIn } from './days.ts';
import { EmulatedStrap } from './emulated-strap.ts';
import { entriesIn } from './past-entries.ts';
import type { Phone } from './phone.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// Of the plain outing: 420 s to warm up, then a run of 30 s.
test.use({ viewport: { width: 360, height: 780 } });

/** Begins the plain outing with the practice on, and stands so far into it. */
async function practise(page: Page, atMs: number) {
	await open(page);
	await take(page);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await page.getByLabel('Practise: guess, then look').check();
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
	await page.clock.runFor(atMs);
}

async function withStrap(page: Page, phone: Phone, context: BrowserContext, bpm: number) {
	await phone.screen();
	await phone.measureResting(62, todayIn('UTC'));
	const strap = await EmulatedStrap.attach(page, context);
	await practise(page, 421_000);
	await button(page, 'Pulse').click();
	await button(page, 'Choose a strap').click();
	await expect(page.getByText('Waiting for its first beats')).toBeVisible();
	await strap.beat(bpm);
	await page.clock.runFor(2000);
	return strap;
}

test('the pulse stays hidden until effort and pulse are guessed and talk is told; then all is drawn', async ({
	page,
	phone,
	context
}) => {
	const strap = await withStrap(page, phone, context, 137);
	await expect(page.getByText('hidden until you guess')).toBeVisible();
	await expect(page.locator('.screen')).not.toContainText('137');
	for (let second = 0; second < 18; second++) {
		await strap.beat(137, 1);
		await page.clock.runFor(1000);
	}
	await expect(page.getByText('Guess first. How hard is it')).toBeVisible();
	await expect(button(page, 'comfortable')).toHaveCount(0);
	await page.getByRole('button', { name: '5', exact: true }).click();
	await page.getByRole('button', { name: '130', exact: true }).click();
	await expect(page.getByText('You guessed effort 5 and about 130')).toBeVisible();
	await expect(page.locator('.screen')).not.toContainText('137');
	await button(page, 'comfortable').click();
	await expect(page.getByText('Your number and your talk fit.')).toBeVisible();
	await expect(page.getByText('You guessed 130, and it was 137.')).toContainText(
		'7 beats too low.'
	);
	await expect(page.locator('.meter strong').first()).toHaveText('137');
	await expect
		.poll(async () => (await entriesIn(phone)).find(({ kind }) => kind === 'talk-answer'))
		.toMatchObject({ effort: 5, guessedBpm: 130, pulse: { bpm: 137 } });
	await strap.detach();

	await page.goto('/learn/guess');
	await ready(page);
	await expect(page.getByRole('status').first()).toContainText('You guessed 130, and it was 137.');
	const row = page.getByRole('row', { name: /Steady run/ });
	await expect(row).toContainText('−7');
	await row.getByRole('link', { name: /In the outing of/ }).click();
	await expect(page).toHaveURL(/\/past\/.+/);
});

test('whoever wants to see the pulse sees it without a guess', async ({ page, phone, context }) => {
	const strap = await withStrap(page, phone, context, 137);
	await button(page, 'Show it without a guess').click();
	await expect(page.locator('.meter strong').first()).toHaveText('137');
	await strap.detach();
});

test('over a limit from a care team it is said, hidden or not', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await phone.measureResting(62, todayIn('UTC'));
	await context.route('**/prompter/kept', async (route) => {
		const kept = (await (await route.fetch({ maxRetries: 3 })).json()) as object;
		await route.fulfill({ json: { ...kept, careTeamLimitBpm: 120 } });
	});
	const strap = await EmulatedStrap.attach(page, context);
	await practise(page, 421_000);
	await button(page, 'Pulse').click();
	await button(page, 'Choose a strap').click();
	await expect(page.getByText('Waiting for its first beats')).toBeVisible();
	await strap.beat(137);
	await page.clock.runFor(2000);
	await expect(page.getByText('over your care team’s limit of 120')).toBeVisible();
	await expect(page.locator('.screen')).not.toContainText('137');
	await strap.detach();
});

test('with pulse off the effort alone is guessed, and no beat is anywhere', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.byTalk);
	await practise(page, 441_000);
	await page.getByRole('button', { name: '8', exact: true }).click();
	await expect(page.getByText('And your pulse?')).toHaveCount(0);
	await button(page, 'comfortable').click();
	await expect(page.getByText('2 steps higher than talk says')).toBeVisible();
	await expect(page.locator('.screen')).not.toContainText(/bpm|beats a minute/);
	await expect
		.poll(async () => (await entriesIn(phone)).find(({ kind }) => kind === 'talk-answer'))
		.toMatchObject({ effort: 8, guessedBpm: null, pulse: null });
	await page.goto('/learn/guess');
	await ready(page);
	await expect(page.getByRole('row', { name: /Steady run/ })).toContainText('+2');
	await expect(page.getByText(/bpm|beats/)).toHaveCount(0);
});

test('it is kept over a reload, and off as long as nobody asks for it', async ({ page, phone }) => {
	await phone.screen();
	await practise(page, 441_000);
	await page.reload();
	await expect(page.getByText('Guess first. How hard is it')).toBeVisible();
	await page.evaluate(() => localStorage.removeItem('breathmark-guess'));
	await page.reload();
	await expect(page.getByText('Say the line aloud. How was that?')).toBeVisible();
});
