import { error, fail, redirect } from '@sveltejs/kit';
import { bandDoubtForm } from '$lib/forms/band-doubt.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { mileWalkOpen } from '$lib/guidance/mile-walk-open.ts';
import { longestRunNow } from '$lib/outing/settling-in.ts';
import { addDays, isLocalDate } from '$lib/screening/calendar.ts';
import * as bandDoubts from '$lib/server/band-doubts.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import * as nextMorning from '$lib/server/next-morning.ts';
import * as pains from '$lib/server/pains.ts';
import * as walks from '$lib/server/walks.ts';
import * as whatNext from '$lib/server/what-next.ts';
import { decimal } from '$words/numbers.ts';
import { faultText } from '$words/faults.ts';
import { notFound } from '../not-found.ts';
import { ceilingPanel, nextPanel } from '../past/next-lines.ts';
import { needOpen } from '../standing-of.ts';
import type { Actions, PageServerLoad } from './$types';
import { doubtViews } from './doubt-view.ts';
import { setView } from './set-view.ts';
import { unitsOf } from './units-of.ts';
import { ifMaximumOff, phaseView, pulseView } from './view.ts';

type Asked = Parameters<typeof needOpen>[0];

async function open(event: Asked) {
	const asked = await needOpen(event);
	const { house, runner, now, today } = asked;
	const bands = await effortBands.of(house, runner, now, today);
	const { access, guidance } = bands;
	if (!access.allowed || !guidance.open) redirect(303, '/screening/result');
	return { ...asked, ...bands, access, guidance };
}

export const load: PageServerLoad = async (event) => {
	const asked = await open(event);
	const { house, runner, now, access, guidance, set, fitness, chosen, today } = asked;
	const { settings, timeZone } = chosen;
	const { settlingIn } = guidance;
	const said = await whatNext.of(house, runner, now, today);
	const isSettling = settlingIn.kind === 'going-on';
	return {
		name: settings.name,
		heading: headingFor(guidance.mayRun, isSettling, access.pulse.on),
		until: access.validUntil,
		asked: await nextMorning.asked(house.database, house.vault, runner.runnerId, today),
		painStands: await pains.stands(house.database, runner.runnerId),
		walksByPain: access.walkOnlyByPain,
		next: said?.next ? nextPanel(said.next, unitsOf(settings).speed) : null,
		talkPulse: said?.ceiling ? ceilingPanel(said.ceiling) : null,
		plansToWalk: access.status === 'CLEARED_ALL' && !access.run,
		settling: isSettling
			? {
					walks: settlingIn.walksNeeded,
					days: settlingIn.daysLeft,
					from: addDays(today, settlingIn.daysLeft),
					walked: await walks.list(house.database, runner.runnerId),
					today
				}
			: null,
		longestRunSeconds: longestRunNow(settlingIn),
		pulse: pulseView(guidance.pulse),
		phases: guidance.phases.map((phase) =>
			phaseView(phase, setView(phase, set, timeZone), unitsOf(settings))
		),
		hasCoach: await bandDoubts.hasListener(house.database, runner.runnerId),
		doubts: doubtViews(await bandDoubts.ofRunner(house.database, runner.runnerId), timeZone),
		ifMaximumOff: ifMaximumOff(guidance),
		fitness: fitness && {
			basis: fitness.capacity.basis,
			value: decimal(fitness.capacity.mlPerKgPerMinute, 0),
			spread: decimal(fitness.capacity.spread, 1),
			on: fitness.on
		},
		mayWalkMile: mileWalkOpen(access, guidance.pulse) === 'open',
		care: guidance.care
	};
};

export const actions: Actions = {
	walked: async (event) => {
		const { house, runner, now, today } = await needOpen(event);
		await walks.record(house.database, runner.runnerId, today, now);
		redirect(303, '/bands');
	},
	notWalked: async (event) => {
		const { house, runner } = await needOpen(event);
		const on = (await event.request.formData()).get('on');
		if (!isLocalDate(on)) error(400, { code: 'bad-request', message: faultText('bad-request') });
		await walks.remove(house.database, runner.runnerId, on);
		redirect(303, '/bands');
	},
	doubt: async (event) => {
		const { house, runner, now, guidance } = await open(event);
		const read = readForm(await event.request.formData(), bandDoubtForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { phase, feels } = read.value;
		if (!guidance.phases.some(({ kind }) => kind === phase)) {
			notFound();
		}
		await bandDoubts.say(house.database, runner.runnerId, phase, feels, now);
		redirect(303, `/bands#${phase}-name`);
	}
};

function headingFor(
	mayRun: boolean,
	isSettling: boolean,
	pulseOn: boolean
): 'walk' | 'settling' | 'run' | 'talk' {
	if (!mayRun) return 'walk';
	if (isSettling) return 'settling';
	return pulseOn ? 'run' : 'talk';
}
