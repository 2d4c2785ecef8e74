import { distinctive } from './distinctive.ts';
import { expect, test } from './test.ts';
import { answer, begin, finish } from './walk.ts';

// What guards the gate has one try.
test.describe.configure({ retries: 0 });

/** Ids of questions and of answers, and the number, as they stand in the form. */
const traces =
	/\b577\b|dizzy|cond\.|spikes|bp\.|dont_know|meds\.|preg\.|signs\.other|lung|attack|private/;

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
	const stored = await page.evaluate(async () => {
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
	const words = told.map((text) => text.replaceAll(/\/_app\/\S+/g, ''));
	expect(words.filter((text) => traces.test(text))).toEqual([]);
	expect(house.printed.slice(printedBefore)).toBe('');
	const pages = stored.answers.filter(([url]) => !String(url).includes('/_app/immutable/'));
	for (const [url, text] of pages) {
		expect(String(text), String(url)).not.toMatch(
			/\b577\b|dizzy\.|cond\.|spikes|bp\.|meds\.|preg\.|43 /
		);
		expect(String(text), String(url)).not.toContain('name="question"');
	}
	expect(stored.databases).toEqual([]);
});
