import { describe, expect, it } from 'vitest';
import * as members from '$lib/server/members.ts';
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
});
