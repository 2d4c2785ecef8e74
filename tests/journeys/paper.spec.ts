import { LanternStreet, become, expect, test } from './lantern-street.ts';
import { Phone } from './phone.ts';
import { printed, sheets } from './sheets.ts';
import { leadsTo } from './walk.ts';

// Our own rules, no source.

test.describe.configure({ timeout: 120_000 });

test('a runner’s own card: four for the pocket, and a large one', async ({
	page,
	lantern,
	stranger
}) => {
	const ines = await lantern.join(await stranger(), 'Ines');
	await become(page, ines);
	expect(await sheets(page, '/bands/card')).toEqual({ A4: 2, Letter: 2 });
	const text = await printed(page, '/bands/card');
	// Age 34, rest 68: 126 to 140 (Tanaka 2001, Karvonen 1957).
	expect(text.match(/126–140/g)).toHaveLength(5);
	// Nobody chose a number of their own: that of the group stands there.
	expect(text).toContain('Call 112');
	expect(text).not.toContain('Print at 100 %');

	// Each card folds to 85 by 54 mm, whatever is on it, and nothing hangs over.
	await page.emulateMedia({ media: 'print' });
	const side = page.locator('article .side').first();
	const box = await side.boundingBox();
	const millimetres = 96 / 25.4;
	expect((box?.width ?? 0) / millimetres).toBeGreaterThan(84);
	expect((box?.width ?? 0) / millimetres).toBeLessThan(85.5);
	expect((box?.height ?? 0) / millimetres).toBeCloseTo(54, 0);
	for (const one of await page.locator('article .side').all()) {
		expect(await one.evaluate((e) => e.scrollHeight <= e.clientHeight + 1)).toBe(true);
	}
});

test('a card fits its sheet also where its letters never came', async ({
	page,
	lantern,
	stranger
}) => {
	const ines = await lantern.join(await stranger(), 'Ines');
	await become(page, ines);
	await page.route(/\.woff2/, (route) => route.fulfill({ status: 404 }));
	expect(await sheets(page, '/bands/card')).toEqual({ A4: 2, Letter: 2 });
});

test('by talk there is not one beat on any paper', async ({ page, lantern, stranger }) => {
	const rashid = await lantern.join(await stranger(), 'Rashid', leadsTo.byTalk);
	expect(await printed(page, `${lantern.path}/cards`)).toMatch(/Rashid/);
	for (const paper of ['cards', 'wall', 'cues', 'stop-signs', 'bands']) {
		expect(await printed(page, `${lantern.path}/${paper}`), paper).not.toMatch(/\d\s*bpm|bpm\s·/);
	}
	await become(page, rashid);
	expect(await sheets(page, '/bands/card')).toEqual({ A4: 2, Letter: 2 });
	const own = await printed(page, '/bands/card');
	expect(own).toContain('by talk');
	expect(own).not.toMatch(/bpm|beats/);
	await expect(page.locator('article svg')).toHaveCount(0);
});

test('the group’s cards are of all who may, and never of who is not for today', async ({
	page,
	lantern,
	stranger
}) => {
	const names = ['Ines', 'Mei-Lin', 'Oren', 'Dagny', 'Tobias'];
	for (const name of names) {
		const answers = { Dagny: leadsTo.settlingIn, Tobias: leadsTo.mayWalk }[name];
		await lantern.join(await stranger(), name, answers);
	}
	await lantern.join(await stranger(), 'Gwen', leadsTo.askFirst);
	expect(await sheets(page, `${lantern.path}/cards`)).toEqual({ A4: 2, Letter: 2 });
	const text = await printed(page, `${lantern.path}/cards`);
	for (const name of names) expect(text).toContain(name);
	expect(text).not.toContain('Gwen');
	expect(text.match(/Call 112/g)).toHaveLength(5);
	await expect(page.getByText('1 runner has no card today.')).toBeVisible();
});

