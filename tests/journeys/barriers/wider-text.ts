import type { Page } from '@playwright/test';

/** What a reader may set for themselves, without loss: WCAG 2.2, 1.4.12. */
const WIDER_TEXT = `* {
	line-height: 1.5 !important;
	letter-spacing: 0.12em !important;
	word-spacing: 0.16em !important;
}
p { margin-bottom: 2em !important; }`;

/** Looks while letters, words and lines stand wider, and puts them back. */
export async function wider(page: Page, look: () => Promise<void>): Promise<void> {
	await page.evaluate((css) => {
		const sheet = new CSSStyleSheet();
		sheet.replaceSync(css);
		document.adoptedStyleSheets.push(sheet);
	}, WIDER_TEXT);
	await look();
	await page.evaluate(() => (document.adoptedStyleSheets = []));
}
