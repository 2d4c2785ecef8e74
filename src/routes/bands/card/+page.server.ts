import { error, redirect } from '@sveltejs/kit';
import { pulseShares } from '$lib/guidance/pulse-shares.ts';
import { longestRunNow } from '$lib/outing/settling-in.ts';
import { addDays, localDate } from '$lib/screening/calendar.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import { numberToCall } from '$lib/server/number-to-call.ts';
import { visitor } from '$lib/server/visitor.ts';
import { longDate } from '$words/dates.ts';
import { spokenLength } from '$words/outings.ts';
import { faultText } from '$words/faults.ts';
import type { PageServerLoad } from './$types';
import { cardPhase } from '../card-phase.ts';
import { unitsOf } from '../units-of.ts';

export const load: PageServerLoad = async ({ locals: { house, runner, now }, cookies }) => {
	const chosen = await visitor(house, runner, cookies);
	const { settings, timeZone } = chosen;
	const today = localDate(now, timeZone);
	const { access, guidance } = await effortBands.of(house, runner, now, today);
	if (!access.allowed || !guidance.open) {
		if ('fault' in access) error(503, { code: 'vault', message: faultText('vault') });
		redirect(303, '/screening/result');
	}
	const { pulse, settlingIn, mayRun } = guidance;
	const longest = longestRunNow(settlingIn);
	const set = guidance.phases.flatMap((phase) =>
		phase.set.by === 'default' ? [] : phase.set.since
	);
	return {
		printedOn: longDate(today),
		setOn: set.length > 0 ? longDate(localDate(Math.max(...set), timeZone)) : null,
		isEstimate: pulse.kind === 'on' && pulse.maximum.basis !== 'supervised-test',
		card: {
			name: settings.name,
			may: !mayRun ? ('walk' as const) : access.pulse.on ? ('run' as const) : ('talk' as const),
			until: longDate(access.validUntil),
			settlingUntil:
				settlingIn.kind === 'going-on' ? longDate(addDays(today, settlingIn.daysLeft)) : null,
			longestRun: longest === null ? null : spokenLength(longest),
			phases: guidance.phases.map((phase) =>
				cardPhase(
					phase,
					phase.pulse && pulse.kind === 'on' ? pulseShares(phase.pulse, pulse) : null,
					unitsOf(settings)
				)
			),
			careTeamLimit: pulse.careTeamLimitBpm,
			emergencyNumber: await numberToCall(house, runner, chosen),
			meetingPoint: null,
			defibrillator: null
		}
	};
};
