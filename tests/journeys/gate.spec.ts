import { closings } from './closings.ts';
import { todayIn } from './days.ts';
import { Phone } from './phone.ts';
import { gated, open, openRoutes, routes } from './routes.ts';
import { expect, test } from './test.ts';
import { askEveryWay, lookEveryWay, numbersIn } from './ways.ts';

// What guards the gate has one try.
test.describe.configure({ retries: 0 });

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
				expect([200, 303, 404, 405, 503], asked).toContain(status);
				const own = [...numbersIn(text)].filter((one) => theirs.has(one) && !common.has(one));
				expect(own, asked).toEqual([]);
			}
		}
		await stranger.request.dispose();
	});
}
