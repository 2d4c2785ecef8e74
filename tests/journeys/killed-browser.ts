import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type BrowserContext, type LaunchOptions, type Page } from '@playwright/test';

/** A browser on a disk of its own, which can be killed and started again. Its clock stands still. */
export class KilledBrowser {
	page!: Page;
	#context!: BrowserContext;

	private constructor(
		readonly folder: string,
		readonly options: LaunchOptions
	) {}

	static async start(options: LaunchOptions, atMs: number): Promise<KilledBrowser> {
		const folder = await mkdtemp(join(tmpdir(), 'breathmark-browser-'));
		const browser = new KilledBrowser(folder, options);
		await browser.#launch(atMs);
		return browser;
	}

	async #launch(atMs: number) {
		this.#context = await chromium.launchPersistentContext(this.folder, {
			...this.options,
			viewport: { width: 360, height: 780 },
			locale: 'en-GB'
		});
		this.page = this.#context.pages()[0] ?? (await this.#context.newPage());
		// It runs until it is stopped, and can be stopped at a time to come only.
		await this.page.clock.install({ time: atMs - 60_000 });
		await this.page.clock.pauseAt(atMs);
	}

	/**
	 * Its process ends at once, as in a crash, and is started again on the same disk. A browser writes
	 * cookies down every half minute only: those that it lost are put back.
	 */
	async killAndStart(atMs: number) {
		const cookies = await this.#context.cookies();
		const gone = this.#context.waitForEvent('close');
		const control = await this.#context.browser()?.newBrowserCDPSession();
		if (control === undefined) throw new Error('this browser cannot be killed');
		control.send('Browser.crash').catch(() => undefined);
		await gone;
		await this.#launch(atMs);
		await this.#context.addCookies(cookies);
	}

	async end() {
		await this.#context.close();
		await rm(this.folder, { recursive: true, force: true });
	}
}
