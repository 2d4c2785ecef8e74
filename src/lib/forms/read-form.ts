import type { z } from 'zod';

/** One thing that a person has to look at again: the field, and a code that the words explain. */
export interface Issue {
	readonly field: string;
	readonly code: string;
}

/** What was typed, by field, so that a page can show it again. */
export type Typed = Readonly<Record<string, string | readonly string[]>>;

export type FormAnswer<Value> =
	| { readonly ok: true; readonly value: Value }
	| { readonly ok: false; readonly issues: readonly Issue[]; readonly values: Typed };

/**
 * Reads a form by a schema whose messages are issue codes. A field that should come once and comes
 * twice with different values counts as missing: nobody can know which one was meant.
 *
 * @param lists names of the fields that may come several times
 */
export function readForm<Schema extends z.ZodObject>(
	form: FormData,
	schema: Schema,
	lists: readonly string[] = []
): FormAnswer<z.output<Schema>> {
	const values: Record<string, string | string[]> = {};
	for (const field of Object.keys(schema.shape)) {
		const sent = form.getAll(field).filter((part) => typeof part === 'string');
		if (lists.includes(field)) values[field] = sent;
		else if (new Set(sent).size === 1) values[field] = sent[0] as string;
	}
	const parsed = schema.safeParse(values);
	if (parsed.success) return { ok: true, value: parsed.data };
	const issues = new Map<string, string>();
	for (const { path, message } of parsed.error.issues) {
		const field = String(path[0]);
		if (!issues.has(field)) issues.set(field, message);
	}
	return { ok: false, issues: [...issues].map(([field, code]) => ({ field, code })), values };
}
