import type { Fields, Phone } from './phone.ts';
import { rowsOf, tablesOf } from './rows.ts';
import { expect, test } from './test.ts';

// What no page of the app sends. Common practice, no source: the server trusts no browser.

const question = '/screening/questions/2';

const refusedForms: readonly [string, string, Fields, number][] = [
	['an unknown option', question, { question: 'plan.effort', answer: 'fly' }, 400],
	[
		'two answers to a question with one',
		question,
		{ question: 'plan.effort', answer: ['walk', 'hard'] },
		400
	],
	['none and something', question, { question: 'signs.other', answer: ['none', 'ankles'] }, 400],
	[
		'more ticks than there are boxes',
		question,
		{ question: 'signs.other', answer: Array<string>(20).fill('ankles') },
		400
	],
	['no answer', question, { question: 'plan.effort' }, 400],
	['a number for a choice', question, { question: 'plan.effort', answer: '0' }, 400],
	['a choice for a number', question, { question: 'age.years', answer: 'walk' }, 400],
	['two numbers', question, { question: 'age.years', answer: ['34', '35'] }, 400],
	['a hidden follow-up', question, { question: 'dizzy.breathing', answer: 'yes' }, 303],
	['another hidden follow-up', question, { question: 'preg.ok', answer: 'run' }, 303],
	['an unknown question', question, { question: 'no.such', answer: 'yes' }, 303],
	['a question named as an object part', question, { question: '__proto__', answer: 'yes' }, 303],
	['no question', question, { answer: '34' }, 303],
	[
		'the urgent question by the way of the others',
		question,
		{ question: 'now.urgent', answer: 'chest' },
		303
	],
	['an unfinished form as finished', '/screening/check', { truth: 'yes' }, 400],
	['a result by hand', '/screening/check', { truth: 'yes', status: 'CLEARED_ALL' }, 400],
	['an unknown action', '/screening?/clear', { urgent: 'none' }, 404],
	['a form to a page without one', '/privacy', { agree: 'yes' }, 405],
	[
		'a resting pulse before a result',
		'/bands/resting-pulse?/add',
		{ beats: '60', seconds: '60' },
		403
	],
	['a profile before a result', '/bands/about-you', { name: 'Ines' }, 403]
];

test('a form that no page sends is refused, and nothing of it stored', async ({ phone, house }) => {
	await phone.begin();
	const all = () =>
		Object.fromEntries(tablesOf(house).map((table) => [table, rowsOf(house, table)]));
	const before = all();
	for (const [what, path, fields, status] of refusedForms) {
		const answer = await phone.send(path, fields);
		expect(answer.status(), what).toBe(status);
		expect(all(), what).toEqual(before);
	}
});

test('a form of five megabytes gets a clear answer, and the server goes on', async ({ phone }) => {
	await phone.begin();
	const answer = await phone.send(question, { question: 'age.years', answer: 'a'.repeat(5e6) });
	expect(answer.status()).toBe(413);
	expect(await answer.text()).toContain('That was too much at once');
	expect((await phone.get('/')).status()).toBe(200);
});

test('a file or another format instead of a form is refused in words', async ({ phone }) => {
	await phone.begin();
	const headers = { accept: 'text/html', origin: phone.url };
	const file = { name: 'answer.txt', mimeType: 'text/plain', buffer: Buffer.from('34') };
	const sent = await phone.request.post(phone.url + question, {
		headers,
		multipart: { question: 'age.years', answer: file }
	});
	expect(sent.status()).toBe(400);
	const json = await phone.request.post(phone.url + question, {
		headers: { ...headers, 'content-type': 'application/json' },
		data: '{"question":"age.years","answer":34}'
	});
	expect(json.status()).toBe(415);
	expect(await json.text()).toContain('We could not read that');
});

test('a form that cannot be read is refused in words, wherever it is sent, and logged nowhere', async ({
	phone,
	house
}) => {
	await phone.screen();
	const printedBefore = house.printed.length;
	const headers = { accept: 'text/html', origin: phone.url };
	const cutOff = '--x\r\ncontent-disposition: form-data; name="answer"\r\n\r\n34';
	const broken: readonly [string, string][] = [
		['multipart/form-data; boundary=x', cutOff],
		['multipart/form-data; boundary=x', 'nothing of it'],
		['multipart/form-data', cutOff],
		['multipart/form-data; boundary=', '']
	];
	for (const path of ['/screening?/answer', '/account?/settings', '/bands?/doubt', '/link']) {
		for (const [type, data] of broken) {
			const answer = await phone.request.post(phone.url + path, {
				headers: { ...headers, 'content-type': type },
				data,
				maxRedirects: 0
			});
			expect(answer.status(), `${path} as ${type}`).toBe(400);
			expect(await answer.text()).toContain('We could not read that');
		}
	}
	// The sign-in library reads for itself.
	const json = await phone.request.post(`${phone.url}/api/auth/passkey/verify-authentication`, {
		headers: { ...headers, 'content-type': 'application/json' },
		data: '{"response":'
	});
	expect(json.status()).toBe(400);
	expect(house.printed.slice(printedBefore)).toBe('');
});

test('an address of a question that is not there leads on or says so', async ({ phone }) => {
	await phone.begin();
	for (const n of ['0', 'abc', '1.5', '-1', '007', '٢', '%00', '2%20']) {
		expect((await phone.get(`/screening/questions/${n}`)).status(), n).toBe(404);
	}
	expect(await leadsTo(phone, '99')).toBe('/screening/check');
	expect(await leadsTo(phone, '1')).toBe('/screening');
});

const leadsTo = async (phone: Phone, n: string) =>
	(await phone.get(`/screening/questions/${n}`)).headers().location;

test('what was typed is shown as text and never run', async ({ page, phone }) => {
	const typed = '"><img src=x onerror=alert(1)><b>';
	let alerts = 0;
	page.on('dialog', (dialog) => {
		alerts++;
		void dialog.dismiss();
	});
	await phone.screen();
	await page.goto('/bands/about-you');
	await page.getByLabel('Name on your pages').fill(typed);
	await page.getByRole('button', { name: 'Keep this' }).click();
	await expect(page.getByText(typed)).toBeVisible();
	await page.goto('/link');
	await page.getByLabel('Code').fill(typed);
	await page.getByRole('button', { name: 'Use this code' }).click();
	await expect(page.getByLabel('Code')).toHaveValue(typed);
	await page.goto('/emergency-number?from="><script>alert(1)</script>');
	await page.getByLabel('Another number').check();
	await page.getByLabel('Number to call').fill(typed);
	await page.getByRole('button', { name: 'Keep this number' }).click();
	await expect(page.getByLabel('Number to call')).toHaveValue(typed);
	await expect(page.locator('main img, main b, main script')).toHaveCount(0);
	expect(alerts).toBe(0);
});
