import { describe, expect, it } from 'vitest';
import * as memberships from '$lib/server/memberships.ts';
import * as movedOutings from '$lib/server/moved-outings.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import { join, makeCoach, makeGroup } from './coached-group.ts';
import { DATABASES, inHouse, NOW } from './in-house.ts';
import { plainWishes, unevenRuns } from './sample-outing.ts';

// Our own rules, no source.

const today = '2026-12-03';
const numbers = [1, 2, 1, 2];
const days = ['2026-11-26', '2026-11-30', '2026-12-07', '2026-12-10'];
const planned = days.map((onDate, index): programmes.ToPlan => ({
	number: numbers[index] ?? 1,
	week: 1,
	onDate,
	outing: unevenRuns
}));

describe.each(DATABASES)('what moved for a runner on %s', (type) => {
	const here = inHouse(type);

	async function led() {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const holidays = ['2026-11-27', '2026-12-24', '2026-12-25', '2027-06-01'];
		const words = { inputs: plainWishes, startsOn: days[0]!, weekdays: [1, 4], holidays };
		await programmes.make(here.database, here.vault, coach, groupId, { words, planned }, NOW);
		return { coach, groupId, ...(await join(here, groupId)) };
	}

	const moved = ({ runnerId }: { readonly runnerId: string }) =>
		movedOutings.forRunner(here.database, runnerId, today, '2027-03-03');

	it('is a missed day of late, a week that comes again, and the days off to come', async () => {
		const at = await led();
		const [first, second] = await plannedOutings.list(here.database, at.coach.coachId, at.groupId);
		for (const [day, state] of [
			[first, 'done'],
			[second, 'missed']
		] as const) {
			const id = day?.id ?? '';
			await plannedOutings.mark(here.database, at.coach.coachId, at.groupId, id, state, NOW);
		}
		expect(await moved(at)).toEqual([
			{
				groupId: at.groupId,
				groupName: 'Lantern Street beginners',
				missed: ['2026-11-30'],
				again: { week: 1, from: '2026-12-07' },
				free: [{ from: '2026-12-24', until: '2026-12-25' }]
			}
		]);
	});

	it('is nothing of a group that the runner left, or shares nothing with', async () => {
		const [left, quiet] = [await led(), await led()];
		expect(await moved(left)).toHaveLength(1);
		await memberships.leave(here.database, left.runnerId, left.memberId, NOW);
		await memberships.share(here.database, quiet.runnerId, quiet.memberId, false, NOW);
		expect(await moved(left)).toEqual([]);
		expect(await moved(quiet)).toEqual([]);
	});
});
