import type { Page } from '@playwright/test';
import { deskWalks } from './desk-stops.ts';
import { expect, test } from './lantern-street.ts';
import { walks } from './stops.ts';

/** The narrowest page without scrolling sideways: WCAG 2.2, 1.4.10; also 1280 px zoomed four times. */
const NARROWEST = 320;

/** What a reader may set for themselves, without loss: WCAG 2.2, 1.4.12. */
const WIDER_TEXT = `* {
	line-height: 1.5 !important;
	letter-spacing: 0.12em !important;
	word-spacing: 0.16em !important;
}
p { margin-bottom: 2em !important; }`;

for (const { name, go } of [...walks, ...deskWalks]) {
	test(`nothing is wider than a narrow phone, cut off or too small to hit: ${name}`, async ({
		page,
		phone,
		house
	}) => {
		const found: string[] = [];
		await go({ page, phone, house }, async (stop) => {
			const note = (what: readonly string[]) => found.push(...what.map((is) => `${stop}: ${is}`));
			await page.setViewportSize({ width: NARROWEST, height: 640 });
			note(await tooWide(page));
			note(await tooSmall(page));
			const put = await page.evaluateHandle((css) => {
				const sheet = new CSSStyleSheet();
				sheet.replaceSync(css);
				document.adoptedStyleSheets.push(sheet);
			}, WIDER_TEXT);
			note((await tooWide(page)).map((is) => `with wider text ${is}`));
			note((await cutOff(page)).map((is) => `with wider text ${is}`));
			await put.dispose();
			await page.evaluate(() => (document.adoptedStyleSheets = []));
			await page.setViewportSize({ width: 1280, height: 720 });
		});
		expect(found).toEqual([]);
	});
}

async function tooWide(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const { scrollWidth, clientWidth } = document.documentElement;
		return scrollWidth > clientWidth ? [`the page is ${scrollWidth} px wide`] : [];
	});
}

/**
 * Text in a box that hides what does not fit. What only a screen reader hears is hidden on purpose;
 * a sheet of paper has the measures of paper.
 */
async function cutOff(page: Page): Promise<string[]> {
	return page.evaluate(() =>
		[...document.querySelectorAll<HTMLElement>('body *')]
			.filter((box) => !box.closest('.visually-hidden, .scroll, .chart, .frame'))
			.filter((box) => getComputedStyle(box).overflow !== 'visible' && box.textContent !== '')
			.filter((box) => box.scrollWidth > box.clientWidth || box.scrollHeight > box.clientHeight)
			.map((box) => `cut off: ${box.outerHTML.slice(0, 100)}`)
	);
}

/**
 * Everything to press is at least 24 px in both directions (WCAG 2.2, 2.5.8; a link in a sentence is
 * exempt), and what a page is for at least 44 px (2.5.5, level AAA, which we hold for these).
 */
async function tooSmall(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const main =
			'button:not(.link), .button, .choice, select, input, nav a, summary, [href^="tel:"]';
		const isInSentence = (link: Element) =>
			link.matches('p a, li a') && link.parentElement?.textContent?.trim() !== link.textContent;
		return [...document.querySelectorAll('a, button, input, select, summary, .choice')]
			.filter((target) => !target.matches('.skip, [type=hidden], label input'))
			.filter((target) => target.checkVisibility())
			.filter((target) => !isInSentence(target) || target.matches(main))
			.map((target) => ({ target, box: target.getBoundingClientRect() }))
			.filter(({ target, box }) => {
				const least = target.matches(main) ? 44 : 24;
				return Math.min(box.width, box.height) < least;
			})
			.map(({ target, box: { width, height } }) => {
				const size = `${Math.round(width)} by ${Math.round(height)}`;
				return `too small, ${size}: ${target.outerHTML.slice(0, 100)}`;
			});
	});
}
