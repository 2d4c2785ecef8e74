import { randomBytes } from 'node:crypto';
import type { House } from './house.ts';
import { Phone } from './phone.ts';
import { todayIn } from './days.ts';
import { gated, open, openRoutes, routes } from './routes.ts';
import { expect, test } from './test.ts';
import { leadsTo } from './walk.ts';
import { askEveryWay, lookEveryWay, numbersIn } from './ways.ts';

interface Company {
	readonly phone: Phone;
	readonly house: House;
}

/** How somebody comes to be refused, from an account that had bands with a pulse. */
const closings: Readonly<Record<string, (company: Company) => Promise<unknown>>> = {
	'nobody, after everything was deleted': ({ phone }) =>
		phone.lead('/account?/delete', { sure: 'yes' }),
	'nobody, after leaving this phone': ({ phone }) => phone.lead('/account?/signOut'),
	'no result, but open answers': async ({ phone }) => {
		await phone.lead('/account?/delete', { sure: 'yes' });
		await phone.answerAll();
	},
	'not today': ({ phone }) => phone.screen(leadsTo.notToday),
	'ask first': ({ phone }) => phone.screen(leadsTo.askFirst),
	'an urgent sign': ({ phone }) => phone.lead('/screening?/answer', { urgent: 'chest' }),
	'an ended result': ({ house }) => house.reopen({ daysAhead: 366 }),
	'a health change': ({ phone }) => phone.lead('/screening/change'),
	'a change of health, answered up to the check page': async ({ phone }) => {
		await phone.lead('/screening/change');
		await phone.answerAll();
	},
	'consent taken back': ({ phone }) => phone.lead('/account?/withdraw'),
	'an age under 18': async ({ phone }) => {
		const next = await phone.begin();
		await phone.send(next, { question: 'age.years', answer: 17 });
	},
	'"nothing yet" from a nurse': async ({ phone }) => {
		await phone.screen(leadsTo.mayWalk);
		const said = { role: 'nurse', scope: 'none', covers: 'R-AGE-45', limitBpm: '' };
		await phone.lead('/screening/advice?/record', { ...said, givenOn: todayIn('UTC') });
	},
	'another key': ({ house }) => house.reopen({ key: randomBytes(32).toString('hex') })
};

test('the walk over the folders finds what is there', () => {
	const ids = routes.map(({ id }) => id);
	expect(gated.map(({ id }) => id)).toEqual(
		expect.arrayContaining(['/bands', '/bands/about-you', '/bands/resting-pulse'])
	);
	expect(gated.flatMap(({ actions }) => actions)).toEqual(
		expect.arrayContaining(['default', 'add', 'remove'])
	);
	expect(
		[...openRoutes].filter((id) => !ids.includes(id)),
		'open, but not there'
	).toEqual([]);
});

for (const [title, close] of Object.entries(closings)) {
	test(`${title}: every route that is not open is refused, and no byte is a number of theirs`, async ({
		phone,
		house,
		playwright
	}) => {
		await phone.screen({ 'age.years': 43 });
		await phone.measureResting(71, todayIn('UTC'));
		const bands = await (await phone.get('/bands')).text();
		const theirs = numbersIn(bands.replaceAll(/<(script|style|head).*?<\/\1>/gs, ''));
		expect(theirs.size, 'there are numbers to hide').toBeGreaterThan(6);
		await close({ phone, house });

		for (const route of gated) {
			for (const { asked, status, text, to } of await askEveryWay(phone, route)) {
				const isLedAway = text.startsWith('{"type":"redirect","location":"/screening/result"');
				expect([303, 403].includes(status) || isLedAway, `${asked}: ${status}`).toBe(true);
				if (status === 303) expect(to, asked).toBe('/screening/result');
				expect(text, asked).not.toMatch(/bpm/i);
				expect(
					[...numbersIn(text)].filter((one) => theirs.has(one)),
					asked
				).toEqual([]);
			}
		}

		const stranger = new Phone(await playwright.request.newContext(), house.url);
		for (const route of open) {
			const forAnyone = await lookEveryWay(stranger, route);
			const common = numbersIn(forAnyone.map(({ text }) => text).join('\n'));
			for (const { asked, status, text } of await lookEveryWay(phone, route)) {
				expect([200, 303, 404, 503], asked).toContain(status);
				const own = [...numbersIn(text)].filter((one) => theirs.has(one) && !common.has(one));
				expect(own, asked).toEqual([]);
			}
		}
		await stranger.request.dispose();
	});
}

test('whose gate is open gets the numbers by each of these ways, so that the walk can fail', async ({
	phone
}) => {
	await phone.screen({ 'age.years': 43 });
	await phone.measureResting(71, todayIn('UTC'));
	for (const route of gated) {
		const told = await lookEveryWay(phone, route);
		expect(
			told.map(({ status }) => status),
			route.id
		).toEqual([200, 200, 200, 200]);
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
		'/bands.json',
		'/bands/__route.js'
	]) {
		const answer = await phone.get(path);
		expect([303, 308, 400, 403, 404], path).toContain(answer.status());
		expect(await answer.text(), path).not.toMatch(/bpm/i);
	}
});
