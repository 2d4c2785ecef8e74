import { describe, expect, it } from 'vitest';
import type { Coach } from '$lib/server/coaches.ts';
import * as attendance from '$lib/server/attendance.ts';
import * as groupExport from '$lib/server/group-export.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import { join, makeCoach, makeGroup, makeHelper } from './coached-group.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';
import { plainWishes, unevenRuns } from './sample-outing.ts';

// Our own rules, no source. Names are invented.

describe.each(DATABASES)('a group as a file on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const coach = await makeCoach(here);
		return { coach, groupId: await makeGroup(here, coach) };
	}

	type At = { readonly coach: Coach; readonly groupId: string };
	const take = ({ coach, groupId }: At) =>
		groupExport.of(here.database, here.vault, coach, groupId);

	it('goes with attendance, and without one result', async () => {
		const at = await led();
		const { memberId, runnerId } = await join(here, at.groupId, { 'age.years': 52 }, 'Ines');
		const gone = await join(here, at.groupId, {}, 'Tobias');
		const mark = (id: string, onDate: string) =>
			attendance.mark(here.database, at.coach.coachId, at.groupId, id, onDate, NOW);
		await mark(memberId, '2026-11-18');
		await mark(memberId, '2026-11-25');
		await mark(gone.memberId, '2026-11-18');
		await memberships.leave(here.database, gone.runnerId, gone.memberId, NOW);
		await memberships.share(here.database, runnerId, memberId, false, NOW);
		const taken = await take(at);
		expect(taken).toEqual({
			group: {
				name: 'Lantern Street beginners',
				usualPlace: null,
				timeZone: 'Europe/Dublin',
				units: 'km/h',
				paceUnits: 'min/km',
				emergencyNumber: '112',
				meetingPoint: null,
				defibrillator: null,
				firstAider: null
			},
			members: [
				{
					name: 'Ines',
					addedOn: '2026-11-25',
					joinedOn: '2026-11-25',
					isSharing: false,
					attended: ['2026-11-25', '2026-11-18']
				}
			],
			attendance: [
				{ onDate: '2026-11-25', name: 'Ines' },
				{ onDate: '2026-11-18', name: 'Ines' },
				{ onDate: '2026-11-18', name: 'Tobias' }
			],
			library: [],
			programme: null,
			days: [],
			unreadable: []
		});
		const text = JSON.stringify(taken);
		expect(text).not.toContain(runnerId);
		expect(text).not.toMatch(/walk|run-|not-today|pulse/);
	});

	/** A library of two, a programme of two days, and an outing by itself. */
	async function planned(at: At) {
		const { coach, groupId } = at;
		for (const name of ['Outing 9', 'Along the canal']) {
			await outingPlans.create(here.database, at, { ...unevenRuns, name }, NOW);
		}
		const words = {
			...{ startsOn: '2026-11-30', weekdays: [1, 4], holidays: ['2026-12-24'] },
			inputs: {
				...plainWishes,
				pulse: { runShare: 0.777, walkShare: 0.444, staysInBand: 'yes' as const }
			}
		};
		const days = ['2026-11-30', '2026-12-03'].map((onDate, i) => ({
			...{ number: i + 1, week: 1, onDate, outing: unevenRuns }
		}));
		await programmes.make(here.database, here.vault, coach, groupId, { words, planned: days }, NOW);
		const alone = { onDate: '2026-12-05', outing: unevenRuns };
		await plannedOutings.plan(here.database, coach.coachId, groupId, alone);
		const [first] = await plannedOutings.list(here.database, coach.coachId, groupId);
		const marked = [first?.id ?? '', 'done', NOW] as const;
		await plannedOutings.mark(here.database, coach.coachId, groupId, ...marked);
	}

	it('holds its library, its programme and its days, and nothing of how a pulse answers', async () => {
		const at = await led();
		await planned(at);
		const taken = await take(at);
		expect(taken).toMatchObject({
			library: [
				{ ...unevenRuns, name: 'Along the canal' },
				{ ...unevenRuns, name: 'Outing 9' }
			],
			programme: {
				...{ startsOn: '2026-11-30', weekdays: [1, 4], holidays: ['2026-12-24'] },
				wishes: { weeks: plainWishes.weeks, goal: plainWishes.goal }
			},
			days: [
				{ onDate: '2026-11-30', number: 1, week: 1, state: 'done', outing: unevenRuns },
				{ onDate: '2026-12-03', number: 2, week: 1, state: 'planned', outing: unevenRuns },
				{ onDate: '2026-12-05', number: null, week: null, state: 'planned', outing: unevenRuns }
			],
			unreadable: []
		});
		expect(JSON.stringify(taken)).not.toMatch(/0\.777|0\.444|runShare|pulse|settling/i);
	});

	it('names what cannot be read, and holds the rest', async () => {
		const at = await led();
		await planned(at);
		await here.database
			.updateTable('outing_plan')
			.set({ outing: '{' })
			.where('group_id', '=', at.groupId)
			.execute();
		await here.database
			.updateTable('programme')
			.set({ weekdays: 'none' })
			.where('group_id', '=', at.groupId)
			.execute();
		const taken = await take(at);
		expect(taken).toMatchObject({ library: [], programme: null });
		expect(taken?.days).toHaveLength(3);
		expect(taken?.unreadable.map(({ table }) => table)).toEqual([
			...['outing_plan', 'outing_plan', 'programme']
		]);
	});

	it('is an owner’s to take, no helper’s, and not a coach’s of another group', async () => {
		const [at, other] = [await led(), await led()];
		expect(await take({ ...at, coach: other.coach })).toBeNull();
		expect(await take({ ...at, coach: await makeHelper(here, at.groupId) })).toBeNull();
	});
});
