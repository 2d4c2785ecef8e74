import type { Page } from '@playwright/test';
import { plainPhase } from '../../src/lib/outing/plain-phase.ts';
import { ready, usualIs } from './an-outing.ts';
import { todayIn } from './days.ts';
import { EmulatedStrap } from './emulated-strap.ts';
import { clockInHand } from './hand-clock.ts';
import type { Look, Walk } from './stops.ts';

const DAY_SECONDS = 24 * 60 * 60;
const WARM_UP = 420;
const RUN = 600;

/** Each part long enough for all that is asked in one. */
const long = {
	name: 'Outing 3',
	parts: [
		plainPhase('warm-up-walk', WARM_UP),
		plainPhase('steady-run', RUN),
		plainPhase('recovery-walk', 600),
		plainPhase('cool-down-walk', 420)
	]
};

const tap = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const head = (page: Page, name: string) =>
	page.getByRole('heading', { level: 1, name, exact: true }).waitFor();

/** A step that takes the place of another begins at its head, also for whoever hears the page. */
const stepsTo = (page: Page, name: string) =>
	page.getByRole('heading', { level: 1, name, exact: true }).and(page.locator(':focus')).waitFor();

async function open(page: Page, title: string) {
	await page.goto('/prompter');
	await ready(page);
	await head(page, title);
}

/** Takes the first outing that is there, and answers the questions of the day. */
async function answerDay(page: Page, answers: readonly ['Yes' | 'No', 'Yes' | 'No', 'Yes' | 'No']) {
	await page
		.getByRole('button', { name: /^Take this one/ })
		.first()
		.click();
	await stepsTo(page, 'Before you start');
	for (const [n, name] of answers.entries()) {
		await page.getByRole('group').nth(n).getByLabel(name, { exact: true }).check();
	}
	await tap(page, 'Go on');
}

async function start(page: Page, place: 'Outdoors' | 'On a treadmill') {
	await open(page, 'Which outing?');
	await answerDay(page, ['Yes', 'No', 'No']);
	await page.getByLabel(place, { exact: true }).check();
	if (place === 'On a treadmill') await page.getByLabel('I have read this').check();
	await tap(page, 'Start');
	await stepsTo(page, 'Warm-up walk');
}

/** What a talk answer is asked about, and all that follows one. */
async function answers(page: Page, look: Look, named: string) {
	await look(`${named}: asked`, page);
	for (const [level, steer] of [
		['comfortable', 'Good. Stay like this.'],
		['with breaths', 'Ease off a little'],
		['broke off', 'Slow to a walk now']
	] as const) {
		await tap(page, level);
		await page.getByText(steer).waitFor();
	}
	await tap(page, '6');
	await look(`${named}: answered`, page);
}

