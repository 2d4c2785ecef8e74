import { AxeBuilder } from '@axe-core/playwright';
import type { BrowserContext, Page } from '@playwright/test';
import { plainPhase } from '../../src/lib/outing/plain-phase.ts';
import { answerDay, button, heading, open, ready, take, usualIs, whenOf } from './an-outing.ts';
import type { Phone } from './phone.ts';
import {
	givenOn,
	leaveAndReturn,
	playsInTapsOnly,
	pressKey,
	recordCues,
	type CueWay,
	type Missing
} from './recorded-cues.ts';
import { expect, test } from './test.ts';

/*
 * How somebody in an outing is told what comes, by all that a browser can do. When: our own rules, no
 * source: a part begins, half of it is over, a minute is left, three seconds, and the end.
 */

test.use({ viewport: { width: 360, height: 780 } });

const outing = {
	name: 'Three parts',
	parts: [
		plainPhase('warm-up-walk', 180),
		plainPhase('steady-run', 40),
		plainPhase('cool-down-walk', 20)
	]
};
/** At which second of the outing. */
const COUNTED = [177, 178, 179, 217, 218, 219, 237, 238, 239];
const TOLD: readonly (readonly [second: number, words: string])[] = [
	[0, 'Warm-up walk, 3 minutes.'],
	[90, 'Half-way.'],
	[120, 'One minute left.'],
	[177, 'Three.'],
	[178, 'Two.'],
	[179, 'One.'],
	[180, 'Steady run, 40 seconds.'],
	[217, 'Three.'],
	[218, 'Two.'],
	[219, 'One.'],
	[220, 'Cool-down walk, 20 seconds.'],
	[237, 'Three.'],
	[238, 'Two.'],
	[239, 'One.'],
	[240, 'Done. Walk on for a little.']
];
const SECONDS = TOLD.map(([second]) => second);

interface How {
	readonly missing?: readonly Missing[];
	readonly unticked?: readonly string[];
	readonly track?: boolean;
}

async function begin(
	{ page, phone, context }: { page: Page; phone: Phone; context: BrowserContext },
	{ missing = [], unticked = [], track = false }: How = {}
) {
	await recordCues(page, missing);
	await phone.screen();
	await usualIs(context, outing);
	await open(page);
	await take(page, outing.name);
	await answerDay(page);
	await page.getByLabel('Outdoors').check();
	await page.getByText('How I am told what comes next').click();
	for (const name of unticked) await page.getByLabel(name, { exact: true }).uncheck();
	if (track) await page.getByLabel('Tones with the screen locked').check();
	await button(page, 'Start').click();
	await expect(heading(page)).toHaveText('Warm-up walk');
}

/**
 * The calls of one way, each with the second of the outing in which it was made. Where it began is written
 * down a few milliseconds after its clock was started.
 */
async function toldBy(page: Page, way: CueWay) {
	const { began } = await whenOf(page);
	const given = await givenOn(page);
	return given
		.filter((one) => one.way === way)
		.map(({ at, what }) => [Math.floor((at - began + 250) / 1000), what] as const);
}

const isAll = {
	async tone(page: Page) {
		const high = TOLD.map(([second]) => [second, COUNTED.includes(second) ? '587' : '880']);
		expect((await toldBy(page, 'tone')).map(([at, what]) => [at, `${Math.round(+what)}`])).toEqual(
			high
		);
	},
	async voice(page: Page) {
		expect(await toldBy(page, 'voice')).toEqual(TOLD);
	},
	async shake(page: Page) {
		expect(await toldBy(page, 'shake')).toEqual(
			SECONDS.map((second) => [second, COUNTED.includes(second) ? '80' : '300,120,300'])
		);
	},
	async flash(page: Page) {
		const begun = (await toldBy(page, 'flash')).filter(([, what]) => what === 'on');
		// The end of the outing leads to a page of its own, which does not flash.
		expect(begun.map(([second]) => second)).toEqual(SECONDS.slice(0, -1));
	}
};
const ways = ['tone', 'voice', 'shake', 'flash'] as const;

