import { redirect, type RequestEvent } from '@sveltejs/kit';
import type { Kysely } from 'kysely';
import { outingRowForm } from '$lib/forms/outing-row.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { outingLimits } from '$lib/outing/outing-limits.ts';
import { shortenRuns } from '$lib/outing/shorten-runs.ts';
import { usualOuting, usualWalk } from '$lib/outing/usual-outing.ts';
import { localDate } from '$lib/screening/calendar.ts';
import type { Database } from '$lib/server/database/tables.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import { outingLibrary } from '$words/outings.ts';
import { notFound } from '../not-found.ts';

/** Whose library it is, and where it stands. */
export interface Library {
	readonly database: Kysely<Database>;
	readonly holder: outingPlans.Holder;
	readonly now: number;
	readonly base: string;
	/** True for a runner who may walk: their first outing has no run. */
	readonly isWalking: boolean;
	/** How long a run of their first outing may last; null where nothing limits it. */
	readonly longestRunSeconds: number | null;
}

type Asked = Pick<RequestEvent, 'request'>;

/** What the buttons of a library do, for a group's and for a runner's own. */
export const libraryActions = {
	async make(_: Asked, library: Library) {
		const { database, holder, isWalking, longestRunSeconds: longest } = library;
		const name = outingLibrary.newName((await outingPlans.list(database, holder)).length + 1);
		const first = isWalking ? usualWalk(name) : usualOuting(name);
		await created(library, longest === null ? first : shortenRuns(first, longest));
	},
	async copy({ request }: Asked, library: Library) {
		const { database, holder } = library;
		const plan = await outingPlans.find(database, holder, await idIn(request));
		const { outing } = plan ?? notFound();
		await created(library, { ...outing, name: copyName(outing.name) });
	},
	async remove({ request }: Asked, { database, holder, now, base }: Library) {
		const id = await idIn(request);
		if ((await outingPlans.remove(database, holder, id, now)) === 'not-found') notFound();
		redirect(303, `${base}?removed=${id}`);
	},
	async putBack({ request }: Asked, { database, holder, base }: Library) {
		const done = await outingPlans.putBack(database, holder, await idIn(request));
		if (done === 'not-found') notFound();
		redirect(303, base);
	}
};

/** What a page of a library shows: the plans, the one removed last, and whether no more fit. */
export function libraryView(plans: readonly outingPlans.OutingPlan[], url: URL, timeZone: string) {
	return {
		plans: plans.map(({ id, outing, changedAt, changedByName }) => ({
			id,
			outing,
			changedOn: localDate(changedAt, timeZone),
			changedByName
		})),
		removed: url.searchParams.get('removed'),
		isFull: url.searchParams.has('full')
	};
}

export function copyName(name: string): string {
	return outingLibrary.copyName(name).slice(0, outingLimits.nameLength.high);
}

async function created(
	{ database, holder, now, base }: Library,
	outing: Parameters<typeof outingPlans.create>[2]
): Promise<never> {
	const made = await outingPlans.create(database, holder, outing, now);
	if (made.kind === 'full') redirect(303, `${base}?full`);
	redirect(303, made.kind === 'created' ? `${base}/${made.id}` : notFound());
}

async function idIn(request: Request): Promise<string> {
	const read = readForm(await request.formData(), outingRowForm);
	return read.ok ? read.value.id : notFound();
}
