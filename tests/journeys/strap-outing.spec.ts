import type { Entry } from '../../src/lib/outing/entry.ts';
import { button, heading, start } from './an-outing.ts';
import { todayIn } from './days.ts';
import { EmulatedStrap } from './emulated-strap.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// Of the plain outing: 420 s to warm up, then a run of 30 s.
test.use({ viewport: { width: 360, height: 780 } });

test('a strap in an outing: talk answers carry its pulse, a part that ends keeps mean and highest', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await phone.measureResting(62, todayIn('UTC'));
	const strap = await EmulatedStrap.attach(page, context);
	await start(page);
	await page.clock.runFor(421_000);
	await button(page, 'Pulse').click();
	await button(page, 'Choose a strap').click();
	await expect(page.getByText('Waiting for its first beats')).toBeVisible();
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
	const written = async () => {
		const file = (await (await phone.get('/account/export')).json()) as { outingEntries: Entry[] };
		return file.outingEntries;
	};
	await expect
		.poll(async () => (await written()).filter(({ kind }) => kind === 'pulse-summary'))
		.toMatchObject([{ phase: 1, source: 'chest-strap', meanBpm: 118, highestBpm: 118 }]);
	expect((await written()).find(({ kind }) => kind === 'talk-answer')).toMatchObject({
		talk: 'broke-off',
		pulse: { bpm: 118, source: 'chest-strap' }
	});
	await strap.detach();
});

test('with pulse off an outing offers no pulse', async ({ page, phone }) => {
	await phone.screen(leadsTo.byTalk);
	await start(page);
	await expect(button(page, 'Skip this part')).toBeVisible();
	await expect(button(page, 'Pulse')).toHaveCount(0);
	await expect(page.getByText(/bpm|beats/)).toHaveCount(0);
});
