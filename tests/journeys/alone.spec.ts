import { allWalks } from './all-walks.ts';
import { expect, test } from './lantern-street.ts';

// Common practice, no source: nobody else learns that a page was opened, and a page runs nothing
// but its own files (Content Security Policy level 3, W3C).

/** Chromium writes down the status of a page with an issue, and each request that a walk lets fail. */
const STATUS =
	/^Failed to load resource: (the server responded with a status of 4\d\d|net::ERR_FAILED)/;

for (const { name, go } of allWalks) {
	test(`no other server is asked and no rule of the page is broken: ${name}`, async ({
		page,
		phone,
		house
	}) => {
		const found: string[] = [];
		let stop = 'first';
		page.context().on('request', (request) => {
			const { origin, protocol } = new URL(request.url());
			if (origin !== house.url && protocol !== 'data:')
				found.push(`${stop}: asks ${request.url()}`);
		});
		page.on('console', (message) => {
			if (message.type() === 'error' || message.type() === 'warning') {
				if (!STATUS.test(message.text())) found.push(`${stop}: ${message.text()}`);
			}
		});
		page.on('pageerror', (error) => found.push(`${stop}: ${error.message}`));
		await page.exposeFunction('broken', (what: string) => found.push(`${stop}: breaks ${what}`));
		await page.addInitScript(() => {
			document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
				const { broken } = window as unknown as { broken: (what: string) => void };
				broken(`${violatedDirective} with ${blockedURI}`);
			});
		});
		await go({ page, phone, house }, async (at) => {
			stop = at;
			const policy = (await page.request.get(page.url())).headers()['content-security-policy'];
			expect(policy, at).toContain("default-src 'self'");
			expect(policy, at).not.toMatch(/unsafe-inline|unsafe-eval|\*/);
		});
		expect(found).toEqual([]);
	});
}
