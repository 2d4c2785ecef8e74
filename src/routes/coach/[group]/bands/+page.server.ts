import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { phaseForm } from '$lib/forms/band-setting.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { phaseRange } from '$lib/guidance/allowed-range.ts';
import { phaseKinds, type PhaseKind } from '$lib/outing/phase.ts';
import * as bandDoubts from '$lib/server/band-doubts.ts';
import * as bandSettings from '$lib/server/band-settings.ts';
import * as memberBands from '$lib/server/member-bands.ts';
import type { Actions, PageServerLoad } from './$types';
import { backView, entryView } from '../entry-view.ts';
import { beyond, readBand } from '../read-band.ts';
import { needGroup } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';
import { groupForm } from './group-form.ts';
import { groupRow } from './group-row.ts';

export const load: PageServerLoad = async (event) => {
	const { house, database, coach, group, now } = await needGroup(event);
	const part = partOf(event.url);
	const seen = (await memberBands.list(house, coach, group.id, now)) ?? notFound();
	const doubts = await bandDoubts.list(database, coach.coachId, group.id);
	const subject = { groupId: group.id, memberId: null };
	const all = (await bandSettings.history(database, coach.coachId, subject)) ?? notFound();
	const history = all.filter(({ phase }) => phase === part);
	return {
		part,
		rows: seen.map((one) => {
			const row = groupRow(one, part, group);
			const said = doubts.find(
				(doubt) =>
					doubt.memberId === one.id && doubt.phase === row.band?.kind && doubt.seenAt === null
			);
			return { ...row, says: said?.feels ?? null };
		}),
		form: groupForm(part, history),
		isSet: Boolean(history[0]?.setting),
		back: backView(history, part, group.timeZone, true),
		history: history.map((entry) => entryView(entry, group.timeZone, true))
	};
};

export const actions: Actions = {
	set: async (event) => {
		const { database, coach, group, now } = await needGroup(event);
		const read = readBand(await event.request.formData());
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { phase, setting } = read.value;
		const issues = beyond(setting, phaseRange(phase));
		if (issues.length > 0) return fail(400, { issues, values: read.values });
		const subject = { groupId: group.id, memberId: null };
		await bandSettings.set(database, coach, subject, read.value, now);
		backToPart(event, phase);
	},
	usual: async (event) => {
		const { database, coach, group, now } = await needGroup(event);
		const phase = await phaseOf(event);
		const words = { phase, setting: null, runnerNote: null, innerNote: null };
		const subject = { groupId: group.id, memberId: null };
		await bandSettings.set(database, coach, subject, words, now);
		backToPart(event, phase);
	},
	back: async (event) => {
		const { database, coach, group, now } = await needGroup(event);
		const phase = await phaseOf(event);
		const subject = { groupId: group.id, memberId: null };
		await bandSettings.back(database, coach, subject, phase, now);
		backToPart(event, phase);
	}
};

/** The part that the address names; the run, where it names none. */
function partOf({ searchParams }: URL): PhaseKind {
	return phaseKinds.find((kind) => kind === searchParams.get('part')) ?? 'steady-run';
}

async function phaseOf({ request }: Pick<RequestEvent, 'request'>) {
	const read = readForm(await request.formData(), phaseForm);
	return read.ok ? read.value.phase : notFound();
}

function backToPart({ url }: { url: URL }, part: PhaseKind): never {
	redirect(303, `${url.pathname}?part=${part}#set`);
}
