import { json } from '@sveltejs/kit';
import { startOfDay } from '$lib/calendar/start-of-day.ts';
import { addDays } from '$lib/screening/calendar.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import * as hotDays from '$lib/server/hot-days.ts';
import * as nextMorning from '$lib/server/next-morning.ts';
import { numberToCall } from '$lib/server/number-to-call.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import { runnerOuting } from '$lib/guidance/runner-outing.ts';
import type { KeptForRunner } from '$lib/outing/kept.ts';
import { longestRunNow } from '$lib/outing/settling-in.ts';
import { ownOuting } from '$lib/outing/own-outing.ts';
import { prompter } from '$words/prompter.ts';
import { setView } from '../../bands/set-view.ts';
import { unitsOf } from '../../bands/units-of.ts';
import { phaseView, pulseView } from '../../bands/view.ts';
import { needOpen } from '../../standing-of.ts';
import { narrowerOf } from './narrower-of.ts';
import { runnerKeyOf } from '../runner-key.ts';
import type { RequestHandler } from './$types';

const DAYS_AHEAD = 14;
const DAY_MS = 24 * 60 * 60 * 1000;

/**
 * What this runner's phone may keep for a park without a network, and until when: bands as they are
 * shown, and the outings of the next fourteen days. No age, no reason, and no beat with pulse off.
 */
export const GET: RequestHandler = async (event) => {
	const { house, runner, now, today, chosen } = await needOpen(event);
	const { access, guidance, set } = await effortBands.of(house, runner, now, today);
	if (!access.allowed || !guidance.open) return json({ open: false }, { status: 403 });
	const until = addDays(today, DAYS_AHEAD);
	const at = { now, today };
	const outings = await plannedOutings.forRunner(house, runner, today, until, at);
	const hot = await hotDays.ofRunner(house.database, runner.runnerId, { from: today, until });
	const { database, vault } = house;
	const mornings = await nextMorning.answered(database, vault, runner.runnerId, today);
	const { settings, timeZone } = chosen;
	const isSettling = guidance.settlingIn.kind === 'going-on';
	const mayRun = guidance.mayRun && !isSettling;
	const running = access.startEffort === 'moderate' ? 'first-runs' : 'runs';
	const plans = await outingPlans.list(house.database, { runnerId: runner.runnerId });
	const own = plans.map(({ id, outing }) => ({ id, ...runnerOuting(outing, access, guidance) }));
	const pulse = pulseView(guidance.pulse);
	const resultEndsAt = startOfDay(addDays(access.validUntil, 1), timeZone);
	const kept: KeptForRunner<ReturnType<typeof phaseView>> = {
		open: true,
		runnerKey: runnerKeyOf(runner.runnerId),
		servedAt: now,
		grantEndsAt: Math.min(resultEndsAt, now + DAYS_AHEAD * DAY_MS),
		timeZone,
		emergencyNumber: await numberToCall(house, runner, chosen),
		mayRun,
		settlingIn: isSettling,
		longestRunSeconds: longestRunNow(guidance.settlingIn),
		pulseOn: pulse.kind === 'on',
		axis:
			pulse.kind === 'on' ? { restingBpm: pulse.restingBpm, maximumBpm: pulse.maximumBpm } : null,
		careTeamLimitBpm: pulse.careTeamLimit,
		speedUnit: unitsOf(settings).speed,
		paceUnit: unitsOf(settings).pace,
		phases: [...guidance.phases, ...guidance.others].map((phase) =>
			phaseView(phase, setView(phase, set, timeZone), unitsOf(settings))
		),
		narrower: narrowerOf(guidance, [...outings, ...own]),
		outings,
		hotDays: hot,
		answeredMornings: mornings,
		own,
		usual: runnerOuting(ownOuting(prompter.usual, mayRun ? running : 'walks'), access, guidance)
			.outing
	};
	return json(kept);
};
