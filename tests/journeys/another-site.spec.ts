import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { gated, open } from './routes.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';

const POSTS = [...gated, ...open].flatMap(({ path, actions }) =>
	actions.map((name) => (name === 'default' ? path : `${path}?/${name}`))
);

test('no form of the app is taken from another origin, or from one that hides it', async ({
	phone
}) => {
	await phone.screen(leadsTo.askFirst);
	const held = async () => {
		const { exportedAt: _at, ...rest } = (await (
			await phone.get('/account/export')
		).json()) as Record<string, unknown>;
		return rest;
	};
	const before = await held();
	expect(POSTS.length).toBeGreaterThan(15);
	for (const path of POSTS) {
		for (const origin of [
			'https://elsewhere.example',
			'null',
			phone.url.replace('http', 'https'),
			`${phone.url}0`
		]) {
			const fields = { sure: 'yes', agree: 'yes', urgent: 'none', truth: 'yes' };
			const answer = await phone.send(path, fields, origin);
			expect(answer.status(), `${path} from ${origin}`).toBe(403);
			expect(await answer.text(), path).toContain('This form was not sent from here');
			expect(answer.headers()['set-cookie']).toBeUndefined();
		}
	}
	expect(await held()).toEqual(before);
	// Nor anything else that changes something, whatever it says that it is.
	for (const type of ['application/json', 'text/plain', 'image/png', '']) {
		const answer = await phone.request.post(`${phone.url}/prompter/entries`, {
			headers: { origin: 'https://elsewhere.example', 'content-type': type },
			data: '{"entries":[]}'
		});
		expect(answer.status(), type).toBe(403);
	}
	const unsaid = await fetch(`${phone.url}/emergency-number`, {
		method: 'POST',
		body: new URLSearchParams({ number: '112' })
	});
	expect(unsaid.status).toBe(403);
	const passkey = '/api/auth/passkey/verify-registration';
	expect((await phone.send(passkey, {}, 'https://elsewhere.example')).status()).toBe(403);
	expect(await held()).toEqual(before);
});

test('a page of another site can send this browser here, but not in the name of the runner', async ({
	page,
	phone,
	house
}) => {
	await phone.screen();
	const forms = `<form method="post" action="${house.url}/screening/change"><button>Win</button></form>
		<iframe src="${house.url}/bands"></iframe>`;
	const site = createServer((_, answer) => {
		answer.writeHead(200, { 'content-type': 'text/html' }).end(forms);
	});
	await new Promise<void>((done) => site.listen(0, '127.0.0.1', done));
	const { port } = site.address() as AddressInfo;
	await page.goto(`http://127.0.0.1:${port}/`);
	const frame = page.frames().find((one) => one !== page.mainFrame());
	expect(
		await frame
			?.locator('body')
			.innerText()
			.catch(() => '')
	).not.toContain('bands');
	const [answer] = await Promise.all([
		page.waitForResponse((one) => one.url().endsWith('/screening/change')),
		page.getByRole('button', { name: 'Win' }).click()
	]);
	expect(answer.status()).toBe(403);
	expect(await phone.result()).toBe('From what you told us, you may run');
	site.close();
});

test('over plain http from another machine nothing but a page about it is shown', async ({
	phone,
	house
}) => {
	const answer = await phone.request.get(`${house.url}/screening`, {
		headers: { host: `breathmark.example:${house.port}`, accept: 'text/html' },
		maxRedirects: 0
	});
	expect(answer.status()).toBe(403);
	expect(await answer.text()).toContain('This needs a safe connection');
	expect(answer.headers()['cache-control']).toBe('no-store');
});
