import type { Cookies } from '@sveltejs/kit';
import { describe, expect, it } from 'vitest';
import * as groupCoaches from '$lib/server/group-coaches.ts';
import * as groups from '$lib/server/groups.ts';
import * as sharedTablet from '$lib/server/shared-tablet.ts';
import { openVault } from '$lib/server/vault.ts';
import { Browser } from './browser.ts';
import { enter, makeCoach, makeGroup, makeHelper } from './coached-group.ts';
import { DATABASES, DAY, freshKey, inHouse, MINUTE, NOW } from './in-house.ts';

const HOUR = 60 * MINUTE;

/** A browser's cookies, as far as a page sees them. */
function jar() {
	const kept = new Map<string, { value: string; options: Record<string, unknown> }>();
	const cookies = {
		get: (name: string) => kept.get(name)?.value,
		set: (name: string, value: string, options: Record<string, unknown>) =>
			void kept.set(name, { value, options }),
		delete: (name: string) => void kept.delete(name)
	} as unknown as Cookies;
	return { kept, cookies };
}

describe.each(DATABASES)('a shared tablet on %s', (type) => {
	const here = inHouse(type);

	async function on() {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const { kept, cookies } = jar();
		const done = await sharedTablet.turnOn(here, cookies, coach, groupId, NOW, true);
		expect(done).toBe('on');
		return { coach, groupId, kept, cookies };
	}

	it('is off in a browser where nobody turned it on', async () => {
		expect(await sharedTablet.of(here, jar().cookies, NOW)).toBeNull();
	});

	it('is for one group, in a cookie that no script and no other site can read', async () => {
		const { groupId, kept, cookies } = await on();
		expect(await sharedTablet.of(here, cookies, NOW)).toEqual({
			groupId,
			groupName: 'Lantern Street beginners'
		});
		const cookie = kept.get('shared_tablet');
		expect(cookie?.options).toMatchObject({ httpOnly: true, secure: true, sameSite: 'lax' });
		expect(cookie?.value).not.toContain(groupId);
	});

	it('is turned on by a coach of the group, and by nobody else', async () => {
		const { groupId } = await on();
		const { kept, cookies } = jar();
		for (const coachId of [(await makeCoach(here)).coachId, await here.runner()]) {
			const done = sharedTablet.turnOn(here, cookies, { coachId }, groupId, NOW, true);
			expect(await done).toBe('not-found');
		}
		expect(kept.size).toBe(0);
	});

	it('cannot be written by anybody, nor moved to another house', async () => {
		const { cookies, kept } = await on();
		const value = kept.get('shared_tablet')?.value ?? '';
		const elsewhere = { ...here, vault: await openVault(here.database, freshKey()) };
		expect(await sharedTablet.of(elsewhere, cookies, NOW)).toBeNull();
		for (const forged of ['', 'on', value.slice(0, -4), `${value.slice(0, -8)}AAAAAAA=`]) {
			const browser = jar();
			browser.cookies.set('shared_tablet', forged, { path: '/' });
			expect(await sharedTablet.of(here, browser.cookies, NOW)).toBeNull();
		}
	});

	it('ends after twelve hours, when it is turned off, with the group, and with its coach', async () => {
		const one = await on();
		expect(await sharedTablet.of(here, one.cookies, NOW + 12 * HOUR - 1)).not.toBeNull();
		expect(await sharedTablet.of(here, one.cookies, NOW + 12 * HOUR)).toBeNull();
		await groups.remove(here.database, one.coach.coachId, one.groupId, NOW);
		expect(await sharedTablet.of(here, one.cookies, NOW)).toBeNull();

		const other = await on();
		const helper = await makeHelper(here, other.groupId);
		await sharedTablet.turnOn(here, other.cookies, helper, other.groupId, NOW, true);
		await groupCoaches.leave(here.database, helper.coachId, other.groupId);
		expect(await sharedTablet.of(here, other.cookies, NOW)).toBeNull();

		const third = await on();
		sharedTablet.turnOff(third.cookies);
		expect(await sharedTablet.of(here, third.cookies, NOW)).toBeNull();
	});

	it('hands a code on to one page of its group, once, within a minute, and to nobody who wrote it', () => {
		const written = { groupId: 'a group', code: 'AAAA-2222' };
		const handed = () => {
			const { cookies, kept } = jar();
			sharedTablet.handOn(here, cookies, written, NOW, true);
			const taken = (groupId: string, now: number) =>
				sharedTablet.taken(here, cookies, groupId, now);
			return { cookies, kept, taken };
		};
		const one = handed();
		const cookie = one.kept.get('tablet_code');
		expect(cookie?.value).not.toContain('AAAA');
		expect(cookie?.options).toMatchObject({ httpOnly: true, secure: true, path: '/tablet' });
		expect(one.taken('a group', NOW + 1000)).toBe('AAAA-2222');
		expect(one.taken('a group', NOW + 1000)).toBeNull();
		expect(handed().taken('another group', NOW)).toBeNull();
		expect(handed().taken('a group', NOW + MINUTE)).toBeNull();
		const forged = handed();
		forged.cookies.set('tablet_code', 'AAAA-2222', { path: '/tablet' });
		expect(forged.taken('a group', NOW)).toBeNull();
	});

	describe('after each runner', () => {
		/** A runner of a browser with our cookies in it. The sign-in library reads the real clock. */
		async function atTheTablet() {
			const browser = new Browser(here.database);
			const runner = await browser.auth.signInAnonymous(browser.headers());
			const { kept, cookies } = jar();
			for (const name of [
				'emergency_number',
				'time_zone',
				'theme',
				'invited_to',
				'shared_tablet'
			]) {
				cookies.set(name, 'x', { path: '/' });
			}
			const clear = () =>
				sharedTablet.clear(
					{ database: here.database, auth: browser.auth },
					runner,
					{ headers: browser.headers(), cookies },
					Date.now()
				);
			return { browser, runner, kept, clear };
		}

		const exists = async (userId: string) =>
			(await here.database.selectFrom('user').select('id').where('id', '=', userId).execute())
				.length > 0;

		it('nothing of theirs stays in the browser', async () => {
			const { browser, kept, clear } = await atTheTablet();
			await clear();
			expect(browser.jar.size).toBe(0);
			expect([...kept.keys()]).toEqual(['shared_tablet']);
		});

		it('nothing stays at all of who did not join', async () => {
			const { runner, clear } = await atTheTablet();
			await clear();
			expect(await exists(runner.runnerId)).toBe(false);
		});

		it('who joined stays on the list, and who made a code may still use it', async () => {
			const { runner, clear } = await atTheTablet();
			const { groupId } = await on();
			await enter(here, groupId, runner.runnerId, 'Ines');
			await clear();
			expect(await exists(runner.runnerId)).toBe(true);

			const other = await atTheTablet();
			await other.browser.auth.createDeviceCode(other.runner.runnerId, Date.now());
			await other.clear();
			expect(await exists(other.runner.runnerId)).toBe(true);
		});

		it('with another phone signed in too, only the tablet forgets', async () => {
			const { browser, runner, clear } = await atTheTablet();
			const { code } = await browser.auth.createDeviceCode(runner.runnerId, Date.now());
			const phone = new Browser(here.database);
			await phone.auth.redeemDeviceCode(code, phone.headers(), Date.now());
			await clear();
			expect(await exists(runner.runnerId)).toBe(true);
			expect(await phone.auth.session(phone.headers())).toMatchObject({
				runnerId: runner.runnerId
			});
		});

		it('where nobody was, clearing changes nothing', async () => {
			const browser = new Browser(here.database);
			const { cookies } = jar();
			const at = { headers: browser.headers(), cookies };
			const house = { database: here.database, auth: browser.auth };
			await sharedTablet.clear(house, null, at, NOW + DAY);
		});
	});
});
