import { mailServer } from '../server/mail-server.ts';
import { House } from './house.ts';
import { Phone } from './phone.ts';
import { expect, test } from './test.ts';

/* A house with a mail server, which is a real one on this computer. Our own rules, no source. */

test('a forgotten password where the house has mail: the page asks whose, and the letter’s link works', async ({
	browser
}) => {
	const server = await mailServer();
	const env = { SMTP_URL: server.url, MAIL_FROM: 'house@example.org' };
	const house = await House.build({ env });
	const context = await browser.newContext({ baseURL: house.url });
	try {
		const page = await context.newPage();
		const email = 'odile@lantern.example';
		const coach = { name: 'Odile Marr', email, password: 'seven blue kettles' };
		await new Phone(context.request, house.url).send('/coach/sign-up', coach);
		await context.clearCookies();

		await page.goto('/coach/forgot');
		await expect(page.locator('main')).not.toContainText('npm run');
		await page.getByLabel('E-mail').fill('not an e-mail');
		await page.locator('main form button').click();
		await expect(page.getByLabel('E-mail')).toHaveValue('not an e-mail');
		await expect(page.locator('#email-issue')).toBeVisible();
		await page.getByLabel('E-mail').fill(email);
		await page.locator('main form button').click();
		await expect(page.getByRole('status')).toBeVisible();

		await expect.poll(() => server.letters.map(({ to }) => to)).toEqual([email]);
		const letter = (server.letters[0]?.data ?? '').replace(/=\n/g, '').replaceAll('=3D', '=');
		await page.goto(/http\S+\/coach\/reset\?token=[\w-]+/.exec(letter)?.[0] ?? '');
		await page.getByLabel('New password').fill('nine green ladders');
		await page.getByRole('button', { name: 'Set this password' }).click();
		await expect(page.getByText('Your new password is set.')).toBeVisible();
	} finally {
		await context.close();
		await house.tearDown();
		await server.close();
	}
});
