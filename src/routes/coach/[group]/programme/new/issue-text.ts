import { programme } from '$words/programme.ts';
import { programmeForm as words } from '$words/programme-pages.ts';

const refused: Readonly<Record<string, string>> = programme.refused;
const wishes: Readonly<Record<string, string>> = programme.issues;

/** What is wrong with a field of the wishes, in words. */
export function issueText(field: string, code: string): string {
	if (refused[code] !== undefined) return refused[code];
	switch (field) {
		case 'startsOn':
		case 'weekdays':
		case 'holidays':
			return dayText(field, code);
		case 'weeks':
		case 'outingsAWeek':
			return wishes[field] ?? code;
		case 'firstRun':
			return code === 'firstRunSeconds' ? wishes[code]! : words.lengthIssue;
		default:
			return code === 'not-a-length' ? words.lengthIssue : (wishes['goal'] ?? code);
	}
}

function dayText(field: string, code: string): string {
	const isNone = field === 'weekdays' && code === 'missing';
	return programme.days.issues[isNone ? 'weekdays-not-as-many' : code] ?? code;
}
