import { beforeAll, describe, expect, it } from 'vitest';
import type { BandSetting } from '$lib/guidance/band-setting.ts';
import * as account from '$lib/server/account.ts';
import * as audit from '$lib/server/audit.ts';
import * as bandSettings from '$lib/server/band-settings.ts';
import * as bandsSet from '$lib/server/bands-set.ts';
import type { Coach } from '$lib/server/coaches.ts';
import * as memberships from '$lib/server/memberships.ts';
import { sweep } from '$lib/server/sweep.ts';
import { Unreadable } from '$lib/server/vault.ts';
import {
	enter,
	join,
	makeCoach,
	makeGroup,
	makeHelper,
	nameAlone,
	type InGroup
} from './coached-group.ts';
import { DATABASES, DAY, inHouse, MINUTE, NOW } from './in-house.ts';

// Our own rules, no source.

const gentle: BandSetting = { lowFraction: 0.45, highFraction: 0.55, effortLow: 4, effortHigh: 5 };
const firm: BandSetting = { lowFraction: 0.5, highFraction: 0.65, effortLow: 5, effortHigh: 6 };

const words = (changes: Partial<bandSettings.BandWords> = {}): bandSettings.BandWords => ({
	phase: 'steady-run',
	setting: gentle,
	runnerNote: 'As we said on Tuesday.',
	innerNote: 'Shin was sore in week 2.',
	...changes
});