/** Every state of the prompter, of a clock that stands still while it is looked at. */
export const prompterWalks: readonly Walk[] = [
	{
		name: 'the prompter, before an outing and where it stays shut',
		async go({ page, phone }, look) {
			const clock = await clockInHand(page);
			await phone.screen();
			await phone.measureResting(68, todayIn('Etc/UTC'));
			await page.context().route('**/prompter/kept', (route) => route.abort());
			await open(page, 'The prompter is closed');
			await look('prompter: nothing kept, and no network', page);
			await page.context().unroute('**/prompter/kept');
			await tap(page, 'Try again');
			await head(page, 'Which outing?');
			await look('prompter: choose', page);
			await page.getByText('What lies on this phone').click();
			await look('prompter: what lies on this phone', page);
			await answerDay(page, ['Yes', 'No', 'Yes']);
			await stepsTo(page, 'Not today');
			await look('prompter: a change in health', page);
			await open(page, 'Which outing?');
			await answerDay(page, ['Yes', 'No', 'No']);
			await page.getByText('How I am told what comes next').click();
			await page.getByText('What browsers can and cannot do').click();
			await tap(page, 'Start');
			await page.getByText('Say where you are.').waitFor();
			await look('prompter: ready, all unfolded, and an issue', page);
			await open(page, 'Which outing?');
			await answerDay(page, ['No', 'No', 'No']);
			await stepsTo(page, 'Not today');
			await look('prompter: not well', page);
			await page.getByText('What lies on this phone').click();
			await tap(page, 'Clear this phone');
			await stepsTo(page, 'This phone is empty now');
			await look('prompter: cleared', page);
			await open(page, 'Which outing?');
			await answerDay(page, ['Yes', 'Yes', 'No']);
			await stepsTo(page, 'Not today');
			await look('prompter: a new sign', page);
			await page.context().route('**/prompter/kept', (route) => route.abort());
			await clock.pass(-2 * DAY_SECONDS);
			await open(page, 'The prompter is closed');
			await look('prompter: the clock was set back', page);
			await clock.pass(30 * DAY_SECONDS);
			await open(page, 'The prompter is closed');
			await look('prompter: kept for too long', page);
			await page.addInitScript(() => {
				indexedDB.open = () => {
					throw new Error('nothing is kept in this window');
				};
			});
			await open(page, 'Prompter');
			await page.getByText('This browser keeps nothing on this phone').waitFor();
			await look('prompter: a browser that keeps nothing', page);
		}
	},
	{
		name: 'the prompter, from talk to the end',
		async go({ page, phone }, look) {
			const clock = await clockInHand(page);
			await phone.screen();
			await usualIs(page.context(), long);
			await start(page, 'On a treadmill');
			await tap(page, 'Pause');
			await page.getByText('Paused', { exact: true }).waitFor();
			await look('prompter: paused', page);
			await tap(page, 'Go on');
			await tap(page, 'Bright screen');
			await look('prompter: bright', page);
			await tap(page, 'Dark screen');
			await clock.pass(WARM_UP + 122);
			await page.getByText('Read this aloud').waitFor();
			await look('prompter: a text to read aloud', page);
			await clock.pass(32);
			await page.getByText('How was that?').waitFor();
			await answers(page, look, 'prompter: how the text was');
			await clock.pass(RUN - 165);
			await page.getByText('Say the line aloud').waitFor();
			await answers(page, look, 'prompter: how the line was');
			await clock.pass(20);
			await head(page, 'Recovery walk');
			await look('prompter: a walk that can be longer', page);
			await page.context().route('**/prompter/entries', (route) => route.abort());
			await tap(page, 'End early');
			await tap(page, 'End now');
			await stepsTo(page, 'Done');
			await look('prompter: over', page);
			await tap(page, 'Yes, new pain');
			await page.getByRole('heading', { name: 'Where?' }).waitFor();
			await look('prompter: over, with pain', page);
			await page.getByText('What lies on this phone').click();
			await tap(page, 'Clear this phone');
			await page.getByText('They would be lost for good.').waitFor();
			await look('prompter: clearing what was not sent', page);
			await page.context().unroute('**/prompter/entries');
			await clock.pass(DAY_SECONDS);
			await open(page, 'Which outing?');
			await look('prompter: the morning after', page);
		}
	},
	{
		name: 'the prompter, with a pulse, to a sign that shuts it',
		async go({ page, phone }, look) {
			const clock = await clockInHand(page);
			await phone.screen();
			await phone.measureResting(62, todayIn('UTC'));
			await usualIs(page.context(), long);
			const strap = await EmulatedStrap.attach(page, page.context());
			await start(page, 'Outdoors');
			await tap(page, 'Pulse');
			for (const way of ['Tap along', 'Count 10 s', 'Chest strap']) {
				await tap(page, way);
				await look(`prompter: pulse, ${way}`, page);
			}
			await tap(page, 'Choose a strap');
			await page.getByText('Waiting for its first beats').waitFor();
			await look('prompter: pulse, waiting', page);
			await clock.pass(WARM_UP + RUN - 15);
			for (let second = 0; second < 6; second++) {
				await strap.beat(118, 1);
				await clock.pass(1);
			}
			await page.locator('.now strong').getByText('118').waitFor();
			await look('prompter: pulse, live', page);
			await tap(page, 'broke off');
			await page.getByText('Talk decides: ease off').waitFor();
			await look('prompter: pulse, and talk that decides', page);
			await strap.detach();
			await page.context().route('**/prompter/entries', (route) => route.abort());
			await tap(page, 'Something feels wrong');
			await stepsTo(page, 'Stop and stand still');
			await tap(page, 'One of the signs to see a doctor today');
			await stepsTo(page, 'No more today');
			await look('prompter: shut by a sign that waits', page);
			await page.context().unroute('**/prompter/entries');
			await tap(page, 'Send it now');
			await page.getByText('We have kept a note').waitFor();
			await look('prompter: shut by a sign', page);
		}
	}
];
