import { describe, expect, it } from 'vitest';
import * as attendance from '$lib/server/attendance.ts';
import * as groupExport from '$lib/server/group-export.ts';
import * as members from '$lib/server/members.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as nameImport from '$lib/server/name-import.ts';
import { join, makeCoach, makeGroup, makeHelper, nameAlone } from './coached-group.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';

describe.each(DATABASES)('names from a list on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const coach = await makeCoach(here);
		return { coachId: coach.coachId, groupId: await makeGroup(here, coach) };
	}

	type At = Awaited<ReturnType<typeof led>>;
	const add = ({ coachId, groupId }: At, names: readonly string[]) =>
		nameImport.addNames(here.database, coachId, groupId, names, NOW);
	const names = async ({ coachId, groupId }: At) =>
		(await members.list(here.database, coachId, groupId)).map(({ name }) => name);

	it('are added, those of today and the five hundredth', async () => {
		const at = await led();
		expect(await add(at, ['راشد', "D'Arcy"])).toEqual({ kind: 'added', count: 2 });
		const many = Array.from({ length: 500 }, (_, i) => `Runner ${i}`);
		expect(await add(at, many)).toEqual({ kind: 'added', count: 500 });
		expect(await names(at)).toHaveLength(502);
	});

	it('that are there already stay as they are', async () => {
		const at = await led();
		const id = await nameAlone(here, at.groupId, "Siobhán O'Neill");
		await join(here, at.groupId, {}, 'Ines');
		const list = ['siobhán o’neill', 'INES', 'Tobias'];
		const compared = await nameImport.compare(here.database, at.coachId, at.groupId, list);
		expect(compared).toEqual({ fresh: ['Tobias'], known: ['siobhán o’neill', 'INES'] });
		expect(await add(at, list)).toEqual({ kind: 'added', count: 1 });
		expect(await add(at, list)).toEqual({ kind: 'added', count: 0 });
		expect(await names(at)).toEqual(['Ines', "Siobhán O'Neill", 'Tobias']);
		expect(await members.find(here.database, at.coachId, at.groupId, id)).not.toBeNull();
	});

	it('sent twice at once are added once', async () => {
		const at = await led();
		const counts = await Promise.all([add(at, ['Ines']), add(at, ['Ines'])]);
		expect(counts.map((one) => 'count' in one && one.count).sort()).toEqual([0, 1]);
		expect(await names(at)).toEqual(['Ines']);
	});

	it('are all added, or none', async () => {
		const at = await led();
		// A name that the database cannot keep: the one before it must not stay either.
		const broken = [...Array.from({ length: 3 }, (_, i) => `Runner ${i}`), null as never];
		await expect(
			here.database.transaction().execute(async (step) => {
				await members.add(step, at.groupId, broken, NOW);
			})
		).rejects.toThrow();
		expect(await names(at)).toEqual([]);
	});

	it('may be added by a helper, and by no other coach', async () => {
		const [at, other] = [await led(), await led()];
		const helper = await makeHelper(here, at.groupId);
		expect(await add({ ...at, coachId: helper.coachId }, ['Ines'])).toMatchObject({ count: 1 });
		expect(await add({ ...at, coachId: other.coachId }, ['Tobias'])).toEqual({
			kind: 'not-found'
		});
		expect(await names(at)).toEqual(['Ines']);
	});

	describe('and back into a file', () => {
		it('go with attendance, and without one result', async () => {
			const at = await led();
			const { memberId, runnerId } = await join(here, at.groupId, { 'age.years': 52 }, 'Ines');
			const gone = await join(here, at.groupId, {}, 'Tobias');
			const mark = (id: string, onDate: string) =>
				attendance.mark(here.database, at.coachId, at.groupId, id, onDate, NOW);
			await mark(memberId, '2026-11-18');
			await mark(memberId, '2026-11-25');
			await mark(gone.memberId, '2026-11-18');
			await memberships.leave(here.database, gone.runnerId, gone.memberId, NOW);
			await memberships.share(here.database, runnerId, memberId, false, NOW);
			const taken = await groupExport.of(here.database, at.coachId, at.groupId);
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
				]
			});
			const text = JSON.stringify(taken);
			expect(text).not.toContain(runnerId);
			expect(text).not.toMatch(/walk|run-|not-today|pulse/);
		});

		it('not for a coach of another group', async () => {
			const [at, other] = [await led(), await led()];
			expect(await groupExport.of(here.database, other.coachId, at.groupId)).toBeNull();
		});
	});
});
