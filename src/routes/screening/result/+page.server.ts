import * as drafts from '$lib/server/drafts.ts';
import { gate } from '$lib/server/gate.ts';
import * as screenings from '$lib/server/screenings.ts';
import { visitor } from '$lib/server/visitor.ts';
import type { Access } from '$lib/screening/access.ts';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';
import { actionsFor } from './actions.ts';
import { onTheWay } from './on-the-way.ts';

export const load: PageServerLoad = async ({ locals, cookies }) => {
	const { house, runner, now } = locals;
	const access = await gate(house, runner, now);
	if ('fault' in access) error(503, { code: 'vault', message: 'vault' });
	const { database, vault } = house;
	const newest = runner && (await screenings.newest(database, vault, runner.runnerId));
	const draft = runner && (await drafts.load(database, vault, runner.runnerId, now));
	const { emergencyNumber } = await visitor(house, runner, cookies);
	return {
		heading: headingFor(access),
		why: access.liftable.filter(({ reason }) => reason.startsWith('R-')),
		covered: access.coveredReasons,
		pulseOff: access.allowed && !access.pulse.on ? access.pulse.reasons : [],
		starting: access.allowed ? access.reasons.filter((id) => id.startsWith('S-')) : [],
		care: access.allowed ? access.advice : [],
		until: access.allowed ? access.validUntil : null,
		urgent: !access.allowed && access.urgent,
		stopCurrent: !access.allowed && access.stopCurrent,
		closedByAdvice: !access.allowed && access.closedByAdvice.length > 0,
		actions: actionsFor(access, draft !== null),
		emergencyNumber,
		onTheWay: await onTheWay(locals, cookies),
		ruleset: newest && { id: newest.rulesetId, version: newest.rulesetVersion }
	};
};

function headingFor(access: Access) {
	if (!access.allowed) return access.code;
	if (access.status === 'CLEARED_WALK') return access.status;
	if (!access.run) return 'WALK_PLAN' as const;
	return access.pulse.on ? access.status : ('BY_TALK' as const);
}
