import type { Page } from '@playwright/test';
import { ready } from './walk.ts';

const FORMATS = ['A4', 'Letter'] as const;

/** Pages of a PDF: each has an object of that type, and the browser writes them uncompressed. */
function pagesOf(pdf: Buffer): number {
	return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

/** The paper as it is once its letters have come. */
async function open(page: Page, path: string) {
	await page.goto(path);
	await ready(page);
	await page.evaluate(() => document.fonts.ready);
}

/** How many sheets a page takes in print. */
export async function sheets(page: Page, path: string): Promise<Record<string, number>> {
	await open(page, path);
	return sheetsOf(page);
}

/** The same for a page as it stands open. */
export async function sheetsOf(page: Page): Promise<Record<string, number>> {
	const counts: Record<string, number> = {};
	for (const format of FORMATS) counts[format] = pagesOf(await page.pdf({ format }));
	return counts;
}

/** What stands on the paper. */
export async function printed(page: Page, path: string): Promise<string> {
	await open(page, path);
	await page.emulateMedia({ media: 'print' });
	const text = await page.locator('body').innerText();
	await page.emulateMedia({ media: null });
	return text;
}
