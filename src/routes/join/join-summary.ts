import { join } from '$words/join.ts';
import { site } from '$words/site.ts';

/** What has to be looked at again before joining, in words. */
export function joinSummary(issues: readonly { readonly field: string; readonly code: string }[]) {
	return issues.map(({ field, code }) => ({
		field,
		text: field === 'agree' ? join.boxIssue : site.issueOf(join.name, join.issues[code] ?? code)
	}));
}
