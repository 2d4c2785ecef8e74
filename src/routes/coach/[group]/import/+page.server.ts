import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { csv } from '$lib/server/csv.ts';
import { decodeText, type Encoding } from '$lib/server/decode-text.ts';
import { isTooLarge, largestFormBytes } from '$lib/server/largest-form.ts';
import * as nameImport from '$lib/server/name-import.ts';
import { MOST_NAMES, MOST_ROWS, readNameList } from '$lib/server/name-list.ts';
import type { Actions, PageServerLoad } from './$types';
import { needGroup } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';

export const load: PageServerLoad = async (event) => {
	const { group } = await needGroup(event);
	return { groupId: group.id, mostNames: MOST_NAMES, mostRows: MOST_ROWS };
};

/** A longer text is not put back into the page: it would not fit into what a form may send. */
const LONGEST_SHOWN = 100_000;

/** The whole form, or null where it is longer than the server reads. */
async function sentForm({ request }: RequestEvent): Promise<FormData | null> {
	try {
		return await request.formData();
	} catch (thrown) {
		if (isTooLarge(thrown)) return null;
		throw thrown;
	}
}

/** What was sent: a file where there is one, else what was typed. */
async function sentText(form: FormData): Promise<{ text: string; encoding: Encoding }> {
	const [file, typed] = [form.get('file'), form.get('text')];
	if (file instanceof File && file.size > 0) return decodeText(await file.bytes());
	return { text: typeof typed === 'string' ? typed : '', encoding: 'utf-8' };
}

async function preview(event: RequestEvent) {
	const { database, coach, group } = await needGroup(event);
	const form = await sentForm(event);
	if (form === null) {
		const list = { kind: 'too-large' as const, mostBytes: largestFormBytes() };
		return { text: '', encoding: 'utf-8' as const, list };
	}
	const { text, encoding } = await sentText(form);
	const list = readNameList(text);
	const shown = { text: text.length > LONGEST_SHOWN ? '' : text, encoding };
	if (list.kind !== 'read') return { ...shown, list };
	const names = list.names.map(({ name }) => name);
	const { fresh, known } = await nameImport.compare(database, coach.coachId, group.id, names);
	// The names alone: with every column of theirs a list may be longer than the page carries.
	return { ...shown, list, fresh, known, toAdd: csv([['Name'], ...names.map((name) => [name])]) };
}

export const actions: Actions = {
	look: async (event) => {
		const seen = await preview(event);
		const isRight = 'fresh' in seen && seen.list.issues.length === 0;
		return isRight ? seen : fail(seen.list.kind === 'too-large' ? 413 : 400, seen);
	},
	add: async (event) => {
		const seen = await preview(event);
		// What is added is worked out here again; a list with one line wrong adds nothing.
		if (!('fresh' in seen) || seen.list.issues.length > 0) return fail(400, seen);
		const { database, coach, group, now } = await needGroup(event);
		const { names } = seen.list;
		const done = await nameImport.addNames(
			database,
			coach.coachId,
			group.id,
			names.map(({ name }) => name),
			now
		);
		if (done.kind === 'not-found') notFound();
		redirect(303, `/coach/${group.id}`);
	}
};
