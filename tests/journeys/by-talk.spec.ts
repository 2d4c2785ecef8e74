import type { Page } from '@playwright/test';
import { todayIn, ZONE } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, screen } from './walk.ts';

// What guards the gate has one try.
test.describe.configure({ retries: 0 });

// What the browser calls itself is kept with the session, and its version is a number of its own.
test.use({ timezoneId: ZONE, userAgent: 'A telephone' });

/** A pulse, or the speed, share or date that could be taken for one: none of these pages has any. */
const from100To220 = /(?<![\w.])(1\d\d|2[01]\d|220)(?!\w)/;

async function expectNoPulse(text: string, where: string) {
	expect(text, where).not.toMatch(/\bbpm\b/);
	expect(text, where).not.toMatch(from100To220);
}

async function everythingShown(page: Page, path: string): Promise<string> {
	await page.goto(path);
	await page.locator('details').evaluateAll((all) => {
		for (const one of all) one.setAttribute('open', '');
	});
	const described = await page
		.locator('[aria-label], [title], [alt], [value]')
		.evaluateAll((all) =>
			all.flatMap((one) => one.getAttributeNames().map((name) => one.getAttribute(name)))
		);
	return [await page.locator('main').innerText(), ...described].join('\n');
}

test('by talk: no beat anywhere, on screen, on paper, in the data or in the export', async ({
	page,
	phone
}) => {
	await screen(page, leadsTo.byTalk);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(
		'From what you told us, you may run, by how you talk'
	);
	await expect(page.getByText('A medicine may change how fast your heart beats.')).toBeVisible();

	const pages = [
		'/screening/result',
		'/bands',
		'/bands/about-you',
		'/bands/resting-pulse',
		'/bands/walk-check',
		'/bands/mile-walk',
		'/learn/edge',
		'/learn/guess',
		'/learn/one-breath/moving',
		'/learn/talk/moving',
		'/prompter/strap',
		'/methods/yours',
		'/account'
	];
	for (const path of pages) {
		for (const media of ['screen', 'print'] as const) {
			await page.emulateMedia({ media });
			const shown = await everythingShown(page, path);
			expect(shown.length, path).toBeGreaterThan(100);
			if (path !== '/account') await expectNoPulse(shown, `${path} in ${media}`);
			else expect(shown).not.toMatch(/\bbpm\b/);
		}
		if (path === '/account') continue;
		const data = (await (await phone.get(`${path}/__data.json`)).json()) as { nodes: unknown };
		await expectNoPulse(JSON.stringify(data.nodes), `the data of ${path}`);
	}
	await page.emulateMedia({ media: 'screen' });
	await page.goto('/bands');
	await expect(page.getByRole('heading', { name: 'Steady run' })).toBeVisible();
	await expect(page.locator('canvas, svg[role=img]')).toHaveCount(0);
	await expect(page.getByText('There are no pulse numbers here')).toBeVisible();

	await expectNoPulse(await (await phone.get('/account/export')).text(), 'the export');
});

test('pulses that were kept are deleted once a new result turns them off', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.mayRun);
	await phone.measureResting(61, todayIn('UTC'));
	await page.goto('/bands');
	await expect(page.getByText('resting pulse 61')).toBeVisible();
	await phone.screen(leadsTo.byTalk);
	await page.goto('/bands');
	await expect(page.getByText('bpm')).toHaveCount(0);
	const held = (await (await phone.get('/account/export')).json()) as {
		profile: { mornings: unknown[] };
	};
	expect(held.profile.mornings).toEqual([]);
	expect((await phone.send('/bands/resting-pulse?/add', { beats: 61 })).status()).toBe(303);
	await page.goto('/account');
	await page.getByText('What happened, and when').click();
	await expect(page.getByText('Stored pulses were deleted')).toBeVisible();
});

test('two mornings over 100 turn pulse off until a doctor or nurse was asked', async ({
	page,
	phone
}) => {
	await phone.screen(leadsTo.mayRun);
	const today = todayIn('UTC');
	const yesterday = todayIn('UTC', Date.now() - 24 * 60 * 60 * 1000);
	await phone.measureResting(104, yesterday);
	await page.goto('/bands');
	await expect(page.getByText('outside 40 to 100. Please measure again')).toBeVisible();
	await phone.measureResting(106, today);
	await expectNoPulse(await everythingShown(page, '/bands'), 'bands');
	await page.goto('/bands/resting-pulse');
	await expect(page.getByText('a doctor or nurse should look at it first')).toBeVisible();

	const said = { givenOn: today, role: 'nurse', scope: 'all', covers: ['H-REST'] };
	expect(await phone.lead('/screening/advice?/record', said)).toBe('/screening/result');
	await page.goto('/bands/resting-pulse');
	await expect(page.getByText('Start counting')).toBeVisible();
});
