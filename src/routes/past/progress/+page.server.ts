import { changeOf, DAYS_NEEDED, OUTINGS_NEEDED } from '$lib/guidance/progress/change.ts';
import { doneWeeks, grewFast } from '$lib/guidance/progress/done-weeks.ts';
import { atTheSameEffort, type Compared } from '$lib/guidance/progress/same-effort.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import { passOver } from '$lib/server/readable.ts';
import { unitsOf } from '../../bands/units-of.ts';
import { needOpen } from '../../standing-of.ts';
import type { PageServerLoad } from './$types';

/** Further back nothing is compared. Our own choice, no source. */
const LOOKED_AT = 100;
const WEEKS = 8;

/**
 * Behind the gate, as every number of a runner's own is. Runs are compared only for whoever may run
 * now; there is no pulse on the page, so it is the same with pulse off.
 */
export const load: PageServerLoad = async (event) => {
	const { house, runner, now, today, chosen } = await needOpen(event);
	const { guidance } = await effortBands.of(house, runner, now, today);
	const runsAreOpen = guidance.open && guidance.mayRun && guidance.settlingIn.kind !== 'going-on';
	const { database, vault } = house;
	const all = await pastOutings.newest(database, vault, runner.runnerId, LOOKED_AT, passOver);
	const begun = all.filter(({ started }) => started !== null);
	const kinds: readonly Compared[] = runsAreOpen ? ['steady-run', 'brisk-walk'] : ['brisk-walk'];
	const weeks = doneWeeks(begun, today, WEEKS);
	return {
		unit: unitsOf(chosen.settings).speed,
		needed: { outings: OUTINGS_NEEDED, days: DAYS_NEEDED },
		compared: kinds
			.map((kind) => ({ kind, speeds: atTheSameEffort(begun, kind) }))
			.filter(({ speeds }, nth) => nth === 0 || speeds.length > 0)
			.map(({ kind, speeds }) => ({ kind, speeds, change: changeOf(speeds) })),
		hasOutings: begun.length > 0,
		weeks,
		showsRuns: weeks.some(({ runningSeconds }) => runningSeconds > 0),
		grewFast: runsAreOpen && grewFast(weeks)
	};
};
