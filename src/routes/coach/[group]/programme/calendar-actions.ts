import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { addMonths, compareDates, type LocalDate } from '$lib/calendar/local-date.ts';
import { offForm, planForm, readDays, saidForm } from '$lib/forms/programme.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { rowForm } from '$lib/forms/group.ts';
import { checkDays, MOST_HOLIDAYS } from '$lib/outing/programme/days.ts';
import { decide } from '$lib/server/decided-days.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import { markHeat } from '../mark-heat.ts';
import { needGroup, needOwner } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';
import { datesFrom } from './moved.ts';
import { isOpen } from './over.ts';
import { planner } from './planner.ts';

type Needed = Awaited<ReturnType<typeof needGroup>>;

/** What the presses of a calendar do. Saying what became of a day is for whoever leads. */
export const calendarActions = {
	say: async (event: RequestEvent) => {
		const needed = await needGroup(event);
		const { database, vault, coach, group, now } = needed;
		const read = readForm(await event.request.formData(), saidForm);
		if (!read.ok) notFound();
		const { id, was, state } = read.value;
		const saying = { plannedId: id, was, state };
		const done = await decide(database, vault, coach.coachId, group.id, saying, planner, now);
		if (done === 'not-found') notFound();
		if (done !== 'decided') redirect(303, `${pathOf(needed)}?meanwhile`);
		redirect(303, `${pathOf(needed)}${state === 'planned' ? '' : `?said=${id}`}#now`);
	},
	/** All days that are over and of which nobody has said anything were done. */
	allDone: async (event: RequestEvent) => {
		const needed = await needGroup(event);
		const { database, vault, coach, group, now, today } = needed;
		const planned = await plannedOutings.list(database, coach.coachId, group.id);
		for (const { id } of planned.filter((one) => isOpen(one, today))) {
			const saying = { plannedId: id, was: 'planned', state: 'done' } as const;
			await decide(database, vault, coach.coachId, group.id, saying, planner, now);
		}
		redirect(303, pathOf(needed));
	},
	heat: async (event: RequestEvent) => {
		const needed = await needGroup(event);
		if ((await markHeat(needed, await event.request.formData())) === 'no') notFound();
		redirect(303, `${pathOf(needed)}#calendar`);
	},
	takeOff: async (event: RequestEvent) =>
		changeDays(event, (holidays, dates) => [...holidays, ...dates]),
	putBack: async (event: RequestEvent) =>
		changeDays(event, (holidays, dates) => holidays.filter((date) => !dates.includes(date))),
	days: async (event: RequestEvent) => {
		const needed = await needOwner(event);
		const { group, today } = needed;
		const form = await event.request.formData();
		const read = readDays(form);
		const { values } = read;
		const wrong = (issues: readonly { field: string; code: string }[]) =>
			fail(400, { days: { issues, values } });
		if (!read.ok) return wrong(read.issues);
		const current = await currentOf(needed);
		const { inputs } = current;
		const { revision, ...days } = read.value;
		// Its first day may lie behind: only what can still be chosen is looked at.
		const issues = checkDays({ startsOn: today, ...days }, inputs.outingsAWeek, today);
		if (issues.length > 0) return wrong(issues);
		const words = { inputs, startsOn: current.startsOn, ...days };
		const kind = await change(needed, words, revision);
		if (kind === 'changed-meanwhile')
			return fail(409, { days: { issues: [], values, meanwhile: true } });
		redirect(303, `/coach/${group.id}/programme?days#calendar`);
	},
	plan: async (event: RequestEvent) => {
		const needed = await needGroup(event);
		const { database, coach, group, today } = needed;
		const form = await event.request.formData();
		const read = readForm(form, planForm);
		const typedIn = (field: string) => {
			const sent = form.get(field);
			return typeof sent === 'string' ? sent.slice(0, 60) : '';
		};
		const typed = { id: typedIn('id'), onDate: typedIn('onDate') };
		const wrong = (field: 'plan-id' | 'plan-date', code: string) =>
			fail(400, { plan: { field, code, typed } });
		if (!read.ok) {
			const [issue] = read.issues;
			return wrong(issue?.field === 'id' ? 'plan-id' : 'plan-date', issue?.code ?? 'missing');
		}
		const { id, onDate } = read.value;
		const plan = await outingPlans.find(database, { coach, groupId: group.id }, id);
		if (plan === null) return wrong('plan-id', 'missing');
		if (compareDates(onDate, today) < 0) return wrong('plan-date', 'in-the-past');
		if (compareDates(onDate, addMonths(today, 12)) > 0) return wrong('plan-date', 'too-far');
		const { outing } = plan;
		const done = await plannedOutings.plan(database, coach.coachId, group.id, { onDate, outing });
		if (done.kind === 'not-found') notFound();
		if (done.kind === 'date-taken') return wrong('plan-date', 'date-taken');
		redirect(303, `${pathOf(needed)}?set=${onDate}#calendar`);
	},
	unplan: async (event: RequestEvent) => {
		const needed = await needGroup(event);
		const { database, coach, group } = needed;
		const read = readForm(await event.request.formData(), rowForm);
		if (!read.ok) notFound();
		await plannedOutings.unplan(database, coach.coachId, group.id, read.value.id);
		redirect(303, `${pathOf(needed)}#calendar`);
	}
};

const pathOf = ({ group }: Needed) => `/coach/${group.id}/programme`;

/** The programme, where it can be read: days of another cannot be worked out anew. */
async function currentOf({ database, vault, coach, group }: Needed) {
	const current = await programmes.current(database, vault, coach.coachId, group.id);
	const inputs = current?.inputs ?? null;
	if (current === null || inputs === null) notFound();
	return { ...current, inputs };
}

async function change(
	{ database, vault, coach, group, now }: Needed,
	words: programmes.ProgrammeWords,
	revision: number
) {
	const making = { words, planned: planner, revision };
	const done = await programmes.change(database, vault, coach, group.id, making, now);
	if (done.kind === 'not-found') notFound();
	return done.kind;
}

async function changeDays(
	event: RequestEvent,
	holidaysFrom: (
		holidays: readonly LocalDate[],
		dates: readonly LocalDate[]
	) => readonly LocalDate[]
) {
	const needed = await needOwner(event);
	const read = readForm(await event.request.formData(), offForm);
	if (!read.ok) notFound();
	const { from, until, revision } = read.value;
	const current = await currentOf(needed);
	// A break of so many days was never kept, so nobody asks for its days one by one.
	const dates = datesFrom(from, until).slice(0, MOST_HOLIDAYS);
	const holidays = [...new Set(holidaysFrom(current.holidays, dates))].sort();
	if (holidays.length > MOST_HOLIDAYS) redirect(303, `${pathOf(needed)}?full`);
	const { inputs, startsOn, weekdays } = current;
	const kind = await change(needed, { inputs, startsOn, weekdays, holidays }, revision);
	if (kind !== 'changed') redirect(303, `${pathOf(needed)}?meanwhile`);
	const isOff = holidays.includes(from);
	redirect(303, `${pathOf(needed)}${isOff ? `?off=${from}&until=${until}` : ''}#now`);
}
