import type { Issue } from './read-form.ts';

/** A form as an action answers it: nothing was sent, it was taken, or it came back with issues. */
export interface Answered {
	readonly issues?: readonly Issue[] | null | undefined;
	readonly values?: object | null | undefined;
}

/** The words of an issue: by its code, or by its code and its field. */
export type IssueWords =
	Readonly<Record<string, string | undefined>> | ((code: string, field: string) => string);

export interface SentForm {
	/** For the summary: every issue in its order, in words. */
	readonly issues: readonly { readonly field: string; readonly text: string }[];
	/** The issue of one field, in words; null where there is none. */
	readonly issueOf: (field: string) => string | null;
	/** What was typed into a field, or what stands there otherwise. */
	readonly typed: (field: string, otherwise?: string) => string;
	/** What was picked of several, or of one. */
	readonly picked: (field: string) => readonly string[];
}

/**
 * A form that came back, as its page shows it: what to look at again, and what was typed. It needs no
 * schema, so that a page's script stays without the library that checks forms.
 *
 * @param words a code without words stands for itself
 * @param inSummary an issue as the summary says it, where the name of its field comes first
 */
export function sentForm(
	form: Answered | null | undefined,
	words: IssueWords,
	inSummary: (field: string, text: string) => string = (_, text) => text
): SentForm {
	const said = (form?.issues ?? []).map(({ field, code }) => ({
		field,
		text: typeof words === 'function' ? words(code, field) : (words[code] ?? code)
	}));
	const sent = (field: string): unknown =>
		(form?.values as Readonly<Record<string, unknown>> | null | undefined)?.[field];
	return {
		issues: said.map(({ field, text }) => ({ field, text: inSummary(field, text) })),
		issueOf: (field) => said.find((issue) => issue.field === field)?.text ?? null,
		typed(field, otherwise = '') {
			const value = sent(field);
			return typeof value === 'string' ? value : otherwise;
		},
		picked: (field) => [sent(field)].flat().filter((value) => typeof value === 'string')
	};
}
