import { describe, expect, it } from 'vitest';
import * as attendance from '$lib/server/attendance.ts';
import * as consents from '$lib/server/consents.ts';
import * as events from '$lib/server/events.ts';
import * as groups from '$lib/server/groups.ts';
import * as memberSteps from '$lib/server/member-steps.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import * as readings from '$lib/server/readings.ts';
import * as roster from '$lib/server/roster.ts';
import * as screenings from '$lib/server/screenings.ts';
import { openVault, type Vault } from '$lib/server/vault.ts';
import { enter, join, makeCoach, makeGroup, makeHelper, nameAlone } from './coached-group.ts';
import { DATABASES, DAY, freshKey, inHouse, MINUTE, NOW } from './in-house.ts';
import { screened, ZONE } from './sample.ts';
import { plainWishes, unevenRuns } from './sample-outing.ts';

/** Changes to the answers of an active adult of 34 with nothing flagged. Invented. */
const LEADS_TO = {
	mayRun: {},
	settlingIn: { 'act.days': 1, 'act.minutes': 20, 'act.months': 'lt3', 'act.hard': 'no' },
	mayWalk: { 'age.years': 52, 'act.hard': 'no' },
	byTalk: { 'meds.rate': 'yes', 'meds.why': 'minor' },
	askFirst: { 'signs.other': ['ankles'] },
	askToday: { 'chest.pain': ['exercise'] }
} as const;

