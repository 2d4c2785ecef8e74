import { routes } from './routes.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

// What guards the gate has one try.
test.describe.configure({ retries: 0 });

/** Redirects, refusals and pages that are not there count as answers too. */
test('no cache may keep an answer of the app, no frame may show it, no other site learns where from', async ({
	phone
}) => {
	await phone.screen(leadsTo.askFirst);
	const paths = routes.flatMap(({ path, isPage }) =>
		isPage ? [path, `${path}/__data.json`.replace('//', '/')] : [path]
	);
	const asked = [...paths, '/nowhere', '/bands/nowhere', '/screening/questions/99'];
	for (const path of asked) {
		const headers = (await phone.get(path)).headers();
		expect(headers['cache-control'], path).toContain('no-store');
		expect(headers['referrer-policy'], path).toBe('same-origin');
		expect(headers['x-content-type-options'], path).toBe('nosniff');
		expect(headers['x-frame-options'], path).toBe('DENY');
	}
	for (const path of [
		'/bands/about-you',
		'/bands/resting-pulse?/add',
		'/screening/advice?/record'
	]) {
		const refused = await phone.send(path, {});
		expect([400, 403], path).toContain(refused.status());
		expect(refused.headers()['cache-control'], path).toBe('no-store');
	}
	const stranger = await phone.send('/screening/change', {}, 'https://elsewhere.example');
	expect(stranger.headers()['cache-control']).toBe('no-store');
});

test('files whose name says what is in them may be kept for ever', async ({ page, phone }) => {
	await page.goto('/screening');
	const file = await page.locator('link[rel=stylesheet]').first().getAttribute('href');
	const path = new URL(file ?? '', page.url()).pathname;
	expect(path).toContain('/_app/immutable/');
	expect((await phone.get(path)).headers()['cache-control']).toContain('immutable');
});
