import { todayHere } from './days.ts';
import { rowsOf } from './rows.ts';
import { expect, test } from './test.ts';
import { begin, leadsTo, measureResting } from './walk.ts';

test('the file holds everything in plain words of JSON, and nothing that signs anybody in', async ({
	page,
	phone,
	house,
	context
}) => {
	await phone.screen({ ...leadsTo.mayWalk, 'age.years': 53 });
	await measureResting(page, 64);
	const said = { role: 'nurse', scope: 'all', covers: 'R-AGE-45', limitBpm: '' };
	await phone.lead('/screening/advice?/record', { ...said, givenOn: todayHere() });
	await phone.lead('/emergency-number', { number: '000' });
	await page.goto('/account');
	const made = await phone.send('/account?/code');
	const code = /[0-9A-Z]{4}-[0-9A-Z]{4}/.exec(await made.text())?.[0] ?? '';
	expect(code).not.toBe('');

	const [download] = await Promise.all([
		page.waitForEvent('download'),
		page.getByRole('link', { name: 'Get my data' }).click()
	]);
	expect(download.suggestedFilename()).toBe('breathmark.json');
	const text = await (await phone.get('/account/export')).text();
	const held = JSON.parse(text) as Record<string, never>;
	expect(held).toMatchObject({
		settings: { emergencyNumber: '000' },
		openAnswers: null,
		results: [{ status: 'CLEARED_WALK', reasons: ['R-AGE-45'], ageYears: 53, plan: 'walkrun' }],
		advice: [{ role: 'nurse', scope: 'all', covers: ['R-AGE-45'] }],
		profile: { mornings: [{ bpm: 64, method: 60 }] },
		consents: [{ kind: 'answers', withdrawnAt: null }],
		sessions: [expect.anything()]
	});

	const { runnerId } = held as unknown as { runnerId: string };
	const own = (table: string, column: string) =>
		rowsOf(house, table).filter((row) => row[column] === runnerId);
	const secrets = [
		code,
		code.replace('-', ''),
		...own('session', 'userId').map(({ token }) => String(token)),
		...own('device_code', 'runner_id').map(({ code_hash }) => String(code_hash)),
		...(await context.cookies())
			.filter(({ name }) => name.includes('session'))
			.map(({ value }) => value)
	];
	expect(secrets.length).toBeGreaterThanOrEqual(5);
	for (const secret of secrets) expect(text).not.toContain(secret);
	expect(text).not.toMatch(/token|secret|hash|sealed|ipAddress/i);
});

test('answers of an open form are in the file while they are held, and gone once it is finished', async ({
	page,
	phone
}) => {
	await phone.answerAll({ 'act.minutes': 577 });
	const held = () => phone.get('/account/export').then((answer) => answer.text());
	expect(await held()).toContain('577');
	expect(JSON.parse(await held())).toMatchObject({
		openAnswers: { answers: { 'act.minutes': 577 } }
	});
	await phone.lead('/screening/check', { truth: 'yes' });
	expect(JSON.parse(await held())).toMatchObject({ openAnswers: null });
	expect(await held()).not.toContain('signs.other');
	await begin(page);
	await expect(page.locator('#answer')).toHaveValue('');
});

test('whoever has no account has no file', async ({ phone }) => {
	expect((await phone.get('/account/export')).status()).toBe(404);
});
