import { redirect } from '@sveltejs/kit';
import { kindsNotOpen } from '$lib/outing/kinds-not-open.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { phaseKinds } from '$lib/outing/phase.ts';
import type { Signed } from '$lib/server/auth.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import type { House } from '$lib/server/open-house.ts';
import type { LocalDate } from '$lib/screening/types.ts';

/** What a runner may write into an outing of their own now. */
export async function ownRules(house: House, runner: Signed, now: number, today: LocalDate) {
	const { access, guidance } = await effortBands.of(house, runner, now, today);
	if (!access.allowed || !guidance.open) redirect(303, '/screening/result');
	const walksOnly = !guidance.mayRun || guidance.settlingIn.kind === 'going-on';
	const kinds = phaseKinds.filter((kind) => !walksOnly || kind !== 'steady-run');
	return {
		walksOnly,
		kinds,
		alsoWrong: (outing: Outing) => kindsNotOpen(outing, kinds)
	};
}
