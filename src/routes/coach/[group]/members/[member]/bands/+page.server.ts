import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { phaseForm } from '$lib/forms/band-setting.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as adviceConfirmations from '$lib/server/advice-confirmations.ts';
import * as bandDoubts from '$lib/server/band-doubts.ts';
import * as bandSettings from '$lib/server/band-settings.ts';
import * as memberBands from '$lib/server/member-bands.ts';
import { setMemberBand } from '$lib/server/set-member-band.ts';
import type { Actions, PageServerLoad } from './$types';
import { needMember } from '../../../need-group.ts';
import { notFound } from '../../../../../not-found.ts';
import { adviceViews } from './advice-view.ts';
import { openView } from './open-view.ts';
import { beyond, readBand, readEffort } from '../../../read-band.ts';

type Asked = Pick<RequestEvent, 'locals' | 'params' | 'request'>;

async function look(event: Omit<Asked, 'request'>) {
	const needed = await needMember(event);
	const { house, coach, group, member, now } = needed;
	const seen = await memberBands.find(house, coach, group.id, member.id, now);
	return { ...needed, seen: seen ?? notFound() };
}

export const load: PageServerLoad = async (event) => {
	const needed = await look(event);
	const { database, vault, coach, group, member, seen } = needed;
	const { today, desk } = seen;
	const advice = await adviceConfirmations.list(
		database,
		vault,
		coach.coachId,
		group.id,
		member.id
	);
	return {
		id: member.id,
		name: member.name,
		state: today,
		coach: { name: coach.name, qualification: coach.qualification },
		advice: advice && adviceViews(advice, group.timeZone),
		open:
			desk &&
			openView({
				member,
				group,
				desk,
				history: (await bandSettings.history(database, coach.coachId, subjectOf(needed))) ?? [],
				doubts: await bandDoubts.list(database, coach.coachId, group.id)
			})
	};
};

export const actions: Actions = {
	set: async (event) => {
		const { house, coach, group, member, now, seen } = await look(event);
		const sent = await event.request.formData();
		const read = seen.desk?.pulse === 'off' ? readEffort(sent) : readBand(sent);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { phase, setting } = read.value;
		const target = seen.desk?.phases.find(({ kind }) => kind === phase);
		if (target === undefined) notFound();
		const issues = beyond(setting, target.allowed);
		if (issues.length > 0) return fail(400, { issues, values: read.values });
		const done = await setMemberBand(house, coach, group.id, member.id, read.value, now);
		if (done !== 'set') notFound();
		backToPart(event, phase);
	},
	usual: async (event) => {
		const { house, coach, group, member, now } = await needMember(event);
		const phase = await phaseOf(event);
		const words = { phase, setting: null, runnerNote: null, innerNote: null };
		const done = await setMemberBand(house, coach, group.id, member.id, words, now);
		if (done !== 'set') notFound();
		backToPart(event, phase);
	},
	back: async (event) => {
		const needed = await needMember(event);
		const phase = await phaseOf(event);
		const { database, coach, now } = needed;
		const done = await bandSettings.back(database, coach, subjectOf(needed), phase, now);
		if (done === 'not-found') notFound();
		backToPart(event, phase);
	},
	seen: async (event) => {
		const { database, coach, group, now } = await needMember(event);
		const id = await idOf(event, 'doubt');
		const done = await bandDoubts.markSeen(database, coach.coachId, group.id, id, now);
		if (done !== 'seen') notFound();
		backToPart(event, 'says');
	},
	confirm: async (event) => {
		const { database, coach, group, member, now } = await needMember(event);
		const id = await idOf(event, 'advice');
		const done = await adviceConfirmations.confirm(database, coach, group.id, member.id, id, now);
		if (done !== 'confirmed') notFound();
		backToPart(event, 'advice');
	},
	unconfirm: async (event) => {
		const { database, coach, group, member, now } = await needMember(event);
		const id = await idOf(event, 'advice');
		const { coachId } = coach;
		const done = await adviceConfirmations.takeBack(
			database,
			coachId,
			group.id,
			member.id,
			id,
			now
		);
		if (done !== 'taken-back') notFound();
		backToPart(event, 'advice');
	}
};

const subjectOf = ({ group, member }: { group: { id: string }; member: { id: string } }) => ({
	groupId: group.id,
	memberId: member.id
});

async function phaseOf({ request }: Pick<Asked, 'request'>) {
	const read = readForm(await request.formData(), phaseForm);
	return read.ok ? read.value.phase : notFound();
}

async function idOf({ request }: Pick<Asked, 'request'>, field: string): Promise<string> {
	const id = (await request.formData()).get(field);
	return typeof id === 'string' ? id : notFound();
}

function backToPart({ url }: { url: URL }, part: string): never {
	redirect(303, `${url.pathname}#${part}`);
}
