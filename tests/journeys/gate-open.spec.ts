import { todayIn } from './days.ts';
import { gated } from './routes.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';
import { lookEveryWay, numbersIn } from './ways.ts';

// What guards the gate has one try.
test.describe.configure({ retries: 0 });

test('whose gate is open gets the numbers by each of these ways, so that the walk can fail', async ({
	phone
}) => {
	await phone.screen({ 'age.years': 43 });
	await phone.measureResting(71, todayIn('UTC'));
	for (const route of gated) {
		const told = await lookEveryWay(phone, route);
		// Of what is named in an address, nothing is there by the name that the walk makes up.
		const page = route.id.includes('[') ? 404 : 200;
		const expected = route.isPage ? [page, page, 200, 200] : [page, page];
		expect(
			told.map(({ status }) => status),
			route.id
		).toEqual(expected);
		if (route.id === '/bands') {
			const [page, , data] = told.map(({ text }) => text);
			expect(page).toContain('bpm');
			expect(data).toContain('highBpm');
			expect(numbersIn(data ?? '').size).toBeGreaterThan(6);
		}
	}
});

test('an address written in another way does not go round the gate', async ({ phone }) => {
	await phone.screen(leadsTo.askFirst);
	for (const path of [
		'/bands/',
		'/%62ands',
		'/bands/%61bout-you',
		'/bands//',
		'//bands',
		'/bands/index.html',
		'/Bands',
		'/screening/../bands',
		'/bands/__data.json/',
		'/bands.json'
	]) {
		const answer = await phone.get(path);
		expect([303, 308, 400, 403, 404], path).toContain(answer.status());
		expect(await answer.text(), path).not.toMatch(/bpm/i);
	}
});

test('which files a page is made of is told to anybody, and holds no number', async ({ phone }) => {
	await phone.screen(leadsTo.askFirst);
	const files = await phone.get('/bands/__route.js');
	expect(await files.text()).not.toMatch(/bpm/i);
	expect(numbersIn((await files.text()).replaceAll(/"[^"]*"/g, '')).size).toBe(0);
});
