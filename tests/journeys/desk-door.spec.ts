import { desk } from './routes.ts';
import { expect, test } from './test.ts';
import { askEveryWay } from './ways.ts';

// What guards the gate has one try.
test.describe.configure({ retries: 0 });

test('every page of the desk is refused, by each way of asking, to a runner whose own gate is open', async ({
	phone
}) => {
	await phone.screen();
	expect((await phone.get('/bands')).status()).toBe(200);
	expect(desk.length).toBeGreaterThan(8);
	for (const route of desk) {
		for (const { asked, status, text, to } of await askEveryWay(phone, route)) {
			const isLedAway = text.startsWith('{"type":"redirect","location":"/coach/sign-in"');
			expect([303, 403].includes(status) || isLedAway, `${asked}: ${status}`).toBe(true);
			if (status === 303) expect(to, asked).toBe('/coach/sign-in');
			expect(text, asked).not.toMatch(/bpm/i);
		}
	}
});
