import type { Page } from '@playwright/test';

/**
 * Everything to press is at least 44 px in both directions: WCAG 2.2, 2.5.5, a criterion of level
 * AAA, which is this app's own rule. As in 2.5.8 (24 px, level AA) a link in a sentence is exempt.
 */
export async function tooSmall(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const isInSentence = (link: Element) => {
			const block = link.closest('p, li, dd, td, .issue, .hint');
			return (
				link.matches('a:not([href^="tel:"], .button)') &&
				block !== null &&
				block.textContent?.trim() !== link.textContent?.trim()
			);
		};
		return [
			...document.querySelectorAll('a[href], button, input, select, textarea, summary, .choice')
		]
			.filter((target) => !target.matches('.skip, [type=hidden], label input, .visually-hidden'))
			.filter((target) => target.checkVisibility() && !isInSentence(target))
			.map((target) => ({ target, box: target.getBoundingClientRect() }))
			.filter(({ box }) => Math.min(box.width, box.height) < 43.9)
			.map(({ target, box: { width, height } }) => {
				const size = `${Math.round(width)} by ${Math.round(height)}`;
				return `2.5.5 too small, ${size}: ${target.outerHTML.slice(0, 100)}`;
			});
	});
}
