import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test } from './test.ts';

// Sec-Fetch-Site as in the W3C's Fetch Metadata Request Headers (M); what is packed, our own rules.

test('a page is packed for a browser that takes it so, and not where another site led here', async ({
	page,
	house
}) => {
	const packing = async (opening: () => Promise<unknown>) => {
		const [answer] = await Promise.all([
			page.waitForResponse((one) => one.url().startsWith(`${house.url}/safety`)),
			opening()
		]);
		return answer.headers()['content-encoding'];
	};
	// Typed, from a page of ours, and from another site, where one name is not the other.
	expect(await packing(() => page.goto('/safety/weather'))).toBe('gzip');
	await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
	expect(await packing(() => page.locator('main a[href="/safety"]').first().click())).toBe('gzip');
	const site = createServer((_, answer) => {
		answer
			.writeHead(200, { 'content-type': 'text/html' })
			.end(`<a href="${house.url}/safety">There</a>`);
	});
	await new Promise<void>((done) => site.listen(0, '127.0.0.1', done));
	await page.goto(`http://127.0.0.1:${(site.address() as AddressInfo).port}/`);
	expect(await packing(() => page.getByRole('link').click())).toBeUndefined();
	await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
	site.close();
});

test('what is packed is the same page, with its cookies, and only where it is asked for', async ({
	house
}) => {
	const ask = (headers: Record<string, string>, path = '/privacy') =>
		fetch(house.url + path, { headers: { accept: 'text/html', ...headers } });
	const here = { 'sec-fetch-site': 'same-origin' };
	const plain = await ask({ ...here, 'accept-encoding': 'identity' });
	expect(plain.headers.has('content-encoding')).toBe(false);
	const packed = await ask({ ...here, 'accept-encoding': 'br, gzip' });
	expect(packed.headers.get('content-encoding')).toBe('gzip');
	expect(packed.headers.get('vary')).toContain('accept-encoding');
	expect(packed.headers.get('cache-control')).toBe('no-store');
	expect(packed.headers.get('content-security-policy')).toContain("default-src 'self'");
	// Fetch unpacks it itself.
	expect(withoutNonce(await packed.text())).toBe(withoutNonce(await plain.text()));

	for (const headers of [
		{ 'accept-encoding': 'gzip' },
		{ ...here, 'accept-encoding': 'br' },
		{ ...here, 'accept-encoding': 'gzip;q=0' },
		{ 'sec-fetch-site': 'same-site', 'accept-encoding': 'gzip' },
		{ 'sec-fetch-site': 'cross-site', 'accept-encoding': 'gzip' }
	] as Record<string, string>[]) {
		const answer = await ask(headers);
		expect(answer.headers.has('content-encoding'), JSON.stringify(headers)).toBe(false);
	}
});

const withoutNonce = (text: string) => text.replaceAll(/nonce[-=]"?[\w+/=]+/g, '');
