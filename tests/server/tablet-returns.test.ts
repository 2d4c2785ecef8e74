import type { RequestEvent } from '@sveltejs/kit';
import { describe, expect, it } from 'vitest';
import * as account from '$lib/server/account.ts';
import * as drafts from '$lib/server/drafts.ts';
import * as joining from '$lib/server/joining.ts';
import * as members from '$lib/server/members.ts';
import * as memberships from '$lib/server/memberships.ts';
import type { House } from '$lib/server/open-house.ts';
import * as roster from '$lib/server/roster.ts';
import { saidSince } from '$lib/server/said-since.ts';
import * as sharedTablet from '$lib/server/shared-tablet.ts';
import { sweep } from '$lib/server/sweep.ts';
import * as tabletReturns from '$lib/server/tablet-returns.ts';
import { deleteUnreachable } from '$lib/server/unreachable.ts';
import { answersAgainOnly } from '../../src/perimeter/answers-again-only.ts';
import { namesakesOf } from '../../src/routes/coach/[group]/namesakes.ts';
import { Browser } from './browser.ts';
import { enter, makeCoach, makeGroup, nameAlone } from './coached-group.ts';
import { DATABASES, DAY, inHouse, MINUTE, NOW } from './in-house.ts';
import { CLEAR, screened } from './sample.ts';

// Our own rules, no source. The sign-in library reads the real clock.

const keys = { code: Buffer.alloc(32, 9), attempts: Buffer.alloc(32, 10) };