test('the wall has parts, lines and the common effort, and nobody', async ({
	page,
	lantern,
	stranger
}) => {
	await lantern.join(await stranger(), 'Ines');
	const path = `${lantern.path}/wall`;
	expect(await sheets(page, path)).toEqual({ A4: 5, Letter: 5 });
	const before = await printed(page, path);
	expect(before).toContain('feels 5–6 of 10');
	expect(before).not.toMatch(/Ines|Odile|bpm|%/);
	const band = {
		phase: 'steady-run',
		lowPercent: 45,
		highPercent: 55,
		effortLow: 4,
		effortHigh: 5
	};
	await lantern.coach.lead(`${lantern.path}/bands?/set`, band);
	expect(await printed(page, path)).toContain('feels 4–5 of 10');
	// Nothing on it is smaller than 9.3 mm, capital letters reckoned as 0.67 of the type's size.
	await page.emulateMedia({ media: 'print' });
	const sizes = await page
		.locator('article :is(h2, p)')
		.evaluateAll((all) => all.map((one) => parseFloat(getComputedStyle(one).fontSize)));
	expect(Math.min(...sizes) * 0.67 * (25.4 / 96)).toBeGreaterThan(9.3);
});

test('signs to stop and cue sheet: one sheet each, with the group’s number and places', async ({
	page,
	lantern
}) => {
	for (const paper of ['stop-signs', 'cues']) {
		const path = `${lantern.path}/${paper}`;
		expect(await sheets(page, path), paper).toEqual({ A4: 1, Letter: 1 });
		const text = await printed(page, path);
		for (const fact of ['Call 112', 'East gate', 'Sports hall', 'Bram Holt']) {
			expect(text, paper).toContain(fact);
		}
	}
});

test('places as long as they may be fit on a card, on the sheet of signs and on a cue sheet', async ({
	page,
	stranger,
	house
}) => {
	const long = (what: string) =>
		`${what}, ${'by the second door after the clock '.repeat(4)}`.slice(0, 120);
	const lantern = await LanternStreet.found(new Phone(await stranger(), house.url), {
		name: 'Lantern Street and Mill Park Wednesday evening new runners',
		meetingPoint: long('East gate'),
		defibrillator: long('Sports hall'),
		firstAider: long('Bram Holt')
	});
	await become(page, lantern.coach);
	await lantern.join(await stranger(), 'عبد الرحمن بن محمد الفاطمي الأندلسي', {});
	await lantern.join(await stranger(), 'Wilhelmina-Konstantina von Hohenstein-Ebersdorff', {});
	expect(await sheets(page, `${lantern.path}/stop-signs`)).toEqual({ A4: 1, Letter: 1 });
	expect(await sheets(page, `${lantern.path}/cues`)).toEqual({ A4: 1, Letter: 1 });
	expect(await sheets(page, `${lantern.path}/cards`)).toEqual({ A4: 1, Letter: 1 });
	await page.emulateMedia({ media: 'print' });
	const turned = page.locator('article .turned');
	expect(await turned.count()).toBe(2);
	for (const back of await turned.all()) {
		// Turned around, so that it is measured as it is set.
		expect(await back.evaluate((e) => e.scrollHeight - e.clientHeight)).toBeLessThanOrEqual(1);
	}
	for (const side of await page.locator('article .front').all()) {
		expect(await side.evaluate((e) => e.scrollHeight - e.clientHeight)).toBeLessThanOrEqual(1);
	}
});

test('nothing is printed for a group without an emergency number', async ({ page, phone }) => {
	const group = await LanternStreet.found(phone, { emergencyNumber: '' });
	for (const paper of ['cards', 'wall', 'cues', 'stop-signs']) {
		await page.goto(`${group.path}/${paper}`);
		await expect(page).toHaveURL(/\/print$/);
		await expect(page.getByText('No emergency number yet.')).toBeVisible();
	}
	await expect(page.getByRole('link', { name: 'Write down the emergency number' })).toBeVisible();
});

test('a card is behind the gate like every other number', async ({ page, lantern, stranger }) => {
	const gwen = await lantern.join(await stranger(), 'Gwen', leadsTo.askFirst);
	await become(page, gwen);
	await page.goto('/bands/card');
	await expect(page).toHaveURL(/\/screening\/result$/);
});
