import { error, redirect, type RequestEvent } from '@sveltejs/kit';
import type { Access } from '$lib/screening/access.ts';
import { localDate } from '$lib/screening/calendar.ts';
import { gate } from '$lib/server/gate.ts';
import { visitor } from '$lib/server/visitor.ts';
import { faultText } from '$words/faults.ts';

type Asked = Pick<RequestEvent, 'locals' | 'cookies'>;

/** What whoever asks may do now. Where we cannot know it, the page says why instead. */
export async function standingOf({ locals: { house, runner, now } }: Asked): Promise<Access> {
	const access = await gate(house, runner, now);
	if ('fault' in access) error(503, { code: access.fault, message: faultText(access.fault) });
	return access;
}

/** For pages behind the gate: the open gate and what they need with it, or away to the result. */
export async function needOpen(event: Asked) {
	const { house, runner, now } = event.locals;
	const access = await standingOf(event);
	if (!access.allowed || runner === null) redirect(303, '/screening/result');
	const chosen = await visitor(house, runner, event.cookies);
	return { house, runner, now, access, chosen, today: localDate(now, chosen.timeZone) };
}
