import { randomBytes } from 'node:crypto';
import type { House } from './house.ts';
import { rowsOf } from './rows.ts';
import { expect, test } from './test.ts';
import { measureResting, ready } from './walk.ts';

const SHUT = 'The health data cannot be opened right now';

const counts = (house: House) =>
	['user', 'session', 'consent', 'screening_draft', 'screening_result'].map(
		(table) => `${table}: ${rowsOf(house, table).length}`
	);

test('with another key bands and questions are shut, and say why; stop signs and the start are there', async ({
	page,
	phone,
	house,
	context
}) => {
	await page.goto('/screening');
	await ready(page);
	await phone.screen();
	await measureResting(page, 68);
	const stored = counts(house);
	const held = async () =>
		(await context.cookies()).map(({ name, value }) => `${name}=${value}`).sort();
	const cookies = await held();
	const another = randomBytes(32).toString('hex');
	await house.reopen({ key: another });

	for (const path of ['/bands', '/screening/result', '/screening/doctor']) {
		const answer = await page.goto(path);
		expect(answer?.status(), path).toBe(503);
		await expect(page.getByRole('heading', { level: 1 })).toHaveText(SHUT);
		await expect(page.getByText('Please tell whoever runs this server.')).toBeVisible();
		await expect(page.getByText('126')).toHaveCount(0);
	}
	expect((await phone.get('/bands/__data.json')).status()).toBe(200);
	expect(await (await phone.get('/bands/__data.json')).json()).toEqual({
		type: 'redirect',
		location: '/screening/result'
	});

	await page.goto('/account');
	await expect(page.getByRole('alert')).toContainText('does not have the key');
	await expect(page.getByText('There is nothing stored for this phone.')).toHaveCount(0);

	// The urgent signs work as ever; a form cannot be begun.
	await page.goto('/screening');
	await ready(page);
	await page.getByRole('checkbox').first().check();
	await page.getByRole('button', { name: 'Go on' }).click();
	await expect(page.getByRole('link', { name: '112' })).toBeVisible();
	await page.goto('/screening');
	await ready(page);
	await page.getByLabel('None of these').check();
	await page.getByRole('button', { name: 'Next question' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(SHUT);
	expect((await phone.send('/screening/consent', { agree: 'yes' })).status()).toBe(303);
	for (const path of ['/', '/safety', '/methods', '/privacy', '/link', '/emergency-number']) {
		expect((await page.goto(path))?.status(), path).toBe(200);
	}
	expect(counts(house), 'nothing was written').toEqual(stored);
	expect(await held(), 'the phone keeps its account').toEqual(cookies);

	await house.reopen({});
	await page.goto('/bands');
	await expect(page.getByRole('region', { name: 'Steady run' })).toContainText('126–140');
	await page.goto('/account');
	await expect(page.getByText('From what you told us, you may run')).toBeVisible();

	expect(house.printed).toContain('health data stays shut until the right key is back');
	const keys = [house.key, another].flatMap((key) => [
		key,
		Buffer.from(key, 'hex').toString('base64'),
		Buffer.from(key, 'hex').toString('base64url')
	]);
	const session = cookies.find((cookie) => cookie.includes('session')) ?? '';
	for (const secret of [...keys, session.slice(session.indexOf('=') + 1)]) {
		expect(secret.length).toBeGreaterThan(20);
		expect(house.printed).not.toContain(secret);
	}
});

test('whoever was about to agree when the key went becomes nobody new', async ({
	phone,
	house
}) => {
	expect(await phone.lead('/screening?/answer', { urgent: 'none' })).toBe('/screening/consent');
	const stored = counts(house);
	await house.reopen({ key: randomBytes(32).toString('hex') });
	const answer = await phone.send('/screening/consent', { agree: 'yes' });
	expect(answer.status()).toBe(503);
	expect(await answer.text()).toContain(SHUT);
	expect(counts(house)).toEqual(stored);
});
