import type { Page } from '@playwright/test';

/** Brought into the page, where what looks at it finds it: `window.contrastWithGround`. */
declare global {
	interface Window {
		contrastWithGround: (colour: string, element: Element | null) => number;
	}
}

/** WCAG 2.2: the contrast ratio of a colour with the ground that an element stands on, 1 to 21. */
export async function bringContrast(page: Page): Promise<void> {
	await page.evaluate(() => {
		const luminance = (colour: string) => {
			const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map((part) => {
				const share = Number(part) / 255;
				return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
			});
			return 0.2126 * r + 0.7152 * g + 0.0722 * b;
		};
		const groundOf = (element: Element | null) => {
			for (let box = element; box; box = box.parentElement) {
				const { backgroundColor } = getComputedStyle(box);
				if (!backgroundColor.endsWith(', 0)')) return backgroundColor;
			}
			return 'rgb(255, 255, 255)';
		};
		window.contrastWithGround = (colour, element) => {
			const both = [luminance(colour), luminance(groundOf(element))];
			return (Math.max(...both) + 0.05) / (Math.min(...both) + 0.05);
		};
	});
}
