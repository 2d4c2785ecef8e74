import type { Page } from '@playwright/test';
import { expect, test } from './test.ts';
import { measureResting, ready } from './walk.ts';

/** The part of a phone that keeps passkeys, as Chromium pretends it (WebAuthn, W3C). */
async function authenticatorOf(page: Page) {
	const direct = await page.context().newCDPSession(page);
	await direct.send('WebAuthn.enable');
	const options = {
		protocol: 'ctap2',
		transport: 'internal',
		hasResidentKey: true,
		hasUserVerification: true,
		isUserVerified: true,
		automaticPresenceSimulation: true
	} as const;
	const { authenticatorId } = await direct.send('WebAuthn.addVirtualAuthenticator', { options });
	return {
		credentials: async () =>
			(await direct.send('WebAuthn.getCredentials', { authenticatorId })).credentials,
		refuse: () =>
			direct.send('WebAuthn.setUserVerified', { authenticatorId, isUserVerified: false })
	};
}

test('a passkey brings somebody back who left this phone', async ({ page, phone }) => {
	const authenticator = await authenticatorOf(page);
	await phone.screen();
	await measureResting(page, 68);
	await page.goto('/account');
	await ready(page);
	await page.getByRole('button', { name: 'Add a passkey' }).click();
	await expect(page.getByText('The passkey is added.')).toBeVisible();
	await expect(page.getByText(/^Passkey from /)).toBeVisible();
	expect(await authenticator.credentials()).toMatchObject([
		{ isResidentCredential: true, rpId: 'localhost' }
	]);

	await page.getByRole('button', { name: 'Forget me here' }).click();
	await page.goto('/bands');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('No result yet');
	await page.goto('/link');
	await ready(page);
	await page.getByRole('button', { name: 'Come back with a passkey' }).click();
	await expect(page.getByRole('link', { name: 'Your bands' })).toBeVisible();
	await page.goto('/bands');
	await expect(page.getByText('126–140').first()).toBeVisible();
});

test('a passkey that was removed opens nothing any more', async ({ page, phone }) => {
	await authenticatorOf(page);
	await phone.screen();
	await page.goto('/account');
	await ready(page);
	await page.getByRole('button', { name: 'Add a passkey' }).click();
	await expect(page.getByText(/^Passkey from /)).toBeVisible();
	await page.getByRole('listitem').filter({ hasText: 'Passkey from' }).getByRole('button').click();
	await expect(page.getByText(/^Passkey from /)).toHaveCount(0);
	await page.getByRole('button', { name: 'Forget me here' }).click();
	await page.goto('/link');
	await ready(page);
	await page.getByRole('button', { name: 'Come back with a passkey' }).click();
	await expect(page.getByText('That passkey did not work here.')).toBeVisible();
	await page.goto('/bands');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('No result yet');
});

test('a phone without a passkey says so and stays as it was', async ({ page }) => {
	await authenticatorOf(page);
	await page.goto('/link');
	await ready(page);
	await page.getByRole('button', { name: 'Come back with a passkey' }).click();
	await expect(page.getByText('That passkey did not work here.')).toBeVisible();
});
