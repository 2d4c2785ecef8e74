import { redirect, type RequestEvent } from '@sveltejs/kit';
import { needGroup } from './need-group.ts';

/** The group of an address, once it has an emergency number: nothing is printed without one. */
export async function needPrintable(asked: Pick<RequestEvent, 'locals' | 'params'>) {
	const needed = await needGroup(asked);
	const { emergencyNumber } = needed.group;
	if (emergencyNumber === null) redirect(303, `/coach/${needed.group.id}/print`);
	return { ...needed, emergencyNumber };
}
