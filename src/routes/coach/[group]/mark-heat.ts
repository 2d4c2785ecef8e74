import { addMonths, compareDates } from '$lib/calendar/local-date.ts';
import { heatForm } from '$lib/forms/programme.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as hotDays from '$lib/server/hot-days.ts';
import type { needGroup } from './need-group.ts';

type Needed = Awaited<ReturnType<typeof needGroup>>;

/** Marks a day as hot for everybody in the group, or takes that back. 'no' for what no page sends. */
export async function markHeat(
	{ database, coach, group, now, today }: Needed,
	sent: FormData
): Promise<'done' | 'no'> {
	const read = readForm(sent, heatForm);
	if (!read.ok) return 'no';
	const { onDate, hot } = read.value;
	if (compareDates(onDate, today) < 0) return 'no';
	if (compareDates(onDate, addMonths(today, 12)) > 0) return 'no';
	const of = [database, coach.coachId, group.id, onDate] as const;
	if (hot === 'yes') await hotDays.mark(...of, now);
	else await hotDays.unmark(...of);
	return 'done';
}
