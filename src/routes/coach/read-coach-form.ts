import type { RequestEvent } from '@sveltejs/kit';
import type { z } from 'zod';
import { asideForm } from '$lib/forms/coach-account.ts';
import { readForm, type Issue } from '$lib/forms/read-form.ts';

type Read<Value> =
	| { readonly ok: true; readonly value: Value }
	| {
			readonly ok: false;
			readonly issues: readonly Issue[];
			readonly values: Record<string, string>;
	  };

/**
 * Reads a form that signs a coach in or up. In a browser that holds a runner's account it asks for
 * the box that puts it aside. What was typed goes back to the page, but for passwords.
 */
export async function readCoachForm<Schema extends z.ZodObject>(
	{ request, locals }: RequestEvent,
	schema: Schema
): Promise<Read<z.output<Schema>>> {
	const form = await request.formData();
	const read = readForm(form, schema);
	const aside: readonly Issue[] =
		locals.runner !== null && !readForm(form, asideForm).ok
			? [{ field: 'aside', code: 'missing' }]
			: [];
	if (read.ok && aside.length === 0) return read;
	const issues = [...(read.ok ? [] : read.issues), ...aside];
	return { ok: false, issues, values: typedIn(form) };
}

/** What a page may show again. */
export function typedIn(form: FormData): Record<string, string> {
	const kept: Record<string, string> = {};
	for (const field of ['name', 'qualification', 'email', 'stay']) {
		const text = form.get(field);
		if (typeof text === 'string') kept[field] = text.slice(0, 300);
	}
	return kept;
}

/** Where a form came from, for what slows guessing down. */
export const fromOf = ({ request, getClientAddress, locals }: RequestEvent) => ({
	headers: request.headers,
	address: getClientAddress(),
	now: locals.now
});