describe.each(DATABASES)('the roster on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const group = await groups.ofCoach(here.database, coach.coachId, groupId);
		if (!group) throw new Error('no group');
		return { coach, group };
	}

	const look = (at: readings.Reader, now = NOW, vault: Vault = here.vault) =>
		roster.of(here.database, vault, at, now);
	const words = async (at: readings.Reader, now = NOW) =>
		Object.fromEntries((await look(at, now)).map(({ name, state }) => [name, state.word]));

	it('has a word for everybody, and no order but the alphabet', async () => {
		const at = await led();
		const { id } = at.group;
		await join(here, id, LEADS_TO.mayRun, 'Mei-Lin');
		await join(here, id, LEADS_TO.settlingIn, 'Ines');
		await join(here, id, LEADS_TO.mayWalk, 'Tobias');
		await join(here, id, LEADS_TO.byTalk, 'راشد');
		await join(here, id, LEADS_TO.askFirst, "Gwen D'Arcy");
		await join(here, id, LEADS_TO.askToday, 'Dagny');
		await enter(here, id, await here.runner(), 'Pavel');
		await nameAlone(here, id, 'Bram');
		expect((await look(at)).map(({ name, state }) => [name, state.word])).toEqual([
			['Bram', 'not-joined'],
			['Dagny', 'not-today'],
			["Gwen D'Arcy", 'not-today'],
			['Ines', 'may-run'],
			['Mei-Lin', 'may-run'],
			['Pavel', 'not-finished'],
			['Tobias', 'may-walk'],
			['راشد', 'may-run-by-talk']
		]);
		const by = Map.groupBy(await look(at), ({ name }) => name);
		// Twelve calendar months from the 24th, the day of the answers, less a day.
		expect(by.get('Mei-Lin')?.[0]?.state).toEqual({
			open: true,
			word: 'may-run',
			pulse: 'on',
			settlingInUntil: null,
			longestRunSeconds: null,
			validUntil: '2027-11-23',
			endsSoon: false
		});
		expect(by.get('Ines')?.[0]).toMatchObject({
			state: { settlingInUntil: '2026-12-09' },
			next: 'walk-first'
		});
		expect(by.get('راشد')?.[0]).toMatchObject({ state: { pulse: 'off' }, next: 'outing' });
	});

	it('shows the same row for everything that is not for today', async () => {
		const at = await led();
		const { id } = at.group;
		const { database, vault } = here;
		await join(here, id, LEADS_TO.askFirst, 'a');
		await join(here, id, LEADS_TO.askToday, 'b');
		const ill = await here.runner();
		await screened(here, ill, { 'ill.today': 'yes' }, NOW);
		await enter(here, id, ill, 'c');
		const signed = await join(here, id, LEADS_TO.mayRun, 'd');
		const sign = { source: 'prompter', signs: ['chest'], happenedAt: NOW, timeZone: ZONE } as const;
		await events.record(database, vault, signed.runnerId, sign, NOW);
		const rows = (await look(at)).map(({ memberId: _, name: __, ...row }) => JSON.stringify(row));
		expect(rows).toHaveLength(4);
		expect(new Set(rows).size).toBe(1);
		expect(rows[0]).toContain('not-today');
	});

	it('holds no reason, no answer, no age and no beat', async () => {
		const at = await led();
		for (const [name, changes] of Object.entries(LEADS_TO)) {
			await join(here, at.group.id, changes, name);
		}
		const seen = JSON.stringify((await look(at)).map(({ memberId: _, ...row }) => row));
		expect(seen).not.toMatch(/[RHSA]-[A-Z]|"\w+":\d|years|reason|medicine|chest/);
	});

	it('follows a newer result at once', async () => {
		const at = await led();
		const { runnerId } = await join(here, at.group.id, LEADS_TO.mayRun, 'Ines');
		expect(await words(at)).toEqual({ Ines: 'may-run' });
		await screened(here, runnerId, LEADS_TO.askFirst, NOW + MINUTE);
		expect(await words(at, NOW + MINUTE)).toEqual({ Ines: 'not-today' });
		await screenings.invalidate(here.database, runnerId, NOW + MINUTE);
		expect(await words(at, NOW + MINUTE)).toEqual({ Ines: 'answer-again' });
	});

	it('warns in the last month, and asks to answer again after the last day', async () => {
		const at = await led();
		await join(here, at.group.id, LEADS_TO.mayRun, 'Pavel');
		const on = async (utc: number) => (await look(at, utc))[0]?.state;
		expect(await on(Date.UTC(2027, 9, 22, 9))).toMatchObject({ endsSoon: false });
		expect(await on(Date.UTC(2027, 9, 23, 9))).toMatchObject({ endsSoon: true });
		expect(await on(Date.UTC(2027, 10, 23, 9))).toMatchObject({ word: 'may-run', endsSoon: true });
		expect(await on(Date.UTC(2027, 10, 24, 9))).toEqual({ open: false, word: 'answer-again' });
	});

	it('says only that it is not shared, once a runner takes it back', async () => {
		const at = await led();
		const { runnerId, memberId } = await join(here, at.group.id, LEADS_TO.mayWalk, 'Ines');
		await memberships.share(here.database, runnerId, memberId, false, NOW);
		expect(await look(at)).toMatchObject([
			{ state: { open: false, word: 'not-shared' }, next: 'talk', shares: false }
		]);
		await memberships.share(here.database, runnerId, memberId, true, NOW);
		expect(await words(at)).toEqual({ Ines: 'may-walk' });
		await consents.withdraw(here.database, runnerId, NOW);
		expect(await words(at)).toEqual({ Ines: 'not-shared' });
		await memberships.leave(here.database, runnerId, memberId, NOW);
		expect(await look(at)).toEqual([]);
	});

	it('says who is here today and when somebody was there last', async () => {
		const at = await led();
		const { memberId } = await join(here, at.group.id, LEADS_TO.mayRun, 'Ines');
		const mark = (onDate: string) =>
			attendance.mark(here.database, at.coach.coachId, at.group.id, memberId, onDate, NOW);
		await mark('2026-11-18');
		expect(await look(at)).toMatchObject([{ isHereToday: false, lastOutingOn: '2026-11-18' }]);
		await mark('2026-11-25');
		expect(await look(at)).toMatchObject([{ isHereToday: true, lastOutingOn: '2026-11-25' }]);
	});

	it('has the same row for one of them alone, and writes that one down alone', async () => {
		const at = await led();
		const one = await join(here, at.group.id, LEADS_TO.byTalk, 'Ines');
		const other = await join(here, at.group.id, LEADS_TO.mayRun, 'Tobias');
		const find = (who: readings.Reader, memberId: string) =>
			roster.find(here.database, here.vault, who, memberId, NOW);
		const row = await find(at, one.memberId);
		expect(await readings.list(here.database, one.runnerId)).toHaveLength(1);
		expect(await readings.list(here.database, other.runnerId)).toEqual([]);
		expect(row).toEqual((await look(at))[0]);
		const stranger = await led();
		expect(await find(stranger, one.memberId)).toBeNull();
		expect(await find({ ...at, coach: stranger.coach }, one.memberId)).toBeNull();
	});

	it('asks the database as often for thirty runners as for one', async () => {
		const queriesFor = async (count: number) => {
			const at = await led();
			const first = await join(here, at.group.id, LEADS_TO.mayRun, 'Runner 0');
			for (let i = 1; i < count; i += 1) {
				await enter(here, at.group.id, await here.runner(), `Runner ${i}`);
			}
			let queries = 0;
			const counting = here.database.withPlugin({
				transformQuery: ({ node }) => {
					queries += 1;
					return node;
				},
				transformResult: async ({ result }) => result
			});
			const rows = await roster.of(counting, here.vault, at, NOW);
			expect(rows).toHaveLength(count);
			expect(rows.find(({ memberId }) => memberId === first.memberId)?.state.open).toBe(true);
			return queries;
		};
		const one = await queriesFor(1);
		expect(one).toBeGreaterThan(5);
		expect(await queriesFor(30)).toBe(one);
	});

	it('has the next outing of each at their own step, read as often for many as for few', async () => {
		const at = await led();
		const { id } = at.group;
		const { memberId } = await join(here, id, LEADS_TO.mayRun, 'Ines');
		await join(here, id, LEADS_TO.mayWalk, 'Tobias');
		const next = async (vault?: Vault) =>
			Object.fromEntries((await look(at, NOW, vault)).map((row) => [row.name, row.nextOuting]));
		expect(await next()).toEqual({ Ines: null, Tobias: null });
		const days = ['2026-11-23', '2026-11-26', '2026-11-30'];
		const planned = days.map((onDate, index) => ({
			number: index + 1,
			week: 1,
			onDate,
			outing: { ...unevenRuns, name: `Outing ${index + 1}` }
		}));
		const words = { inputs: plainWishes, startsOn: days[0]!, weekdays: [1, 4], holidays: [] };
		await programmes.make(here.database, here.vault, at.coach, id, { words, planned }, NOW);
		const step = { memberId, outingsAhead: -1 };
		await memberSteps.set(here.database, at.coach, id, step, NOW);
		expect(await next()).toEqual({
			Ines: { onDate: days[1], name: 'Outing 1', outingsAhead: -1 },
			Tobias: { onDate: days[1], name: 'Outing 2', outingsAhead: 0 }
		});
		// An outing by itself is nobody's step.
		const alone = { onDate: '2026-11-25', outing: { ...unevenRuns, name: 'By the canal' } };
		await plannedOutings.plan(here.database, at.coach.coachId, id, alone);
		expect((await next())['Ines']).toEqual({
			onDate: '2026-11-25',
			name: 'By the canal',
			outingsAhead: 0
		});
		await here.database.updateTable('planned_outing').set({ outing: '{' }).execute();
		expect(await next()).toEqual({ Ines: null, Tobias: null });
	});

	it('is empty for a coach of another group, and nothing is written', async () => {
		const [at, other] = [await led(), await led()];
		const { runnerId } = await join(here, at.group.id, LEADS_TO.mayRun, 'Ines');
		expect(await look({ coach: other.coach, group: at.group })).toEqual([]);
		expect(await readings.list(here.database, runnerId)).toEqual([]);
	});

	it('writes down a day and coach that a result was read, how often, and when last', async () => {
		const at = await led();
		const helper = await makeHelper(here, at.group.id);
		const { runnerId, memberId } = await join(here, at.group.id, LEADS_TO.mayRun, 'Ines');
		await look(at);
		await look(at, NOW + MINUTE);
		await look({ ...at, coach: helper }, NOW + 2 * MINUTE);
		await look(at, NOW + DAY);
		const read = await readings.list(here.database, runnerId);
		const seen = read.map(({ coachName, what, at: first, times, lastAt }) => {
			return { coachName, what, first, times, lastAt };
		});
		const odile = { coachName: 'Odile Marr', what: 'result' };
		const bram = { coachName: 'Bram Holt', what: 'result' };
		expect(seen).toEqual([
			{ ...odile, first: NOW + DAY, times: 1, lastAt: NOW + DAY },
			{ ...bram, first: NOW + 2 * MINUTE, times: 1, lastAt: NOW + 2 * MINUTE },
			{ ...odile, first: NOW, times: 2, lastAt: NOW + MINUTE }
		]);
		await memberships.share(here.database, runnerId, memberId, false, NOW);
		await look(at, NOW + 2 * DAY);
		expect(await readings.list(here.database, runnerId)).toHaveLength(3);
	});

	it('closes with the wrong key, and closes the one row that cannot be read', async () => {
		const at = await led();
		await join(here, at.group.id, LEADS_TO.mayRun, 'Ines');
		const broken = await join(here, at.group.id, LEADS_TO.mayRun, 'Tobias');
		await here.database
			.updateTable('screening_result')
			.set({ sealed: 'AAAA' })
			.where('runner_id', '=', broken.runnerId)
			.execute();
		expect(await words(at)).toEqual({ Ines: 'may-run', Tobias: 'not-today' });
		const wrong = await openVault(here.database, freshKey());
		const states = (await look(at, NOW, wrong)).map(({ state }) => state);
		expect(states).toEqual([
			{ open: false, word: 'not-today' },
			{ open: false, word: 'not-today' }
		]);
	});
});
