import { groupFields } from '$words/groups.ts';
import { site } from '$words/site.ts';

type Field = 'name' | 'emergencyNumber' | 'usualPlace' | 'meetingPoint' | 'timeZone';

/** What has to be looked at again in the fields of a group, in words. */
export function groupSummary(issues: readonly { field: string; code: string }[]) {
	return issues.map(({ field, code }) => ({
		field,
		text: site.issueOf(groupFields[field as Field], groupFields.issues[code] ?? code)
	}));
}
