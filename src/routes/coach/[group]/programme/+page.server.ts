import { dateRanges } from '$lib/calendar/date-ranges.ts';
import * as hotDays from '$lib/server/hot-days.ts';
import * as memberBands from '$lib/server/member-bands.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import { dayAndTime } from '$words/dates.ts';
import type { Actions, PageServerLoad } from './$types';
import { needGroup } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';
import { calendarActions } from './calendar-actions.ts';
import { calendarView } from './calendar-view.ts';
import { justDone } from './moved.ts';
import { weeksFrom } from './planner.ts';
import { weekRows } from './week-rows.ts';

/** What the address says of the press before, besides what moved. */
const NOTICES = ['made', 'meanwhile', 'days', 'set', 'full'] as const;

export const load: PageServerLoad = async (event) => {
	const { house, database, coach, group, now, today } = await needGroup(event);
	const current = await programmes.current(database, house.vault, coach.coachId, group.id);
	const planned = await plannedOutings.list(database, coach.coachId, group.id);
	const hot = await hotDays.list(database, coach.coachId, group.id, today);
	const library = await outingPlans.list(database, { coach, groupId: group.id });
	const { searchParams } = event.url;
	const weeks = current?.inputs ? weeksFrom(current.inputs) : null;
	const seen = weeks && ((await memberBands.list(house, coach, group.id, now)) ?? notFound());
	return {
		isOwner: group.role === 'owner',
		today,
		programme: current && {
			revision: current.revision,
			weekdays: current.weekdays.map(String),
			holidays: dateRanges(current.holidays),
			changed: {
				by: current.changedByName,
				when: dayAndTime(current.changedAt, group.timeZone)
			},
			weeks: weeks && weekRows(weeks, seen ?? [])
		},
		calendar: calendarView(planned, current, today, hot),
		justDone: justDone(searchParams, { planned, current, today }),
		library: library.map(({ id, outing }) => ({ id, name: outing.name })),
		notice: NOTICES.find((one) => searchParams.has(one)) ?? null
	};
};

export const actions: Actions = {
	...calendarActions
};
