import type { Page } from '@playwright/test';
import { todayIn } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, ready, screen } from './walk.ts';

const walks = [
	['4.824', '98'],
	['5.628', '106'],
	['6.432', '115']
] as const;

// Walks at 80.4, 93.8 and 107.2 m/min with 98, 106 and 115 beats: the line of uptake over pulse is
// 0.157465 x pulse - 3.86382 (computed). Age 34: maximum 184.2, so 25.14 mL/kg/min.
test('three walks give a fitness estimate, and speeds, until they are deleted', async ({
	page
}) => {
	await screen(page);
	await page.goto('/bands');
	await page.getByRole('link', { name: 'Walk check' }).click();
	for (const [nth, [speed, pulse]] of walks.entries()) {
		await page.getByLabel(`Speed of walk ${nth + 1}`).fill(speed);
		await page.getByLabel(`Pulse at the end of walk ${nth + 1}`).fill(pulse);
	}
	await page.getByRole('button', { name: 'Work it out' }).click();
	await expect(page.getByText('about 25 mL/kg/min')).toBeVisible();
	await page.goto('/bands');
	await expect(page.getByText('Speeds come from your walk check of')).toBeVisible();
	await page.goto('/bands/walk-check');
	await page.getByRole('button', { name: 'Delete this walk check' }).click();
	await expect(page.getByText('mL/kg/min')).toHaveCount(0);
});

test('the beats of a short count, and a pulse that does not rise, are asked again', async ({
	page
}) => {
	await screen(page);
	await page.goto('/bands/walk-check');
	for (const [nth, [speed]] of walks.entries()) {
		await page.getByLabel(`Speed of walk ${nth + 1}`).fill(speed);
		await page.getByLabel(`Pulse at the end of walk ${nth + 1}`).fill(nth === 0 ? '25' : '110');
	}
	await page.getByRole('button', { name: 'Work it out' }).click();
	await expect(page.getByText('A pulse is for a full minute.').first()).toBeVisible();
	await page.getByLabel('Pulse at the end of walk 1').fill('108');
	await page.getByRole('button', { name: 'Work it out' }).click();
	await expect(page.getByText('rises by less than ten beats').first()).toBeVisible();
	await expect(page.getByLabel('Speed of walk 2')).toHaveValue('5.628');
});

test('by talk there is no walk check', async ({ page }) => {
	await screen(page, leadsTo.byTalk);
	await page.goto('/bands/walk-check');
	await expect(page.getByText('There is no walk check for you')).toBeVisible();
	await expect(page.getByRole('textbox')).toHaveCount(0);
});

/** The first page of the walk check, with a clock that the test turns. */
async function begin(page: Page) {
	await page.clock.install();
	await page.goto('/bands/walk-check');
	await ready(page);
	await page.getByRole('button', { name: 'Begin, with the clock' }).click();
}

async function walk(page: Page, nth: number, speed: string) {
	await expect(page.getByRole('heading', { name: `Walk ${nth} of 3` })).toBeVisible();
	await page.getByLabel('Speed on the display').fill(speed);
	await page.getByRole('button', { name: 'Start three minutes' }).click();
	await expect(page.getByRole('timer')).toHaveText(/^(3:00|2:59) left$/);
}

async function told(page: Page, pulse: string, label = 'Your pulse') {
	await page.getByLabel(label).fill(pulse);
	await page.getByLabel('Yes, all the way').check();
	await page.getByRole('button', { name: /Go on to the next walk|Work it out/ }).click();
}

test('a clock leads through the walks, right after a sleep and a reload, and the numbers give the estimate', async ({
	page
}) => {
	await screen(page);
	await begin(page);
	await page.getByRole('button', { name: 'I have walked for six minutes' }).click();

	await expect(page.getByRole('heading', { name: 'Walk 1 of 3' })).toBeFocused();
	await walk(page, 1, walks[0][0]);
	await expect(page.getByRole('heading', { name: 'Walk 1 of 3' })).toBeFocused();
	await page.clock.fastForward(140_000);
	await expect(page.getByText('Soon: look at your pulse')).toBeVisible();
	await page.clock.fastForward(27_000);
	await expect(page.getByText('Read your pulse now')).toBeVisible();
	await page.clock.fastForward(14_000);
	await expect(page.getByText('Time is up')).toBeVisible();
	await told(page, walks[0][1]);

	await walk(page, 2, walks[1][0]);
	// The phone is locked, and the page loaded again: the clock has gone on.
	await page.clock.fastForward(120_000);
	await page.reload();
	await ready(page);
	await expect(page.getByText('We kept your place')).toBeVisible();
	await expect(page.getByRole('timer')).toHaveText(/^(1:00|0:5\d) left$/);
	await page.clock.fastForward(61_000);
	await expect(page.getByText('Time is up')).toBeVisible();
	await page.getByLabel('Your pulse').fill(walks[1][1]);
	await page.reload();
	await ready(page);
	await expect(page.getByLabel('Your pulse')).toHaveValue(walks[1][1]);
	await told(page, walks[1][1]);

	await walk(page, 3, walks[2][0]);
	await page.clock.fastForward(400_000);
	await expect(page.getByText('more than a minute ago')).toBeVisible();
	await page.getByRole('button', { name: 'Do this walk again' }).click();
	await walk(page, 3, walks[2][0]);
	await page.clock.fastForward(181_000);
	await told(page, walks[2][1]);
	await expect(page.getByText('about 25 mL/kg/min')).toBeVisible();
	expect(await page.evaluate(() => sessionStorage.getItem('walk-check'))).toBeNull();
});