async function toTheEnd(page: Page) {
	await page.clock.runFor(242_000);
	await expect(heading(page)).toHaveText('Done');
}

async function onlyThese(page: Page, given: readonly (typeof ways)[number][]) {
	for (const way of ways) {
		if (given.includes(way)) await isAll[way](page);
		else expect(await toldBy(page, way), way).toEqual([]);
	}
}

test('each part, half-way, the last minute, three seconds and the end: by tone, voice, vibration and flash', async ({
	page,
	phone,
	context
}) => {
	await begin({ page, phone, context });
	await toTheEnd(page);
	await onlyThese(page, ways);
});

for (const [missing, way] of [
	['AudioContext', 'tone'],
	['speechSynthesis', 'voice'],
	['vibrate', 'shake'],
	['wakeLock', null],
	['mediaSession', null]
] as const) {
	test(`a browser without ${missing}: all that it has still tells everything`, async ({
		page,
		phone,
		context
	}) => {
		await begin({ page, phone, context }, { missing: [missing] });
		await toTheEnd(page);
		await onlyThese(
			page,
			ways.filter((one) => one !== way)
		);
	});
}

test('a browser with none of them: the outing is led through by the screen alone', async ({
	page,
	phone,
	context
}) => {
	const missing = [
		'AudioContext',
		'speechSynthesis',
		'vibrate',
		'wakeLock',
		'mediaSession'
	] as const;
	await begin({ page, phone, context }, { missing });
	await page.clock.runFor(181_000);
	await expect(heading(page)).toHaveText('Steady run');
	await page.clock.runFor(61_000);
	await expect(heading(page)).toHaveText('Done');
	await onlyThese(page, ['flash']);
});

for (const [name, way] of [
	['Sound', 'tone'],
	['Voice', 'voice'],
	['Vibration', 'shake'],
	['A flash of the screen', 'flash']
] as const) {
	test(`without a tick at "${name}" that one is still, and all others tell everything`, async ({
		page,
		phone,
		context
	}) => {
		await begin({ page, phone, context }, { unticked: [name] });
		await toTheEnd(page);
		await onlyThese(
			page,
			ways.filter((one) => one !== way)
		);
	});
}

test('no second has more than three flashes, however fast a thumb skips (WCAG 2.2, 2.3.1)', async ({
	page,
	phone,
	context
}) => {
	await begin({ page, phone, context });
	await page.clock.runFor(177_100);
	for (const wait of [300, 300, 100]) {
		await page.clock.runFor(wait);
		await button(page, 'Skip this part').click();
	}
	const begun = (await givenOn(page)).filter(({ way, what }) => way === 'flash' && what === 'on');
	expect(begun.length).toBeGreaterThan(2);
	for (const { at } of begun) {
		const inSecond = begun.filter((one) => one.at >= at && one.at < at + 1000);
		expect(inSecond.length).toBeLessThanOrEqual(3);
	}
});

test('with less motion asked for, the last seconds are one frame that stands', async ({
	page,
	phone,
	context
}) => {
	await page.emulateMedia({ reducedMotion: 'reduce' });
	await begin({ page, phone, context });
	await page.clock.runFor(185_000);
	const frames = (await toldBy(page, 'flash')).filter(([second]) => second > 130);
	expect(frames.map(([second, what]) => [second, what])).toEqual([
		[177, 'on'],
		[181, 'off']
	]);
});

test('the screen is kept on, and asked for again each time the page returns', async ({
	page,
	phone,
	context
}) => {
	await begin({ page, phone, context });
	await expect.poll(() => toldBy(page, 'screen-on')).toHaveLength(1);
	await leaveAndReturn(page);
	await leaveAndReturn(page);
	await expect.poll(() => toldBy(page, 'screen-on')).toHaveLength(3);
	expect((await toldBy(page, 'screen-on')).map(([, what]) => what)).toEqual(
		Array(3).fill('screen')
	);
	await button(page, 'End early').click();
	await button(page, 'End now').click();
	await expect(heading(page)).toHaveText('Done');
	await leaveAndReturn(page);
	expect(await toldBy(page, 'screen-on')).toHaveLength(3);
});

