import type { Page } from '@playwright/test';

/** Reflow, 1.4.10. */
export async function tooWide(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const { scrollWidth, clientWidth } = document.documentElement;
		return scrollWidth > clientWidth ? [`1.4.10 the page is ${scrollWidth} px wide`] : [];
	});
}

/**
 * Reflow, 1.4.10: only what needs two dimensions for its sense scrolls sideways, which are data tables,
 * pictures and sheets of paper.
 */
export async function scrollsSideways(page: Page): Promise<string[]> {
	return page.evaluate(() =>
		[...document.querySelectorAll('body *')]
			.filter((box) => box.checkVisibility() && !box.matches('textarea, select, input'))
			.filter((box) => ['auto', 'scroll'].includes(getComputedStyle(box).overflowX))
			.filter((box) => box.scrollWidth > box.clientWidth)
			.filter((box) => !box.matches(':has(table, svg, canvas), .frame'))
			.map((box) => `1.4.10 scrolls sideways: ${box.outerHTML.slice(0, 100)}`)
	);
}

/** Common practice, no source, for a half: what stays while the page moves leaves room to read. */
export async function stuck(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const all = [...document.querySelectorAll('body *')].filter(
			(box) => box.checkVisibility() && ['sticky', 'fixed'].includes(getComputedStyle(box).position)
		);
		const heights = all.map((box) => box.getBoundingClientRect().height);
		const height = Math.round(heights.reduce((sum, one) => sum + one, 0));
		return height > innerHeight / 2
			? [
					`1.4.10 what stays takes ${height} of ${innerHeight} px: ${all[0]?.outerHTML.slice(0, 100)}`
				]
			: [];
	});
}

/**
 * Text in a box that hides what does not fit, 1.4.12. What only a screen reader hears is hidden on
 * purpose; a sheet of paper has the measures of paper; what scrolls by keyboard hides nothing.
 */
export async function cutOff(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const isOwnWidth = 'button, .button, .choice, summary, label';
		const scrolls = (box: HTMLElement) =>
			box.tabIndex === 0 && ['auto', 'scroll'].includes(getComputedStyle(box).overflowY);
		return [...document.querySelectorAll<HTMLElement>('body *')]
			.filter((box) => !scrolls(box) && !box.closest('.visually-hidden, .scroll, .chart, .frame'))
			.filter((box) => box.textContent !== '' && box.checkVisibility())
			.filter(
				(box) => /hidden|clip/.test(getComputedStyle(box).overflow) || box.matches(isOwnWidth)
			)
			.filter((box) => getComputedStyle(box).display !== 'inline')
			.filter((box) => box.scrollWidth > box.clientWidth || box.scrollHeight > box.clientHeight + 1)
			.map((box) => `1.4.12 cut off: ${box.outerHTML.slice(0, 100)}`);
	});
}