test('each step says what is wrong where it is typed', async ({ page }) => {
	await screen(page);
	await begin(page);
	await page.getByLabel('I count beats for 15 seconds').check();
	await page.getByRole('button', { name: 'I have walked for six minutes' }).click();
	for (const [typed, issue] of [
		['', 'Fill this in.'],
		['fast', 'Type a number'],
		['9', 'faster than people walk']
	] as const) {
		await page.getByLabel('Speed on the display').fill(typed);
		await page.getByRole('button', { name: 'Start three minutes' }).click();
		await expect(page.locator('#speed1-issue')).toContainText(issue);
		await expect(page.locator('#speed1')).toBeFocused();
		await expect(page.locator('#speed1')).toHaveValue(typed);
	}
	await walk(page, 1, '4,5');
	await page.clock.fastForward(181_000);
	await page.getByLabel('Beats in 15 seconds').fill('104');
	await page.getByRole('button', { name: 'Go on to the next walk' }).click();
	await expect(page.locator('#pulse1-issue')).toContainText('too many for 15 seconds');
	await page.getByLabel('Beats in 15 seconds').fill('26');
	await page.getByRole('button', { name: 'Go on to the next walk' }).click();
	await expect(page.locator('#talk1-issue')).toContainText('Pick one.');
	await told(page, '26', 'Beats in 15 seconds');
	await page.getByLabel('Speed on the display').fill('4.5');
	await page.getByRole('button', { name: 'Start three minutes' }).click();
	await expect(page.locator('#speed2-issue')).toContainText('faster than the one before');
});

test('it ends where talk gets short, at a limit from a care team, and by a press', async ({
	page,
	phone
}) => {
	await screen(page);
	for (const end of ['talk', 'press'] as const) {
		await begin(page);
		await page.getByRole('button', { name: 'I have walked for six minutes' }).click();
		await walk(page, 1, '4.5');
		await page.clock.fastForward(181_000);
		if (end === 'talk') {
			await page.getByLabel('Your pulse').fill('104');
			await page.getByLabel('No, talk got short').check();
			await page.getByRole('button', { name: 'Go on to the next walk' }).click();
			await expect(page.getByText('the check ends here')).toBeVisible();
		} else await page.getByRole('button', { name: 'End it' }).click();
		await expect(page.getByRole('timer')).toHaveCount(0);
		expect(await page.evaluate(() => sessionStorage.getItem('walk-check'))).toBeNull();
	}
	// Advice with a limit of 110 beats.
	await phone.screen(leadsTo.askFirst);
	await phone.send('/screening/advice?/record', {
		role: 'doctor',
		covers: 'R-SIGN-ANKLES',
		scope: 'walkrun',
		limitBpm: '110',
		givenOn: todayIn('Etc/UTC')
	});
	await begin(page);
	await page.getByRole('button', { name: 'I have walked for six minutes' }).click();
	await walk(page, 1, '4.5');
	await page.clock.fastForward(181_000);
	await told(page, '110');
	await expect(page.getByText('at the limit from your care team, so')).toBeVisible();
});

test('what to do when something feels wrong is in reach at every step, with the number', async ({
	page,
	phone
}) => {
	await screen(page);
	await phone.lead('/emergency-number', { number: '112' });
	await begin(page);
	const open = page.getByText('Something feels wrong');
	await expect(page.getByRole('link', { name: 'Call 112' })).toBeInViewport();
	await expect(open).toBeInViewport();
	await page.getByRole('button', { name: 'I have walked for six minutes' }).click();
	await walk(page, 1, '4.5');
	await expect(open).toBeInViewport();
	await open.click();
	await expect(page.getByRole('link', { name: 'Call 112' })).toHaveCount(2);
	await expect(page.getByRole('link', { name: 'Call 112' }).last()).toBeInViewport();
	await page.getByRole('link', { name: 'All signs to stop' }).click();
	await page.goBack();
	await ready(page);
	await expect(page.getByRole('timer')).toBeVisible();
});

test('what somebody typed is not given to the next person in the same tab', async ({ page }) => {
	await screen(page);
	await page.goto('/bands/walk-check');
	await ready(page);
	await page.getByLabel('Speed of walk 1').fill('4.4');
	await page.reload();
	await ready(page);
	await expect(page.getByLabel('Speed of walk 1')).toHaveValue('4.4');
	await page.context().clearCookies();
	await screen(page);
	await page.goto('/bands/walk-check');
	await ready(page);
	await expect(page.getByLabel('Speed of walk 1')).toHaveValue('');
	expect(await page.evaluate(() => sessionStorage.getItem('walk-check'))).toBeNull();
});

test.describe('without script', () => {
	test.use({ javaScriptEnabled: false });

	// 25, 27 and 29 beats in 15 s are 100, 108 and 116 a minute: 25.64 at the maximum (computed).
	test('the walks are typed in, with beats of 15 seconds', async ({ page, phone }) => {
		await phone.screen();
		await page.goto('/bands/walk-check');
		await expect(page.getByRole('button', { name: 'Begin' })).toHaveCount(0);
		await page.getByLabel('I count beats for 15 seconds').check();
		for (const [nth, beats] of ['25', '107', '29'].entries()) {
			await page.getByLabel(`Speed of walk ${nth + 1}`).fill(walks[nth]![0]);
			await page.getByLabel(`Pulse at the end of walk ${nth + 1}`).fill(beats);
		}
		await page.getByRole('button', { name: 'Work it out' }).click();
		await expect(page.locator('#pulse2-issue')).toContainText('too many for 15 seconds');
		await expect(page.getByLabel('I count beats for 15 seconds')).toBeChecked();
		await page.getByLabel('Pulse at the end of walk 2').fill('27');
		await page.getByRole('button', { name: 'Work it out' }).click();
		await expect(page.getByText('about 26 mL/kg/min')).toBeVisible();
	});
});
