import { fail, redirect } from '@sveltejs/kit';
import { programmeStart } from '$lib/guidance/expected/programme-start.ts';
import * as memberBands from '$lib/server/member-bands.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import type { Actions, PageServerLoad } from './$types';
import { needOwner } from '../../need-group.ts';
import { notFound } from '../../../../not-found.ts';
import { calendarDays } from '../calendar-days.ts';
import { isNotPast } from '../over.ts';
import { planner } from '../planner.ts';
import { weekRows } from '../week-rows.ts';
import { usualWishes } from './usual-wishes.ts';
import { wished, type Met } from './wished.ts';

type Asked = Parameters<typeof needOwner>[0];

async function need(event: Asked) {
	const needed = await needOwner(event);
	const { house, database, vault, coach, group, now } = needed;
	const seen = (await memberBands.list(house, coach, group.id, now)) ?? notFound();
	const start = programmeStart(seen.map(({ course }) => course));
	// Whoever has pulse off has no course, and may settle in all the same.
	const settlingIn =
		start.settlingIn || seen.some(({ today }) => today.open && today.settlingInUntil !== null);
	const planned = await plannedOutings.list(database, coach.coachId, group.id);
	const before = await programmes.current(database, vault, coach.coachId, group.id);
	return { ...needed, seen, start: { ...start, settlingIn }, planned, before };
}

type Needed = Awaited<ReturnType<typeof need>>;

export const load: PageServerLoad = async (event) => {
	const { group, seen, start, before, planned, today } = await need(event);
	const own = planned.filter(({ programmeId }) => programmeId === before?.id);
	const toCome = own.filter((one) => isNotPast(one, today)).length;
	return {
		unit: group.units,
		usual: usualWishes(start, group.units, today),
		settlingIn: start.settlingIn,
		runnersKnown: start.runnersKnown,
		runners: seen.length,
		mayRun: seen.filter(({ today: word }) => word.open && word.word !== 'may-walk').length,
		before: before && {
			seen: `${before.id} ${before.revision}`,
			toCome,
			over: own.length - toCome
		}
	};
};

export const actions: Actions = {
	look: async (event) => {
		const needed = await need(event);
		const met = asked(await event.request.formData(), needed);
		if (met.kind === 'refused') return fail(400, met);
		const { kind, values } = met;
		return { kind, values, preview: previewOf(met, needed) };
	},
	keep: async (event) => {
		const needed = await need(event);
		const { database, vault, coach, group, now, before } = needed;
		const form = await event.request.formData();
		const met = asked(form, needed);
		if (met.kind === 'refused') return fail(400, met);
		const { values, words } = met;
		const preview = previewOf(met, needed);
		const sent = form.get('seen') ?? '';
		const notKept = (why: { notSure?: true; meanwhile?: true }) =>
			fail(400, { kind: 'met' as const, values, preview, ...why });
		if (sent !== (before === null ? '' : `${before.id} ${before.revision}`)) {
			return notKept({ meanwhile: true });
		}
		if (before !== null && form.get('replace') !== 'yes') return notKept({ notSure: true });
		const making = { words, planned: planner, instead: before };
		const made = await programmes.make(database, vault, coach, group.id, making, now);
		if (made.kind === 'not-found') notFound();
		if (made.kind !== 'made') return notKept({ meanwhile: true });
		redirect(303, `/coach/${group.id}/programme?made`);
	}
};

function asked(form: FormData, { group, start, today }: Needed) {
	return wished(form, { unit: group.units, pulse: start.pulse, today });
}

/** The weeks and the days that would come of the wishes. */
function previewOf({ weeks, words }: Met, { seen, planned, today }: Needed) {
	const days = planner(words, calendarDays(planned, null), today) ?? [];
	return {
		...weekRows(weeks, seen),
		outings: days.length,
		firstOn: days[0]?.onDate ?? words.startsOn,
		lastOn: days.at(-1)?.onDate ?? words.startsOn
	};
}
