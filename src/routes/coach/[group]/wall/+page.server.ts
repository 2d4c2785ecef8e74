import { phaseRange } from '$lib/guidance/allowed-range.ts';
import { cutTo } from '$lib/guidance/band-setting.ts';
import { phaseKinds, phaseTargets } from '$lib/outing/phase.ts';
import * as bandSettings from '$lib/server/band-settings.ts';
import type { PageServerLoad } from './$types';
import { notFound } from '../../../not-found.ts';
import { needPrintable } from '../need-printable.ts';

/** Phase, line and the effort that is common to the group: nothing about anybody in it. */
export const load: PageServerLoad = async (event) => {
	const { database, coach, group } = await needPrintable(event);
	const subject = { groupId: group.id, memberId: null };
	const history = (await bandSettings.history(database, coach.coachId, subject)) ?? notFound();
	return {
		phases: phaseKinds.map((kind) => {
			const setting = history.find(({ phase }) => phase === kind)?.setting;
			const usual = phaseTargets[kind];
			const { effort } = setting ? cutTo(phaseRange(kind), usual, setting).target : usual;
			return { kind, effort };
		})
	};
};
