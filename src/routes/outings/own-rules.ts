import { redirect } from '@sveltejs/kit';
import { runnerOuting } from '$lib/guidance/runner-outing.ts';
import { kindsNotOpen } from '$lib/outing/kinds-not-open.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { phaseKinds } from '$lib/outing/phase.ts';
import { runsTooLong } from '$lib/outing/runs-too-long.ts';
import { longestRunNow } from '$lib/outing/settling-in.ts';
import type { Signed } from '$lib/server/auth.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import type { House } from '$lib/server/open-house.ts';
import type { LocalDate } from '$lib/screening/types.ts';

/** What a runner may write into an outing of their own now. */
export async function ownRules(house: House, runner: Signed, now: number, today: LocalDate) {
	const { access, guidance, course } = await effortBands.of(house, runner, now, today);
	if (!access.allowed || !guidance.open) redirect(303, '/screening/result');
	const walksOnly = !guidance.mayRun || guidance.settlingIn.kind === 'going-on';
	const kinds = phaseKinds.filter((kind) => !walksOnly || kind !== 'steady-run');
	const longestRunSeconds = walksOnly ? null : longestRunNow(guidance.settlingIn);
	return {
		course,
		pulse: guidance.pulse,
		walksOnly,
		kinds,
		/** Null where nothing limits a run. */
		longestRunSeconds,
		alsoWrong: (outing: Outing) => [
			...kindsNotOpen(outing, kinds),
			...(longestRunSeconds === null ? [] : runsTooLong(outing, longestRunSeconds))
		],
		asDone: (outing: Outing) => runnerOuting(outing, access, guidance)
	};
}