describe.each(DATABASES)('coming back to a shared tablet on %s', (type) => {
	const here = inHouse(type);

	/** Somebody of a group, with a code and a tablet. */
	async function joined(name = 'Dagny') {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const runnerId = await here.runner();
		await screened(here, runnerId, {}, NOW - DAY);
		const memberId = await enter(here, groupId, runnerId, name);
		const browser = new Browser(here.database);
		const code = await browser.auth.createTabletReturn(runnerId, groupId, NOW);
		if (code === null) throw new Error('no code');
		return { coach, groupId, runnerId, memberId, browser, code };
	}

	const redeem = (groupId: string, code: string, now = NOW) =>
		tabletReturns.redeem(here.database, keys, groupId, code, now);

	it('a code is eight letters that are not misread, and stored as a hash alone', async () => {
		const { code, memberId } = await joined();
		expect(code).toMatch(/^[2-9A-HJKMNP-TW-Z]{4}-[2-9A-HJKMNP-TW-Z]{4}$/);
		const rows = await here.database
			.selectFrom('tablet_return')
			.selectAll()
			.where('member_id', '=', memberId)
			.execute();
		expect(rows).toHaveLength(1);
		expect(JSON.stringify(rows)).not.toContain(code.replace('-', ''));
		expect(rows[0]?.code_hash).toHaveLength(43);
	});

	it('is the same member again, however it is typed, until another one is made', async () => {
		const { groupId, runnerId, code, browser } = await joined();
		for (const typed of [code, code.toLowerCase(), ` ${code.replace('-', ' ')} `]) {
			expect(await redeem(groupId, typed)).toEqual({ runnerId });
		}
		const next = await browser.auth.createTabletReturn(runnerId, groupId, NOW);
		expect(await redeem(groupId, code)).toBe('wrong');
		expect(await redeem(groupId, next ?? '')).toEqual({ runnerId });
	});

	it('nobody who is not in the group gets one', async () => {
		const { groupId, browser, runnerId, memberId } = await joined();
		const stranger = await here.runner();
		expect(await browser.auth.createTabletReturn(stranger, groupId, NOW)).toBeNull();
		await memberships.leave(here.database, runnerId, memberId, NOW);
		expect(await browser.auth.createTabletReturn(runnerId, groupId, NOW)).toBeNull();
	});

	it('works on a tablet of that group alone', async () => {
		const { code } = await joined();
		const other = await joined();
		expect(await redeem(other.groupId, code)).toBe('wrong');
	});

	it('ends with its time, when the runner leaves, and when the coach takes them off the list', async () => {
		const one = await joined();
		expect(await redeem(one.groupId, one.code, NOW + 400 * DAY)).toBe('wrong');
		await memberships.leave(here.database, one.runnerId, one.memberId, NOW);
		expect(await redeem(one.groupId, one.code)).toBe('wrong');
		const other = await joined();
		await members.remove(here.database, other.coach.coachId, other.groupId, other.memberId, NOW);
		expect(await redeem(other.groupId, other.code)).toBe('wrong');
	});

	it('is not guessed: sixty tries an hour for a group, wherever they come from', async () => {
		const { groupId, runnerId, code } = await joined();
		for (let i = 0; i < 60; i += 1) expect(await redeem(groupId, 'AAAA-AAAA')).toBe('wrong');
		expect(await redeem(groupId, code)).toBe('too-many');
		expect(await redeem(groupId, code, NOW + 60 * MINUTE)).toEqual({ runnerId });
	});

	/** A browser that came back by its code; its clock is the real one. */
	async function cameBack() {
		const made = await joined();
		const now = Date.now();
		const cookie = { value: '' };
		const cookies = {
			get: () => cookie.value,
			set: (_: string, value: string) => void (cookie.value = value),
			delete: () => void (cookie.value = '')
		};
		await sharedTablet.turnOn(here, cookies as never, made.coach, made.groupId, now, true);
		const { browser, groupId, code } = made;
		const signed = await browser.auth.redeemTabletReturn(groupId, code, browser.headers(), now);
		if (typeof signed === 'string') throw new Error(signed);
		return { ...made, signed, cookies, now };
	}
	type Back = Awaited<ReturnType<typeof cameBack>>;

	/** What it is led to, or 'opened'. */
	async function open(back: Back, route: string, { method = 'GET', now = back.now } = {}) {
		const { browser, cookies } = back;
		const runner = await browser.auth.session(browser.headers());
		const house = { database: here.database, vault: here.vault, auth: browser.auth };
		const event = {
			route: { id: route },
			request: new Request(`http://localhost/`, { method, headers: browser.headers() }),
			cookies,
			locals: { house: house as unknown as House, now, runner, tabletReturn: null }
		} as unknown as RequestEvent;
		try {
			await answersAgainOnly({ event, resolve: () => new Response('') });
			return event.locals.runner === null ? 'as nobody' : 'opened';
		} catch (thrown) {
			const { status, location } = thrown as { status: number; location?: string };
			return location ? `${status} ${location}` : String(status);
		}
	}

	it('opens the questions, and nothing that tells anything from before', async () => {
		const back = await cameBack();
		expect(back.signed.runnerId).toBe(back.runnerId);
		for (const route of ['/screening', '/screening/questions/[n]', '/tablet/[group]', '/safety']) {
			expect(await open(back, route), route).toBe('opened');
		}
		for (const route of [
			'/account',
			'/account/export',
			'/api/auth/[...all]',
			'/bands',
			'/past',
			'/screening/advice',
			'/screening/doctor',
			'/join/[token]',
			'/a-route/of-tomorrow'
		]) {
			expect(await open(back, route), route).toBe(`303 /tablet/${back.groupId}`);
			expect(await open(back, route, { method: 'POST' }), route).toBe('403');
		}
	});

	it('is nobody after an hour, and without the tablet of the group', async () => {
		const late = await cameBack();
		expect(await open(late, '/screening', { now: late.now + 60 * MINUTE })).toBe('as nobody');
		expect(await late.browser.auth.session(late.browser.headers())).toBeNull();
		const elsewhere = await cameBack();
		elsewhere.cookies.delete();
		expect(await open(elsewhere, '/account')).toBe('as nobody');
	});

	it('never becomes a whole session when the member goes: nobody’s, or what it was', async () => {
		const back = await cameBack();
		const { coach, groupId, memberId, now } = back;
		await members.remove(here.database, coach.coachId, groupId, memberId, now);
		expect(await open(back, '/account')).toBe('as nobody');

		const withPhone = await cameBack();
		const { code } = await withPhone.browser.auth.createDeviceCode(withPhone.runnerId, Date.now());
		const phone = new Browser(here.database);
		await phone.auth.redeemDeviceCode(code, phone.headers(), Date.now());
		const { coach: led, groupId: id, memberId: member } = withPhone;
		await members.remove(here.database, led.coachId, id, member, withPhone.now);
		expect(await open(withPhone, '/account')).toBe(`303 /tablet/${id}`);
	});

	it('begins blank, and leaves nothing half answered for the next time', async () => {
		const made = await joined();
		const half = { questionId: 'heart.told', answer: 'yes', rulesetId: '2026-11', revision: null };
		await drafts.save(here.database, here.vault, made.runnerId, half, Date.now());
		const { browser, groupId, code } = made;
		await browser.auth.redeemTabletReturn(groupId, code, browser.headers(), Date.now());
		const load = () => drafts.load(here.database, here.vault, made.runnerId, Date.now());
		expect(await load()).toBeNull();
		await drafts.save(here.database, here.vault, made.runnerId, half, Date.now());
		const signed = await browser.auth.session(browser.headers());
		const cookies = { delete: () => undefined };
		const house = { database: here.database, auth: browser.auth };
		await sharedTablet.clear(house, signed, { headers: browser.headers(), cookies }, Date.now());
		expect(await load()).toBeNull();
		expect(await browser.auth.session(browser.headers())).toBeNull();
	});

	it('ends the old result with the first answer, and leaves one row with the new one', async () => {
		const { coach, groupId, memberId, runnerId } = await cameBack();
		const group = { id: groupId, name: 'Lantern Street', timeZone: 'Europe/Dublin' };
		const words = async () =>
			(await roster.of(here.database, here.vault, { coach, group }, NOW)).map(
				({ memberId: id, state }) => [id, state.word]
			);
		expect(await words()).toEqual([[memberId, 'may-run']]);
		const first = { questionId: 'age.years', answer: 34, rulesetId: '2026-11', revision: null };
		await drafts.save(here.database, here.vault, runnerId, first, NOW);
		expect(await words()).toEqual([[memberId, 'answer-again']]);
		await screened(here, runnerId, { ...CLEAR, 'signs.other': ['ankles'] }, NOW);
		expect(await words()).toEqual([[memberId, 'not-today']]);
	});

	it('tells only the reasons that were given since it opened', async () => {
		const runnerId = await here.runner();
		const since = (at: number) => saidSince(here.database, here.vault, runnerId, at);
		await screened(here, runnerId, { 'signs.other': ['ankles'] }, NOW - DAY);
		expect(await since(NOW - MINUTE)).toBeNull();
		expect([...((await since(0)) ?? [])]).toContain('R-SIGN-ANKLES');
		await screened(here, runnerId, {}, NOW);
		expect([...((await since(NOW - MINUTE)) ?? [])]).not.toContain('R-SIGN-ANKLES');
	});

	it('goes with the account, the code and the session', async () => {
		const { runnerId, memberId, signed } = await cameBack();
		await account.deleteAll(here.database, runnerId);
		const codes = here.database.selectFrom('tablet_return').where('member_id', '=', memberId);
		expect(await codes.selectAll().execute()).toEqual([]);
		expect(await tabletReturns.ofSession(here.database, signed.sessionId)).toBeNull();
	});

	it('is known as the code of its own runner alone', async () => {
		const [one, other] = [await joined(), await joined()];
		const isOf = (runnerId: string, groupId: string, code: string) =>
			one.browser.auth.isTabletReturnOf(runnerId, groupId, code, NOW);
		expect(await isOf(one.runnerId, one.groupId, one.code)).toBe(true);
		expect(await isOf(other.runnerId, one.groupId, one.code)).toBe(false);
		expect(await isOf(one.runnerId, other.groupId, one.code)).toBe(false);
		expect(await isOf(one.runnerId, one.groupId, 'AAAA-2222')).toBe(false);
	});

	it('a session that a code opened elsewhere keeps nobody who leaves', async () => {
		const { runnerId, memberId } = await cameBack();
		await memberships.leave(here.database, runnerId, memberId, NOW);
		await deleteUnreachable(here.database, [runnerId], Date.now());
		const users = here.database.selectFrom('user').select('id').where('id', '=', runnerId);
		expect(await users.execute()).toEqual([]);
	});

	it('is swept with what has ended', async () => {
		const back = await cameBack();
		await sweep(here.database, back.now + 60 * MINUTE);
		expect(await back.browser.auth.session(back.browser.headers())).toBeNull();
		expect(await redeem(back.groupId, back.code, back.now)).toEqual({ runnerId: back.runnerId });
	});

	it('who begins as new under the name of a member is two rows, and the coach is told which is older', async () => {
		const { coach, groupId, memberId, runnerId } = await joined('Dagny Vinter');
		const another = await here.runner();
		await screened(here, another, {}, NOW);
		const entered = await joining.enter(
			here.database,
			groupId,
			another,
			'dagny  vinter',
			NOW + DAY
		);
		await nameAlone(here, groupId, 'Somebody else');
		const group = { id: groupId, name: 'Lantern Street', timeZone: 'Europe/Dublin' };
		const rows = await roster.of(here.database, here.vault, { coach, group }, NOW + DAY);
		expect(namesakesOf(rows)).toEqual([
			{
				name: expect.stringMatching(/^dagny/i),
				rows: [
					{ memberId, joinedOn: '2026-11-25' },
					{ memberId: 'memberId' in entered && entered.memberId, joinedOn: '2026-11-26' }
				]
			}
		]);
		// What is put away is deleted whole: nobody could come back to it.
		await members.remove(here.database, coach.coachId, groupId, memberId, NOW + DAY);
		const left = await roster.of(here.database, here.vault, { coach, group }, NOW + DAY);
		expect(namesakesOf(left)).toEqual([]);
		const users = here.database.selectFrom('user').select('id').where('id', '=', runnerId);
		expect(await users.execute()).toEqual([]);
	});
});
