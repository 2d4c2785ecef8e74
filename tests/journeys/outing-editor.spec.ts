import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, test, type LanternStreet } from './lantern-street.ts';

// Our own rules, no source.

/** A new outing, open in its editor: 30, 40, 50, 40 and 30 s of running. */
async function begin(page: Page, lantern: LanternStreet): Promise<string> {
	const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	await open(page, path);
	return path;
}

async function open(page: Page, path: string) {
	await page.goto(path);
	await page.waitForSelector('html[data-ready]');
}

const lengths = (page: Page) => page.getByLabel('How long');
const times = (page: Page) => page.getByRole('textbox', { name: 'How many times' });
const kinds = (page: Page) =>
	page
		.getByLabel('Kind')
		.evaluateAll((all) => all.map((one) => (one as HTMLSelectElement).selectedOptions[0]?.text));
const total = (page: Page, name: string) =>
	page.locator('dl div').filter({ hasText: name }).locator('dd');
const status = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text });

async function middle(of: Locator) {
	await of.scrollIntoViewIfNeeded();
	const box = await of.boundingBox();
	if (!box) throw new Error('not on the page');
	return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('an empty library says what will stand there, and the first outing is one press away', async ({
	page,
	lantern
}) => {
	await page.goto(lantern.path);
	await page.getByRole('link', { name: 'Outings' }).click();
	await expect(page.getByText('Your outings will stand here.')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	await page.getByRole('button', { name: 'Make an outing' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Outing 1');
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	await page.getByRole('link', { name: 'All outings' }).click();
	await expect(page.getByText('24:30 in all · 3:10 running · longest run 50 s')).toBeVisible();

	await page.getByRole('button', { name: 'Copy Outing 1' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Outing 1, copy');
	await page.getByRole('link', { name: 'All outings' }).click();
	await page.getByRole('button', { name: 'Remove Outing 1, copy' }).click();
	await expect(page.getByText('The outing is removed.')).toBeVisible();
	await expect(page.getByRole('link', { name: 'Outing 1, copy' })).toBeHidden();
	await page.getByRole('button', { name: 'Put it back' }).click();
	await expect(page.getByRole('link', { name: 'Outing 1, copy' })).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('built by mouse: a phase is dragged, a length is dragged, and both are undone', async ({
	page,
	lantern
}) => {
	const path = await begin(page, lantern);
	const handles = page.locator('[data-place]');
	const from = await middle(handles.nth(5));
	await page.mouse.move(from.x, from.y);
	await page.mouse.down();
	const to = await middle(handles.nth(1));
	await page.mouse.move(to.x, to.y - 60, { steps: 6 });
	await page.mouse.up();
	await expect(lengths(page).nth(1)).toHaveValue('0:50');
	await expect(status(page, 'Steady run is now phase 2.')).toBeAttached();
	await page.getByRole('button', { name: 'Undo' }).click();
	await expect(lengths(page).nth(5)).toHaveValue('0:50');
	await page.getByRole('button', { name: 'Redo' }).click();
	await expect(lengths(page).nth(1)).toHaveValue('0:50');

	const slider = page.getByLabel('Length of phase 2');
	const box = await slider.boundingBox();
	if (!box) throw new Error('no slider');
	const thumb = await slider.evaluate(
		(one: HTMLInputElement) => one.valueAsNumber / Number(one.max)
	);
	const y = box.y + box.height / 2;
	await page.mouse.move(box.x + 8 + thumb * (box.width - 16), y);
	await page.mouse.down();
	await page.mouse.move(box.x + box.width / 2, y, { steps: 8 });
	await page.mouse.up();
	await expect(lengths(page).nth(1)).not.toHaveValue('0:50');
	// All of the stroke is one step back.
	await page.getByRole('button', { name: 'Undo' }).click();
	await expect(lengths(page).nth(1)).toHaveValue('0:50');

	await expect(status(page, 'Not kept yet.')).toBeVisible();
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(status(page, 'Kept.')).toBeVisible();
	await open(page, path);
	await expect(lengths(page).nth(1)).toHaveValue('0:50');
});

test('built from nothing by mouse: phases, a repeat, a band, a speed, an incline and words, kept whole', async ({
	page,
	lantern
}) => {
	const path = await begin(page, lantern);
	const remove = page.getByRole('button', { name: /^Remove: Phase 1: / });
	for (let left = await lengths(page).count(); left > 0; left--) {
		await remove.click();
		await expect(lengths(page)).toHaveCount(left - 1);
	}
	await expect(page.getByText('The expected pulse stands here once')).toBeVisible();
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(page.getByRole('alert')).toContainText('Add a phase: there is none yet.');

	for (const kind of ['Warm-up walk', 'Steady run', 'Cool-down walk', 'Recovery walk']) {
		await page.getByRole('button', { name: kind, exact: true }).click();
	}
	const built = ['Warm-up walk', 'Steady run', 'Recovery walk', 'Cool-down walk'];
	expect(await kinds(page)).toEqual(built);
	await page.locator('summary').nth(1).click();
	await page.getByLabel('Band from, % of reserve').nth(1).fill('50');
	await page.getByLabel('to, %').nth(1).fill('58');
	await page.getByLabel('Speed, km/h').nth(1).fill('6,5');
	await page.getByLabel('Incline, %').nth(1).fill('1');
	await page.getByLabel('Words as it begins').nth(1).fill('Easy as you go');
	// A run is repeated with the walk after it.
	await page.getByRole('button', { name: 'Repeat: Phase 2: steady run' }).click();
	await times(page).fill('3');
	await expect(total(page, 'In all')).toHaveText('20:00');
	await expect(total(page, 'Running')).toHaveText('1:30');
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(status(page, 'Kept.')).toBeVisible();

	await open(page, path);
	expect(await kinds(page)).toEqual(built);
	await expect(times(page)).toHaveValue('3');
	for (const [label, typed] of [
		['Band from, % of reserve', '50'],
		['to, %', '58'],
		['Speed, km/h', '6.5'],
		['Incline, %', '1'],
		['Words as it begins', 'Easy as you go']
	] as const) {
		await expect(page.getByLabel(label).nth(1)).toHaveValue(typed);
	}
});

test('built by keyboard alone', async ({ page, lantern }) => {
	const path = await begin(page, lantern);
	await page.getByLabel('Name', { exact: true }).fill('Outing 7: 1:10');
	await page.getByRole('button', { name: 'Down: Phase 2: steady run' }).focus();
	// The same button again and again: the focus goes with the phase.
	await page.keyboard.press('Enter');
	await page.keyboard.press('Enter');
	await expect(lengths(page).nth(3)).toHaveValue('0:30');
	await expect(page.getByRole('button', { name: 'Down: Phase 4: steady run' })).toBeFocused();
	await page.keyboard.press('Control+z');
	await page.keyboard.press('Control+z');
	await expect(lengths(page).nth(1)).toHaveValue('0:30');

	await lengths(page).nth(1).fill('1:10');
	await page.keyboard.press('Enter');
	await expect(total(page, 'Longest run')).toHaveText('1:10');
	await page.getByLabel('Length of phase 2').focus();
	await page.keyboard.press('ArrowRight');
	await expect(lengths(page).nth(1)).toHaveValue('1:15');

	const more = page.locator('summary').nth(1);
	await more.focus();
	await page.keyboard.press('Enter');
	await page.getByRole('button', { name: 'Repeat: Phase 2: steady run' }).press('Enter');
	await times(page).fill('4');
	await expect(total(page, 'Running')).toHaveText('7:40');
	await page.getByRole('button', { name: 'Keep', exact: true }).last().press('Enter');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Outing 7: 1:10');
	await open(page, path);
	await expect(times(page)).toHaveValue('4');
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test.describe('on a phone', () => {
	test.use({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true });

	test('built by touch', async ({ page, lantern }) => {
		const path = await begin(page, lantern);
		await page.getByRole('button', { name: 'Brisk walk', exact: true }).tap();
		expect(await kinds(page)).toContain('Brisk walk');
		await page.getByRole('button', { name: /^Remove: Phase 2/ }).tap();
		await expect(status(page, 'Phase 2: steady run is removed.')).toBeAttached();

		// A finger on the handle drags the phase and not the page.
		const client = await page.context().newCDPSession(page);
		const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x = 0, y = 0) =>
			client.send('Input.dispatchTouchEvent', {
				type,
				touchPoints: type === 'touchEnd' ? [] : [{ x, y }]
			});
		const handle = page.locator('[data-place]').nth(1);
		const { x, y } = await middle(handle);
		await touch('touchStart', x, y);
		// A row is about 160 px high: past the middle of the next one.
		for (const step of [20, 80, 140, 200, 260]) await touch('touchMove', x, y + step);
		await touch('touchEnd');
		await expect(lengths(page).nth(1)).toHaveValue('0:40');

		// And a finger on a length drags the length.
		const slider = page.getByLabel('Length of phase 1', { exact: true });
		await slider.evaluate((it) => it.scrollIntoView({ block: 'center' }));
		const at = await middle(slider);
		await touch('touchStart', at.x, at.y);
		for (const step of [10, 30, 60]) await touch('touchMove', at.x + step, at.y);
		await touch('touchEnd');
		await expect(lengths(page).first()).not.toHaveValue('7:00');
		const dragged = await lengths(page).first().inputValue();
		await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
		await expect(status(page, 'Kept.')).toBeVisible();
		await open(page, path);
		await expect(lengths(page).nth(1)).toHaveValue('0:40');
		await expect(lengths(page).first()).toHaveValue(dragged);
		const overflows = () => page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
		expect(await overflows()).toBe(false);
	});
});

test.describe('without script', () => {
	test.use({ javaScriptEnabled: false });

	test('built by a form that is sent for each press', async ({ page, lantern }) => {
		const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
		await page.goto(path);
		await lengths(page).nth(1).fill('0:55');
		await page.getByRole('button', { name: 'Down: Phase 2: steady run' }).click();
		await expect(lengths(page).nth(2)).toHaveValue('0:55');
		await page.getByRole('button', { name: 'Steady run', exact: true }).click();
		await page.getByRole('button', { name: 'Remove: Phase 1: warm-up walk' }).click();
		await page.locator('summary').nth(1).click();
		await page.getByRole('button', { name: 'Repeat: Phase 2: steady run' }).click();
		await times(page).fill('x');
		await page.getByRole('button', { name: 'Up: Phase 1: recovery walk' }).click();
		await expect(page.getByRole('alert')).toContainText('Repeat it 2 to 40 times.');
		await expect(times(page)).toHaveValue('x');
		await times(page).fill('3');
		await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
		await expect(status(page, 'Kept.')).toBeVisible();
		await page.goto(path);
		expect((await kinds(page)).slice(0, 2)).toEqual(['Recovery walk', 'Steady run']);
		await expect(times(page)).toHaveValue('3');
	});

	test('of two who change it the second sees both versions and loses nothing', async ({
		page,
		lantern
	}) => {
		const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
		await page.goto(path);
		const second = await page.context().newPage();
		await second.goto(path);
		await lengths(page).nth(1).fill('0:45');
		await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
		await lengths(second).nth(1).fill('1:05');
		await second.getByRole('button', { name: 'Keep', exact: true }).last().click();
		await expect(second.getByRole('alert')).toContainText('Odile Marr kept another version');
		await expect(second.getByRole('row', { name: /1:05.*0:45.*differs/ })).toBeVisible();
		await expect(lengths(second).nth(1)).toHaveValue('1:05');
		// Whatever is pressed meanwhile: nobody goes over another's version unseen.
		await second.getByRole('button', { name: 'Down: Phase 2: steady run' }).click();
		await expect(second.getByRole('alert')).toContainText('Odile Marr kept another version');
		await second.getByRole('button', { name: 'Up: Phase 3: steady run' }).click();
		await second.getByRole('button', { name: 'Keep mine as another outing' }).click();
		await expect(second.getByRole('heading', { level: 1 })).toHaveText('Outing 1, copy');
		await expect(lengths(second).nth(1)).toHaveValue('1:05');
		await page.goto(path);
		await expect(lengths(page).nth(1)).toHaveValue('0:45');
	});
});

test('of two who change it the second keeps theirs or takes the other, and either can be brought back', async ({
	page,
	lantern
}) => {
	const path = await begin(page, lantern);
	const second = await page.context().newPage();
	await open(second, path);
	await lengths(page).nth(1).fill('0:45');
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(status(page, 'Kept.')).toBeVisible();

	await lengths(second).nth(1).fill('1:05');
	await second.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(second.getByRole('alert')).toContainText('Nothing of either is lost');
	await second.getByRole('link', { name: 'Take theirs' }).click();
	await expect(lengths(second).nth(1)).toHaveValue('0:45');
	await second.getByRole('button', { name: 'Undo' }).click();
	await expect(lengths(second).nth(1)).toHaveValue('1:05');
	await second.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(status(second, 'Kept.')).toBeVisible();

	await open(page, path);
	await expect(lengths(page).nth(1)).toHaveValue('1:05');
	await page.getByText('Earlier versions').click();
	await page
		.getByRole('button', { name: /^Bring back/ })
		.first()
		.click();
	await expect(lengths(page).nth(1)).toHaveValue('0:45');
});

test('what cannot be is told at its field, and what was typed stays', async ({ page, lantern }) => {
	await begin(page, lantern);
	for (const [typed, told] of [
		['0:00', 'A phase lasts 5 seconds at least'],
		['10:00:00', 'A phase lasts 2 hours at most'],
		['50', 'Write minutes and seconds']
	] as const) {
		await lengths(page).nth(1).fill(typed);
		await lengths(page).nth(1).blur();
		await expect(page.locator('#parts-1-seconds-issue')).toContainText(told);
		await expect(lengths(page).nth(1)).toHaveValue(typed);
	}
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(page.getByRole('alert')).toContainText('Phase 2: steady run. Write minutes');
	await page.getByRole('alert').getByRole('link').click();
	await expect(page.locator('#parts-1-seconds')).toBeFocused();
	await lengths(page).nth(1).fill('0:30');
	await page.getByLabel('Name', { exact: true }).fill('');
	await page.getByRole('button', { name: 'Keep', exact: true }).last().click();
	await expect(page.getByRole('alert')).toContainText('Give it a name.');
});

test('forged forms: 0 s, 10 h, 500 phases, a place that is not there, another group, no group', async ({
	lantern,
	stranger
}) => {
	const path = await lantern.coach.lead(`${lantern.path}/outings?/make`);
	const many = Object.assign(
		{ name: 'Many', revision: '1' },
		...Array.from({ length: 500 }, (_, n) => ({
			[`parts-${n}-kind`]: 'steady-run',
			[`parts-${n}-seconds`]: '0:10'
		}))
	);
	const refused = await lantern.coach.send(`${path}?/save`, many);
	expect(refused.status()).toBe(400);
	expect(await refused.text()).toContain('There are more than 120 phases');
	const one = {
		name: 'One',
		revision: '1',
		'parts-0-kind': 'steady-run',
		'parts-0-seconds': '1:00'
	};
	for (const [typed, told] of [
		['0:00', 'A phase lasts 5 seconds at least'],
		['10:00:00', 'A phase lasts 2 hours at most'],
		['600:00', 'A phase lasts 2 hours at most'],
		['-1:00', 'Write minutes and seconds']
	] as const) {
		const answer = await lantern.coach.send(`${path}?/save`, { ...one, 'parts-0-seconds': typed });
		expect(answer.status(), typed).toBe(400);
		expect(await answer.text(), typed).toContain(told);
	}
	for (const press of ['remove 7', 'remove 0.3', 'up', 'jump 0', '']) {
		const answer = await lantern.coach.send(`${path}?/press`, { ...one, press });
		expect(answer.status(), press).toBe(404);
	}
	expect((await lantern.coach.send(`${lantern.path}/outings/x?/save`, one)).status()).toBe(404);
	const somebody = await stranger();
	const shut = await somebody.get(lantern.coach.url + path, { maxRedirects: 0 });
	expect(shut.status()).not.toBe(200);
});

test('an outing is set for a day, once, and never for a day that is gone', async ({
	page,
	lantern
}) => {
	const path = await begin(page, lantern);
	const day = page.getByLabel('Day', { exact: true });
	const set = page.getByRole('button', { name: 'Set it' });
	await set.click();
	await expect(
		page.getByText('Pick a day that exists.').or(page.getByText('Pick a day.'))
	).toBeVisible();
	await day.fill('2020-01-01');
	await set.click();
	await expect(page.getByText('Pick today or a later day.')).toBeVisible();
	const soon = new Date(Date.now() + 3 * 86_400_000).toISOString().slice(0, 10);
	await day.fill(soon);
	await set.click();
	await expect(status(page, 'It is set for')).toBeVisible();
	await open(page, path);
	await day.fill(soon);
	await set.click();
	await expect(page.getByText('The group has an outing on that day already.')).toBeVisible();
});
