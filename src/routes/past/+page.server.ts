import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { morningForm } from '$lib/forms/pain.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { pastSight, shownOuting } from '$lib/guidance/shown-outing.ts';
import { localDate } from '$lib/screening/calendar.ts';
import * as consents from '$lib/server/consents.ts';
import * as nextMorning from '$lib/server/next-morning.ts';
import * as pains from '$lib/server/pains.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import { visitor } from '$lib/server/visitor.ts';
import * as whatNext from '$lib/server/what-next.ts';
import { notFound } from '../not-found.ts';
import { standingOf } from '../standing-of.ts';
import type { Actions, PageServerLoad } from './$types';
import { ceilingPanel } from './next-lines.ts';

/** As many outings stand on one page. */
const A_PAGE = 30;

/**
 * Open while the gate is closed: what somebody did is theirs to read. What of it may be shown is
 * decided by `shownOuting`.
 */
export const load: PageServerLoad = async (event) => {
	const { house, runner, now } = event.locals;
	const access = await standingOf(event);
	if (runner === null) return { who: 'nobody' as const, ...nothing };
	const { database, vault } = house;
	const { timeZone } = await visitor(house, runner, event.cookies);
	const { runnerId } = runner;
	const today = localDate(now, timeZone);
	const said = access.allowed ? await whatNext.of(house, runner, now, today) : null;
	const all = await pastOutings.list(database, vault, runnerId);
	const from = pageOf(event.url, all.length);
	return {
		who: access.allowed ? ('open' as const) : ('closed' as const),
		deleted: event.url.searchParams.has('deleted'),
		kept: event.url.searchParams.has('kept'),
		page: { from, older: from + A_PAGE < all.length ? from + A_PAGE : null, size: A_PAGE },
		outings: all.slice(from, from + A_PAGE).map((outing) => ({
			id: outing.id,
			onDate: outing.onDate,
			...shownOuting(outing, pastSight(access))
		})),
		asked: await nextMorning.asked(database, vault, runnerId, today),
		talkPulse: said?.ceiling ? ceilingPanel(said.ceiling) : null,
		painStands: await pains.stands(database, runnerId)
	};
};

const nothing = {
	deleted: false,
	kept: false,
	page: { from: 0, older: null, size: A_PAGE },
	outings: [],
	asked: null,
	talkPulse: null,
	painStands: false
};

function pageOf(url: URL, count: number): number {
	const from = Number(url.searchParams.get('from'));
	return Number.isInteger(from) && from > 0 && from < count ? from : 0;
}

/** Whoever has an account and agreed; anybody else is led to the page, which says what comes first. */
async function needAgreed({ locals: { house, runner, now } }: Pick<RequestEvent, 'locals'>) {
	if (runner === null || !(await consents.given(house.database, runner.runnerId))) {
		redirect(303, '/past');
	}
	return { house, database: house.database, vault: house.vault, runner, now };
}

const wayBack = (form: FormData) => (form.get('from') === 'bands' ? '/bands' : '/past?kept');

export const actions: Actions = {
	morning: async (event) => {
		const { house, database, vault, runner, now } = await needAgreed(event);
		const form = await event.request.formData();
		const read = readForm(form, morningForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { run, level, where } = read.value;
		const { timeZone } = await visitor(house, runner, event.cookies);
		const said = { level, where };
		const told = { now, timeZone };
		const kept = await nextMorning.say(database, vault, runner.runnerId, run, said, told);
		if (kept === 'not-found') notFound();
		redirect(303, wayBack(form));
	},
	gone: async (event) => {
		const { database, runner, now } = await needAgreed(event);
		const form = await event.request.formData();
		if (form.get('gone') !== 'yes') return fail(400, { goneIssue: true });
		await pains.gone(database, runner.runnerId, now);
		redirect(303, wayBack(form));
	}
};
