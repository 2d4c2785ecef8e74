import { randomUUID } from 'node:crypto';
import type { APIRequestContext } from '@playwright/test';
import { expect, inHouseOfItsOwn, type LanternStreet } from './lantern-street.ts';
import { Phone } from './phone.ts';

// Our own rules, no source; people are invented.

const test = inHouseOfItsOwn();

test.describe.configure({ timeout: 120_000 });

const PASSWORD = 'four green umbrellas';
const words = { qualification: '', password: PASSWORD };

const linkIn = (page: string) => /\/coach\/invited\/[\w-]+/.exec(page)?.[0] ?? '';

/** Makes an invitation to help with the group; answers its place. */
async function invitation({ coach, path }: LanternStreet): Promise<string> {
	return linkIn(await (await coach.send(`${path}/settings?/inviteCoach`)).text());
}

/** Somebody who helps with the group. */
async function helper(lantern: LanternStreet, context: APIRequestContext, name: string) {
	const who = new Phone(context, lantern.coach.url);
	const email = `${name.toLowerCase()}-${randomUUID()}@lantern.example`;
	await who.send(`${await invitation(lantern)}?/signUp`, { ...words, name, email });
	await who.send('/coach/sign-in', { ...words, email, stay: 'yes' });
	expect((await who.get(lantern.path)).status()).toBe(200);
	return who;
}

/** Who leads the runner's groups, and who once read their result. */
async function knownTo(runner: Phone) {
	const file = (await (await runner.get('/account/export')).json()) as {
		groups: { groupName: string; coaches: string[] }[];
		readings: { coachName: string }[];
	};
	return {
		groups: file.groups.map(({ groupName, coaches }) => [groupName, ...coaches]),
		readers: [...new Set(file.readings.map(({ coachName }) => coachName))].sort()
	};
}

test('a coach deletes the account: only owner, then helper, then one of two owners; the group and its runners stay', async ({
	page,
	lantern,
	stranger
}) => {
	const { coach, path } = lantern;
	const ines = await lantern.join(await stranger(), 'Ines');
	const [bram, cleo] = [
		await helper(lantern, await stranger(), 'Bram'),
		await helper(lantern, await stranger(), 'Cleo')
	];
	const member = lantern.runners.get('Ines')?.memberId ?? '';
	await bram.lead(`${path}?/mark`, { member, here: 'yes' });
	expect(await (await coach.get(path)).text()).toContain('1 here today');

	// The only owner, who is the host too: nothing is deleted, and the page says what comes first.
	expect(await coach.lead('/coach/account?/delete', { sure: 'yes' })).toBe('/coach/account#delete');
	await page.goto('/coach/account');
	await expect(page.getByText('You are the only owner of these groups.')).toBeVisible();
	await expect(page.locator(`a[href="${path}"]`)).toBeVisible();
	await expect(page.getByText('You are the host, and there are other coaches.')).toBeVisible();
	expect((await ines.get('/account')).status()).toBe(200);
	expect((await coach.get(path)).status()).toBe(200);

	// A helper goes: what they did stays, and so does the group.
	expect(await bram.lead('/coach/account?/delete', { sure: 'yes' })).toBe('/coach/gone');
	expect((await bram.get(path)).headers()['location']).toContain('/coach/sign-in');
	expect(await (await coach.get(path)).text()).toContain('1 here today');
	const group = 'Lantern Street beginners';
	expect(await knownTo(ines)).toEqual({
		groups: [[group, 'Odile Marr', 'Cleo']],
		// That Bram read the result is not forgotten with his account.
		readers: ['Bram', 'Cleo', 'Odile Marr']
	});

	// Of two owners one goes, after handing over the house.
	const settings = await (await coach.get(`${path}/settings`)).text();
	const ids = [...settings.matchAll(/name="id" value="([\w-]+)"/g)].map(([, id]) => id ?? '');
	for (const id of new Set(ids)) await coach.send(`${path}/settings?/role`, { id, role: 'owner' });
	const account = await (await coach.get('/coach/account')).text();
	const heir = /<option value="([\w-]+)"[^>]*>Cleo/.exec(account)?.[1] ?? '';
	await coach.lead('/coach/account?/handOver', { id: heir });
	expect(await coach.lead('/coach/account?/delete', { sure: 'yes' })).toBe('/coach/gone');
	const roster = await (await cleo.get(path)).text();
	expect(roster).toContain('Ines');
	expect(roster).toContain('1 here today');
	expect((await cleo.get(`${path}/export.json`)).status()).toBe(200);
	expect(await knownTo(ines)).toMatchObject({ groups: [[group, 'Cleo']] });
	expect((await ines.get('/bands')).status()).toBe(200);
});
