import type { BrowserContext, Page } from '@playwright/test';
import { button, heading, ready, start } from './an-outing.ts';
import { todayIn } from './days.ts';
import { EmulatedStrap } from './emulated-strap.ts';
import { entriesIn } from './past-entries.ts';
import type { Phone } from './phone.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// Of the plain outing: 420 s to warm up, then a run of 30 s.
test.use({ viewport: { width: 360, height: 780 } });

/** Begins the plain outing, and chooses a strap so many milliseconds into it. */
async function strapInOuting(page: Page, phone: Phone, context: BrowserContext, atMs: number) {
	await phone.screen();
	await phone.measureResting(62, todayIn('UTC'));
	const strap = await EmulatedStrap.attach(page, context);
	await start(page);
	await page.clock.runFor(atMs);
	await button(page, 'Pulse').click();
	await button(page, 'Choose a strap').click();
	await expect(page.getByText('Waiting for its first beats')).toBeVisible();
	return strap;
}

test('a strap in an outing: talk answers carry its pulse, a part that ends keeps mean and highest', async ({
	page,
	phone,
	context
}) => {
	const strap = await strapInOuting(page, phone, context, 421_000);
	await strap.beat(118);
	await page.clock.runFor(2000);
	await expect(page.locator('.now strong').first()).toHaveText('118');
	await expect(page.getByRole('button', { name: 'Chest strap' })).toHaveCount(0);
	for (let second = 0; second < 18; second++) {
		await strap.beat(118, 1);
		await page.clock.runFor(1000);
	}
	await button(page, 'broke off').click();
	await expect(page.getByText('Talk decides: ease off')).toBeVisible();
	for (let second = 0; second < 12; second++) {
		await strap.beat(118, 1);
		await page.clock.runFor(1000);
	}
	await expect(heading(page)).toHaveText('Recovery walk');
	await expect
		.poll(async () => (await entriesIn(phone)).filter(({ kind }) => kind === 'pulse-summary'))
		.toMatchObject([{ phase: 1, source: 'chest-strap', meanBpm: 118, highestBpm: 118 }]);
	expect((await entriesIn(phone)).find(({ kind }) => kind === 'talk-answer')).toMatchObject({
		talk: 'broke-off',
		pulse: { bpm: 118, source: 'chest-strap' }
	});
	await strap.detach();
});

test('what a strap gave before the page was loaded again is in the sum of that part', async ({
	page,
	phone,
	context
}) => {
	const strap = await strapInOuting(page, phone, context, 10_000);
	for (let second = 0; second < 14; second++) {
		await strap.beat(98, 1);
		await page.clock.runFor(1000);
	}
	await expect(page.locator('.now strong').first()).toHaveText('98');
	await expect.poll(() => soFar(page)).toMatchObject({ phase: 0 });
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Warm-up walk');
	await button(page, 'Skip this part').click();
	await expect(heading(page)).toHaveText('Steady run');
	await expect
		.poll(async () => (await entriesIn(phone)).filter(({ kind }) => kind === 'pulse-summary'))
		.toMatchObject([{ phase: 0, source: 'chest-strap', meanBpm: 98, highestBpm: 98 }]);
	await expect.poll(() => soFar(page), 'and nothing of it stays on the phone').toBeNull();
	await strap.detach();
});

/** What the phone keeps of a pulse beside the clock of the outing. */
const soFar = (page: Page) =>
	page.evaluate(
		() =>
			new Promise((done) => {
				const opening = indexedDB.open('breathmark');
				opening.onsuccess = () => {
					const all = opening.result.transaction('clock').objectStore('clock').getAll();
					all.onsuccess = () => {
						opening.result.close();
						done((all.result[0] as { pulse?: unknown } | undefined)?.pulse ?? null);
					};
				};
			})
	);

test('with pulse off an outing offers no pulse', async ({ page, phone }) => {
	await phone.screen(leadsTo.byTalk);
	await start(page);
	await expect(button(page, 'Skip this part')).toBeVisible();
	await expect(button(page, 'Pulse')).toHaveCount(0);
	await expect(page.getByText(/bpm|beats/)).toHaveCount(0);
});