describe.each(DATABASES)('bands that a coach sets on %s', (type) => {
	const here = inHouse(type);
	let coach: Coach;
	let groupId: string;
	let runner: InGroup;
	beforeAll(async () => {
		coach = await makeCoach(here);
		groupId = await makeGroup(here, coach);
	});

	const subject = (memberId: string | null = runner.memberId) => ({ groupId, memberId });
	const set = (said: Partial<bandSettings.BandWords> = {}, now = NOW, whose = subject()) =>
		bandSettings.set(here.database, coach, whose, words(said), now);
	const history = (whose = subject(), who = coach) =>
		bandSettings.history(here.database, who.coachId, whose);
	const counting = ({ runnerId }: InGroup) => bandsSet.forRunner(here.database, runnerId);
	const own = async () => (await counting(runner)).filter(({ by }) => by === 'coach');

	it('nobody has any at first', async () => {
		runner = await join(here, groupId);
		expect(await history()).toEqual([]);
		expect(await counting(runner)).toEqual([]);
	});

	it('keep who set them, when, and both notes, newest first, and nothing is written over', async () => {
		runner = await join(here, groupId);
		await set();
		await set({ setting: firm, runnerNote: null, innerNote: null }, NOW + MINUTE);
		expect(await history()).toEqual([
			{
				id: expect.any(String),
				phase: 'steady-run',
				setting: firm,
				runnerNote: null,
				innerNote: null,
				setByName: 'Odile Marr',
				setAt: NOW + MINUTE
			},
			{ ...words(), id: expect.any(String), setByName: 'Odile Marr', setAt: NOW }
		]);
	});

	it('stand in the runner’s own list of what happened, without a number', async () => {
		runner = await join(here, groupId);
		await set();
		const noted = await audit.list(here.database, runner.runnerId);
		const [entry] = (await history()) ?? [];
		expect(noted.filter(({ what }) => what === 'bands.set')).toEqual([
			{ id: expect.any(String), at: NOW, what: 'bands.set', detail: { settingId: entry?.id } }
		]);
	});

	it('set twice in one millisecond have an order all the same', async () => {
		runner = await join(here, groupId);
		await set();
		await set({ setting: firm });
		expect((await history())?.map(({ setting }) => setting)).toEqual([firm, gentle]);
	});

	it('go back to what was before, as one more entry', async () => {
		runner = await join(here, groupId);
		const back = () =>
			bandSettings.back(here.database, coach, subject(), 'steady-run', NOW + 2 * MINUTE);
		expect(await back()).toBe('nothing-before');
		await set();
		await set({ setting: firm, runnerNote: 'A little more.' }, NOW + MINUTE);
		expect(await back()).toBe('set');
		const [newest, ...before] = (await history()) ?? [];
		expect(newest).toMatchObject({ ...words(), setAt: NOW + 2 * MINUTE });
		expect(before).toHaveLength(2);
		// Once more: what was undone comes back.
		await back();
		expect((await history())?.[0]).toMatchObject({ setting: firm, runnerNote: 'A little more.' });
	});

	it('the first entry goes back to the usual band', async () => {
		runner = await join(here, groupId);
		await set();
		await bandSettings.back(here.database, coach, subject(), 'steady-run', NOW + 1);
		expect((await history())?.[0]).toMatchObject({ setting: null, runnerNote: null });
	});

	it('of one phase leave the others alone', async () => {
		runner = await join(here, groupId);
		await set();
		await set({ phase: 'warm-up-walk', setting: { ...gentle, effortHigh: 4 } }, NOW + 1);
		await bandSettings.back(here.database, coach, subject(), 'steady-run', NOW + 2);
		expect((await counting(runner)).filter(({ phase }) => phase === 'warm-up-walk')).toHaveLength(
			1
		);
	});

	it('count for the runner together with the group’s default, each with its group', async () => {
		runner = await join(here, groupId);
		await set();
		const defaults = await set({ setting: firm }, NOW + 1, subject(null));
		expect(defaults).toBe('set');
		expect(await counting(runner)).toMatchObject([
			{ by: 'coach', groupId, groupName: 'Lantern Street beginners', setting: gentle },
			{ by: 'group', groupId, setting: firm, innerNote: null }
		]);
		expect(await history(subject(null))).toHaveLength(1);
		await set({ setting: null }, NOW + 2, subject(null));
	});

	it('count in each of two groups', async () => {
		runner = await join(here, groupId);
		const other = await makeCoach(here, 'Tove Lindqvist');
		const harbour = await makeGroup(here, other, 'Harbour walkers');
		const memberId = await enter(here, harbour, runner.runnerId, 'Ines');
		await set();
		await bandSettings.set(here.database, other, { groupId: harbour, memberId }, words(), NOW + 1);
		expect((await own()).map(({ groupName }) => groupName)).toEqual([
			'Lantern Street beginners',
			'Harbour walkers'
		]);
	});

	it('no longer count, nor can be read, once the runner stops sharing or leaves', async () => {
		runner = await join(here, groupId);
		await set();
		await memberships.share(here.database, runner.runnerId, runner.memberId, false, NOW);
		expect(await counting(runner)).toEqual([]);
		expect(await history()).toBeNull();
		expect(await set()).toBe('not-found');
		await memberships.share(here.database, runner.runnerId, runner.memberId, true, NOW);
		expect(await own()).toHaveLength(1);
		await memberships.leave(here.database, runner.runnerId, runner.memberId, NOW);
		expect(await counting(runner)).toEqual([]);
		expect(await history()).toBeNull();
	});

	it('are deleted with the account, and within a day of leaving', async () => {
		const rows = async () =>
			(await here.database.selectFrom('band_setting').selectAll().execute()).filter(
				({ member_id }) => member_id === runner.memberId
			);
		runner = await join(here, groupId);
		await set();
		await account.deleteAll(here.database, runner.runnerId);
		expect(await rows()).toEqual([]);

		runner = await join(here, groupId);
		await set();
		await memberships.leave(here.database, runner.runnerId, runner.memberId, NOW);
		await sweep(here.database, NOW + DAY);
		expect(await rows()).toEqual([]);
	});

	it('are in the runner’s data file, the coach’s inner note too', async () => {
		runner = await join(here, groupId);
		await set();
		const all = await account.exportAll(here.database, here.vault, runner.runnerId, NOW);
		expect(all.bandsSet[0]).toMatchObject({ setting: gentle, innerNote: words().innerNote });
	});

	it('stay where a coach who set them is gone', async () => {
		runner = await join(here, groupId);
		const helper = await makeHelper(here, groupId);
		await bandSettings.set(here.database, helper, subject(), words(), NOW);
		await here.database.deleteFrom('user').where('id', '=', helper.coachId).execute();
		expect((await history())?.[0]).toMatchObject({ setByName: 'Bram Holt', setting: gentle });
	});

	it('that do not make sense in the store stop everything instead of being guessed', async () => {
		runner = await join(here, groupId);
		await set();
		await here.database
			.updateTable('band_setting')
			.set({ setting: JSON.stringify({ ...gentle, highFraction: 0.2 }) })
			.where('member_id', '=', runner.memberId)
			.execute();
		await expect(counting(runner)).rejects.toThrow(Unreadable);
		await expect(history()).rejects.toThrow(Unreadable);
	});

	describe('who may', () => {
		it('a helper of the group may read and set', async () => {
			runner = await join(here, groupId);
			const helper = await makeHelper(here, groupId);
			expect(await bandSettings.set(here.database, helper, subject(), words(), NOW)).toBe('set');
			expect(await history(subject(), helper)).toHaveLength(1);
		});

		it('for a coach of another group neither the group nor the runner exists', async () => {
			runner = await join(here, groupId);
			await set();
			const stranger = await makeCoach(here, 'Tove Lindqvist');
			const theirs = await makeGroup(here, stranger, 'Harbour walkers');
			for (const whose of [
				subject(),
				subject(null),
				{ groupId: theirs, memberId: runner.memberId },
				{ groupId: 'no-group', memberId: null },
				{ groupId, memberId: 'nobody' }
			]) {
				expect(await history(whose, stranger)).toBeNull();
				expect(await bandSettings.set(here.database, stranger, whose, words(), NOW)).toBe(
					'not-found'
				);
				expect(await bandSettings.back(here.database, stranger, whose, 'steady-run', NOW)).toBe(
					'not-found'
				);
			}
			expect(await history()).toHaveLength(1);
		});

		it('a name alone on the list has no bands', async () => {
			const memberId = await nameAlone(here, groupId, 'Gwen');
			expect(await set({}, NOW, subject(memberId))).toBe('not-found');
			expect(await history(subject(memberId))).toBeNull();
		});
	});
});