test('the tones as a track: one sound in place of single tones, with names and the phone’s own keys', async ({
	page,
	phone,
	context
}) => {
	await begin({ page, phone, context }, { track: true });
	await expect.poll(() => toldBy(page, 'track')).toHaveLength(1);
	await expect
		.poll(async () => (await toldBy(page, 'title')).at(-1)?.[1])
		.toBe('Warm-up walk, Three parts');
	expect((await toldBy(page, 'keys')).map(([, what]) => what)).toEqual(['play', 'pause']);
	// A pause would cut off one that has not begun to sound.
	await expect.poll(() => toldBy(page, 'sounding')).toHaveLength(1);
	const before = (await toldBy(page, 'tone')).length;
	await pressKey(page, 'pause');
	await expect(page.getByText('Paused')).toBeVisible();
	await pressKey(page, 'play');
	await expect(page.getByText('Paused')).toHaveCount(0);
	// Made anew for what still lies ahead.
	await expect.poll(() => toldBy(page, 'track')).toHaveLength(2);
	await expect.poll(() => toldBy(page, 'sounding')).toHaveLength(2);
	await page.clock.runFor(185_000);
	expect(await toldBy(page, 'tone')).toHaveLength(before);
	expect((await toldBy(page, 'title')).at(-1)?.[1]).toBe('Steady run, Three parts');
	// A key never undoes that something feels wrong.
	await button(page, 'Something feels wrong').click();
	await pressKey(page, 'play');
	await expect(heading(page)).toHaveText('Stop and stand still');
});

test('a browser that refuses the track: single tones instead, and the page offers the sound again', async ({
	page,
	phone,
	context
}) => {
	await begin({ page, phone, context }, { track: true, missing: ['play'] });
	await expect(button(page, 'Sound on again')).toBeVisible();
	await page.clock.runFor(185_000);
	// The first part was announced while the browser had not yet refused.
	expect((await toldBy(page, 'tone')).map(([second]) => second)).toEqual(
		SECONDS.filter((second) => second <= 180)
	);
});

test('after a reload nothing sounds before a tap: the page says so, and the button brings it back', async ({
	page,
	phone,
	context
}) => {
	await playsInTapsOnly(page);
	await begin({ page, phone, context }, { track: true });
	await expect(button(page, 'Sound on again')).toHaveCount(0);
	await page.reload();
	await ready(page);
	await expect(page.getByText('wait for a tap on this page')).toBeVisible();
	expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
	expect(await toldBy(page, 'track')).toEqual([]);
	await button(page, 'Sound on again').click();
	await expect(button(page, 'Sound on again')).toHaveCount(0);
	await expect(page.getByText('wait for a tap on this page')).toHaveCount(0);
	expect(await toldBy(page, 'track')).toHaveLength(1);
	const sounds = () =>
		page.evaluate(() => (navigator.mediaSession.metadata?.title ?? '').length > 0);
	await expect.poll(sounds).toBe(true);
});

test('after a reload without a track any tap brings the tones back', async ({
	page,
	phone,
	context
}) => {
	await begin({ page, phone, context });
	await page.reload();
	await ready(page);
	await expect(button(page, 'Sound on again')).toBeVisible();
	await button(page, 'Bright screen').click();
	await expect(button(page, 'Sound on again')).toHaveCount(0);
	const { at, began } = await whenOf(page);
	await page.clock.runFor(181_000 - (at - began));
	expect((await toldBy(page, 'tone')).map(([second]) => second)).toEqual(
		SECONDS.filter((second) => second > 0 && second <= 180)
	);
});
