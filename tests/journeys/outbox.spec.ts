import { plainPhase } from '../../src/lib/outing/plain-phase.ts';
import { answerDay, button, heading, open, ready, start, take, usualIs } from './an-outing.ts';
import { entriesIn } from './past-entries.ts';
import type { Phone } from './phone.ts';
import { expect, test } from './test.ts';

/*
 * What is written down in an outing, and its way to the account. Our own rules, no source.
 */

/** Asked from 150 s on, once the passage was read, to the end: time enough for a slow machine. */
const outing = { name: 'A long run', parts: [plainPhase('steady-run', 265)] };

test.use({ viewport: { width: 360, height: 780 } });

const kinds = async (phone: Phone) => (await entriesIn(phone)).map(({ kind }) => kind);

test('an answer that is given without a network waits, is shown, and arrives once', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await usualIs(context, outing);
	await open(page);
	await take(page, outing.name);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await button(page, 'Start').click();
	await expect.poll(() => kinds(phone)).toEqual(['started']);
	await context.setOffline(true);
	await page.clock.runFor(155_000);
	await button(page, 'comfortable').click();
	await button(page, '5').click();
	await expect(page.getByText('2 entries are waiting to be sent.')).toBeVisible();
	// The page goes, and comes back in another: what waits is still there.
	await context.route('**/prompter/entries', (route) => route.abort());
	await context.setOffline(false);
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('Steady run');
	await expect(button(page, '5')).toHaveAttribute('aria-pressed', 'true');
	await expect(page.getByText('2 entries are waiting to be sent.')).toBeVisible();
	await context.unroute('**/prompter/entries');
	// The page waits longer after each failure, and a request takes the time of this machine, which
	// its clock does not know: it is run on until the next try was made and answered.
	await expect(async () => {
		await page.clock.runFor(10_000);
		await expect(page.getByText('waiting to be sent')).toHaveCount(0, { timeout: 1000 });
	}).toPass();
	const answers = (await entriesIn(phone)).filter(({ kind }) => kind === 'talk-answer');
	expect(answers).toMatchObject([
		{ phase: 0, talk: 'comfortable', effort: null },
		{ phase: 0, talk: 'comfortable', effort: 5 }
	]);
	expect(new Set(answers.map(({ id }) => id)).size).toBe(2);
});

test('what one runner wrote is not sent as another, and waits for its own', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await start(page);
	await expect.poll(() => kinds(phone)).toEqual(['started']);
	await context.setOffline(true);
	await button(page, 'Pause').click();
	await expect(page.getByText('1 entry is waiting to be sent.')).toBeVisible();
	await page.goto('about:blank');
	const mine = await context.cookies();
	await context.clearCookies();
	await context.setOffline(false);
	await phone.screen();
	await page.goto('/prompter');
	await ready(page);
	await expect(heading(page)).toHaveText('Which outing?');
	await expect(page.getByText('1 entry is waiting to be sent.')).toBeVisible();
	expect(await kinds(phone)).toEqual([]);
	await context.clearCookies();
	await context.addCookies(mine);
	await page.reload();
	await expect.poll(() => kinds(phone)).toEqual(['started', 'paused']);
	await expect(heading(page)).toHaveText('Warm-up walk');
	await expect(page.getByText('Paused')).toBeVisible();
});

test('a closed gate takes the numbers off the phone', async ({ page, phone }) => {
	await phone.screen();
	await open(page);
	await expect(heading(page)).toHaveText('Which outing?');
	await phone.send('/screening/change');
	await page.reload();
	await ready(page);
	await expect(heading(page)).toHaveText('The prompter is closed');
	const kept = await page.evaluate(
		() =>
			new Promise<unknown[]>((done, failed) => {
				const opening = indexedDB.open('breathmark');
				opening.onerror = failed;
				opening.onsuccess = () => {
					const all = opening.result.transaction('kept').objectStore('kept').getAll();
					all.onsuccess = () => done(all.result as unknown[]);
				};
			})
	);
	expect(kept).toMatchObject([{ kept: null }]);
});
