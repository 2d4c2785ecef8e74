import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import type { EntryContent } from '../../src/lib/outing/entry.ts';
import { todayHere } from './days.ts';
import { didAnOuting } from './past-outing.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// What to do next time, and what is learned from talk answers. Our own rules, no source.

const clean = async (page: Page) =>
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

/** After reading aloud, some minutes into the second part, with a strap. */
const readAloud = (bpm: number, talk: 'comfortable' | 'with-breaths'): EntryContent => ({
	kind: 'talk-answer',
	phase: 1,
	secondsIntoPhase: 300,
	talk,
	effort: 5,
	speedKmh: 6.2,
	afterPassage: true,
	pulse: { bpm, source: 'chest-strap' }
});

test('says what to do next time, and why, on the bands and on the outing that it follows from', async ({
	page,
	phone
}) => {
	await phone.screen();
	await page.goto('/bands');
	await expect(page.getByRole('heading', { name: 'Next time' })).toHaveCount(0);
	const older = await didAnOuting(phone, { daysAgo: 3 });
	const newest = await didAnOuting(phone);
	for (const path of ['/bands', newest]) {
		await page.goto(path);
		const panel = page.locator('section', { hasText: 'Next time' });
		await expect(panel.getByText('The same again.')).toBeVisible();
		await expect(panel).toContainText('with breaths only in the last third of a run');
		await expect(panel).toContainText('how you can talk comes first');
		await clean(page);
	}
	await page.goto(older);
	await expect(page.getByRole('heading', { name: 'Next time' })).toHaveCount(0);
});

test('is by talk where pulse is off, and nothing at all while somebody is referred', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.byTalk);
	const more = [readAloud(128, 'comfortable')];
	const place = await didAnOuting(phone, { kind: 'brisk-walk', more });
	for (const path of ['/bands', place, '/past']) {
		const text = await (await phone.get(path)).text();
		expect(text, path).not.toMatch(/\d bpm\b|\b128\b/);
		expect(text.includes('Your talking pulse'), path).toBe(false);
		expect(text.includes('Next time'), path).toBe(path !== '/past');
	}
	await phone.screen(leadsTo.askFirst);
	for (const path of [place, `${place}/__data.json`, '/past', '/past/__data.json']) {
		const text = await (await phone.get(path)).text();
		expect(text, path).not.toMatch(/Next time|talking pulse|The same again|\b128\b/);
	}
	await page.goto(place);
	await expect(page.getByRole('heading', { name: 'Outing 3' })).toBeVisible();
});

test('a talking pulse is learned from five answers, with its doubt, and is no target', async ({
	page,
	phone
}) => {
	await phone.screen();
	await phone.measureResting(64, todayHere());
	await page.goto('/bands');
	const panel = page.locator('section', { hasText: 'Your talking pulse' });
	await expect(panel).toContainText('0 of 5 answers so far');
	const answers = [
		[118, 'comfortable'],
		[126, 'comfortable'],
		[139, 'with-breaths'],
		[131, 'comfortable'],
		[144, 'with-breaths']
	] as const;
	for (const [nth, [bpm, talk]] of answers.entries()) {
		await expect(panel).toContainText(`${nth} of 5 answers so far`);
		const more = [readAloud(bpm, talk)];
		await didAnOuting(phone, { kind: 'brisk-walk', daysAgo: 12 - 2 * nth, more });
		await page.goto(nth % 2 === 0 ? '/past' : '/bands');
	}
	for (const path of ['/past', '/bands']) {
		await page.goto(path);
		await expect(panel).toContainText(
			/Comfortable talking ends at about 1[34]\d bpm for you: four times in five between 1\d\d and 1\d\d\./
		);
		await expect(panel).toContainText('From your age and 5 talk answers');
		await expect(panel).toContainText('raises no band');
		await clean(page);
	}
	await phone.screen(leadsTo.byTalk);
	await page.goto('/bands');
	await expect(panel).toHaveCount(0);
});

test('whoever settles in reads nothing of runs', async ({ phone }) => {
	await phone.screen(leadsTo.settlingIn);
	const ran = await didAnOuting(phone, { daysAgo: 2 });
	expect(await (await phone.get(ran)).text()).not.toContain('Next time');
	const walked = await didAnOuting(phone, { kind: 'brisk-walk' });
	const text = await (await phone.get(walked)).text();
	const [, panel = ''] = /<h2[^>]*>Next time<\/h2>([\s\S]*?)<\/section>/.exec(text) ?? [];
	expect(panel).toContain('nothing is raised while you are settling in');
	expect(panel).not.toMatch(/\brun/i);
});
