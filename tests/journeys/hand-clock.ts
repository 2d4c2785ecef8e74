import type { Page } from '@playwright/test';

/** The page's clock in our hand: what takes seconds stands still while it is looked at. */
export interface HandClock {
	pass(seconds: number): Promise<void>;
}

type Handled = typeof globalThis & { pass: (milliseconds: number) => void };

/** @param page before it is opened; what has passed stays passed where it is loaded again */
export async function clockInHand(page: Page): Promise<HandClock> {
	await page.addInitScript(() => {
		const wallMs = Date.now();
		const steadyMs = performance.now();
		let passedMs = Number(sessionStorage.getItem('passed') ?? 0);
		Date.now = () => wallMs + passedMs;
		performance.now = () => steadyMs + passedMs;
		(globalThis as Handled).pass = (milliseconds) => {
			passedMs += milliseconds;
			sessionStorage.setItem('passed', String(passedMs));
		};
	});
	return {
		pass: (seconds) => page.evaluate((ms) => (globalThis as Handled).pass(ms), seconds * 1000)
	};
}
