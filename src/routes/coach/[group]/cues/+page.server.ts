import type { RequestEvent } from '@sveltejs/kit';
import { phasesOf } from '$lib/outing/outing.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import { lengthOf, startsOf } from '$lib/outing/plain-outing.ts';
import { usualOuting } from '$lib/outing/usual-outing.ts';
import { isLocalDate } from '$lib/calendar/local-date.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import type { PageServerLoad } from './$types';
import { notFound } from '../../../not-found.ts';
import { needPrintable } from '../need-printable.ts';

type Needed = Awaited<ReturnType<typeof needPrintable>>;

export const load: PageServerLoad = async (event) => {
	const needed = await needPrintable(event);
	const { name, meetingPoint, defibrillator, firstAider } = needed.group;
	const written = await chosen(event, needed);
	const phases = phasesOf(written?.outing ?? usualOuting(''));
	const starts = startsOf(phases);
	return {
		group: {
			name,
			emergencyNumber: needed.emergencyNumber,
			meetingPoint,
			defibrillator,
			firstAider
		},
		/** Null for the plain outing, which nobody wrote. */
		name: written?.outing.name ?? null,
		/** Of the library; null for what is set for a day. */
		planId: written && 'revision' in written ? written.id : null,
		outing: phases.map(({ kind, seconds, cue }, i) => ({
			kind,
			seconds,
			cue,
			startSeconds: starts[i] ?? 0,
			effort: phaseTargets[kind].effort
		})),
		length: lengthOf(phases)
	};
};

/** The group's outing, of a day or of its library, that the address names; null where it names none. */
async function chosen({ url }: Pick<RequestEvent, 'url'>, needed: Needed) {
	const { database, coach, group } = needed;
	const day = url.searchParams.get('day');
	if (day !== null) {
		const [set] = isLocalDate(day)
			? await plannedOutings.list(database, coach.coachId, group.id, { from: day, until: day })
			: [];
		return set ?? notFound();
	}
	const id = url.searchParams.get('outing');
	if (id === null) return null;
	const holder = { coach, groupId: group.id };
	const plan = /^[0-9a-z-]{1,60}$/.test(id) && (await outingPlans.find(database, holder, id));
	return plan || notFound();
}
