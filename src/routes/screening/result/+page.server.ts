import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { settlingIn } from '$lib/outing/settling-in.ts';
import type { Access } from '$lib/screening/access.ts';
import { localDate } from '$lib/screening/calendar.ts';
import type { ScreeningResult } from '$lib/screening/types.ts';
import * as consents from '$lib/server/consents.ts';
import * as drafts from '$lib/server/drafts.ts';
import * as events from '$lib/server/events.ts';
import { numberToCall } from '$lib/server/number-to-call.ts';
import * as pains from '$lib/server/pains.ts';
import { saidSince } from '$lib/server/said-since.ts';
import * as screenings from '$lib/server/screenings.ts';
import { visitor } from '$lib/server/visitor.ts';
import * as walks from '$lib/server/walks.ts';
import { notFound } from '../../not-found.ts';
import { standingOf } from '../../standing-of.ts';
import type { Actions, PageServerLoad } from './$types';
import { ownCoaches } from '../own-coaches.ts';
import { actionsFor } from './actions.ts';
import { coveredBy } from './covered.ts';
import { ofToday } from './of-today.ts';
import { onTheWay } from './on-the-way.ts';

export const load: PageServerLoad = async (event) => {
	const { house, runner, now } = event.locals;
	const access = await standingOf(event);
	const { database, vault } = house;
	const newest = runner && (await screenings.newest(database, vault, runner.runnerId));
	const draft = runner && (await drafts.load(database, vault, runner.runnerId, now));
	const withdrawn = newest !== null && !(await consents.given(database, runner?.runnerId ?? ''));
	const chosen = await visitor(house, runner, event.cookies);
	const { timeZone } = chosen;
	const settlesIn = await isSettlingIn(event, access, timeZone);
	const page = {
		heading: withdrawn ? ('WITHDRAWN' as const) : headingFor(access),
		/** Whoever is settling in reads first that it begins with walking. */
		settlesIn,
		why: access.liftable.filter(({ reason }) => reason.startsWith('R-')),
		covered: await coveredBy(event, access.coveredReasons, timeZone),
		coaches: await ownCoaches(event, access.liftable),
		...(access.allowed ? whatIsOpen(access) : whatIsClosed(access)),
		actions: actionsFor(access, draft !== null),
		canTakeBack: await hasFreshEvent(event),
		emergencyNumber:
			!access.allowed && access.urgent ? await numberToCall(house, runner, chosen) : null,
		/** The questions lead on to the group once they are finished. */
		onTheWay: isFinished(access) ? await onTheWay(event.locals, event.cookies) : null,
		/** Only a finished form has had its answers deleted. */
		ruleset: draft === null && !withdrawn && newest ? rulesetOf(newest) : null
	};
	return asSeen(event, page);
};

/** Who came back to a shared tablet by a code sees what they said today, and nothing from before. */
async function asSeen<Page extends Parameters<typeof ofToday>[0]>(
	{ locals: { house, runner, tabletReturn } }: Pick<RequestEvent, 'locals'>,
	page: Page
) {
	if (!tabletReturn || runner === null) return { ...page, earlierCounts: false, isBack: false };
	const { groupId, openedAt } = tabletReturn;
	const said = await saidSince(house.database, house.vault, runner.runnerId, openedAt);
	if (said === null) redirect(303, `/tablet/${groupId}`);
	return { ...ofToday(page, said), isBack: true };
}

export const actions: Actions = {
	painGone: async ({ request, locals: { house, runner, tabletReturn, now } }) => {
		// Pain was told earlier, so it is not theirs to lift who came back by a code.
		if (tabletReturn) notFound();
		if ((await request.formData()).get('gone') !== 'yes') return fail(400, { painIssue: true });
		if (runner !== null) await pains.gone(house.database, runner.runnerId, now);
		redirect(303, '/screening/result');
	}
};

/** Whether walking comes first, and is not done yet. */
async function isSettlingIn(
	{ locals: { house, runner, now } }: Pick<RequestEvent, 'locals'>,
	access: Access,
	timeZone: string
): Promise<boolean> {
	if (runner === null || !access.allowed) return false;
	const walked = await walks.list(house.database, runner.runnerId);
	const days = walks.daysSince(walked, localDate(now, timeZone));
	return settlingIn(access.startEffort === 'moderate' && access.run, days).kind === 'going-on';
}

const isFinished = (access: Access) =>
	access.allowed || (access.code !== 'NO_RESULT' && access.code !== 'INCOMPLETE');

const whatIsOpen = (access: Extract<Access, { allowed: true }>) => ({
	pulseOff: access.pulse.on ? [] : access.pulse.reasons,
	starting: access.reasons.filter((id) => id.startsWith('S-')),
	care: access.advice,
	careLimitBpm: access.pulse.careTeamLimitBpm,
	until: access.validUntil,
	urgent: false,
	stopCurrent: false,
	closedByAdvice: false
});

const whatIsClosed = (access: Extract<Access, { allowed: false }>) => ({
	pulseOff: [],
	starting: [],
	care: [],
	careLimitBpm: null,
	until: null,
	urgent: access.urgent,
	stopCurrent: access.stopCurrent,
	closedByAdvice: access.closedByAdvice.length > 0
});

const rulesetOf = ({ rulesetId, rulesetVersion }: ScreeningResult) => ({
	id: rulesetId,
	version: rulesetVersion
});

/** Whether an urgent sign can still be taken back as a mistake. */
async function hasFreshEvent({
	locals: { house, runner, tabletReturn, now }
}: Pick<RequestEvent, 'locals'>) {
	if (runner === null) return false;
	const all = await events.list(house.database, house.vault, runner.runnerId);
	const earliest = Math.max(now - events.WITHDRAW_WITHIN_MS, tabletReturn?.openedAt ?? 0);
	return all.some(({ withdrawnAt, happenedAt }) => withdrawnAt === null && happenedAt > earliest);
}

function headingFor(access: Access) {
	if (!access.allowed) {
		const today = access.code === 'SEEK_ADVICE' && access.urgent;
		return today ? ('SEEK_TODAY' as const) : access.code;
	}
	if (access.walkOnlyByPain) return 'WALK_PAIN' as const;
	if (access.walkOnlyByAdvice) return 'WALK_ADVISED' as const;
	if (access.status === 'CLEARED_WALK') return access.status;
	if (!access.run) return 'WALK_PLAN' as const;
	return access.pulse.on ? access.status : ('BY_TALK' as const);
}
