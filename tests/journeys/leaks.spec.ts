import { rowsOf, tablesOf } from './rows.ts';
import { expect, test } from './test.ts';
import { answer, baseline, begin, finish, ready, type Answers } from './walk.ts';

/** Answers that no other page or number could hold by chance, with every follow-up they open. */
const distinctive: Answers = {
	...baseline,
	'age.years': 43,
	'act.minutes': 577,
	'dizzy.balance': 'yes',
	'dizzy.breathing': 'yes',
	'cond.list': ['lung', 'spine'],
	'cond.lung': ['attack'],
	'cond.spine': ['spikes'],
	'bp.told': 'yes',
	'bp.hard': 'no',
	'bp.last': 'dont_know',
	'meds.rate': 'yes',
	'meds.why': 'told',
	'preg.status': 'private',
	'preg.ok': 'private'
};

/** Ids of questions and of answers, and the number, as they stand in the form. */
const traces =
	/577|dizzy|cond\.|spikes|bp\.|dont_know|meds\.|preg\.|signs\.other|lung|attack|private/;

test('a whole form leaves no answer in addresses, titles, cookies, caches, headers or what is printed', async ({
	page,
	house,
	context
}) => {
	const printedBefore = house.printed.length;
	const told: string[] = [];
	const uncached: string[] = [];
	context.on('request', (request) => {
		told.push(request.url(), request.headers().referer ?? '');
	});
	context.on('response', (response) => {
		const { 'content-type': type = '', 'cache-control': kept = '' } = response.headers();
		if (type.includes('text/html') && kept !== 'no-store') uncached.push(response.url());
		told.push(...Object.values(response.headers()));
	});
	const look = async () => {
		told.push(page.url(), await page.title(), await page.evaluate(() => document.cookie));
		told.push(
			await page.evaluate(() =>
				JSON.stringify([{ ...localStorage }, { ...sessionStorage }, history.state])
			)
		);
	};

	await begin(page);
	while (!page.url().includes('/screening/check')) {
		await look();
		await answer(page, distinctive);
	}
	await look();
	await finish(page);
	for (const path of [
		'/screening/result',
		'/screening/doctor',
		'/screening/advice',
		'/bands',
		'/account',
		'/'
	]) {
		await page.goto(path);
		await look();
	}
	const kept = await page.evaluate(async () => {
		const all = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
		const answers = await Promise.all(
			all.map(async (cache) => {
				const requests = await cache.keys();
				return Promise.all(
					requests.map(async (request) => [request.url, await (await cache.match(request))?.text()])
				);
			})
		);
		return { answers: answers.flat(), databases: await indexedDB.databases() };
	});

	expect(uncached).toEqual([]);
	expect(told.length).toBeGreaterThan(300);
	expect(told.filter((text) => traces.test(text) && !text.includes('/_app/'))).toEqual([]);
	expect(house.printed.slice(printedBefore)).toBe('');
	const pages = kept.answers.filter(([url]) => !String(url).includes('/_app/immutable/'));
	for (const [url, text] of pages) {
		expect(String(text), String(url)).not.toMatch(/577|dizzy|cond\.|spikes|bp\.|meds\.|preg\.|43 /);
		expect(String(text), String(url)).not.toContain('name="question"');
	}
	expect(kept.databases).toEqual([]);
});

test('once the form is finished no table holds an answer that can be read', async ({
	phone,
	house
}) => {
	await phone.screen(distinctive);
	const rows = tablesOf(house).flatMap((table) => rowsOf(house, table));
	expect(rows.length).toBeGreaterThan(5);
	for (const row of rows) {
		expect(JSON.stringify(row)).not.toMatch(
			/[:[]577[,}\]]|act\.minutes|spikes|dont_know|dizzy|R-LUNG|SEEK_ADVICE/
		);
	}
});

test('the session cannot be read by script, and no cookie says more than a choice', async ({
	page,
	phone,
	context
}) => {
	await page.goto('/screening');
	await ready(page);
	await phone.screen();
	await page.goto('/bands');
	const readable = (await page.evaluate(() => document.cookie))
		.split('; ')
		.map((one) => one.split('=')[0]);
	expect(readable).toEqual(['time_zone']);
	for (const { name, httpOnly, sameSite } of await context.cookies()) {
		expect(sameSite, name).toBe('Lax');
		if (name.includes('session')) expect(httpOnly).toBe(true);
	}
});
