import type { LocalDate } from '$lib/calendar/local-date.ts';
import { readWishes } from '$lib/forms/programme.ts';
import type { Issue, Typed } from '$lib/forms/read-form.ts';
import { checkDays } from '$lib/outing/programme/days.ts';
import { generateProgramme } from '$lib/outing/programme/generate.ts';
import type { ProgrammeWeek } from '$lib/outing/programme/programme.ts';
import type { ProgrammePulse, WishIssue } from '$lib/outing/programme/wishes.ts';
import type { SpeedUnit } from '$lib/outing/typed-speed.ts';
import type { ProgrammeWords } from '$lib/server/programmes.ts';
import { programme } from '$words/programme.ts';
import { fillIn } from './fill-in.ts';
import { daysThatWork, fieldOfReason, wishesThatWork, type WouldWork } from './would-work.ts';

/** Wishes that cannot be met, or not yet: each issue with its field, and what would work. */
export interface Refused {
	readonly kind: 'refused';
	readonly values: Typed;
	readonly issues: readonly Issue[];
	readonly wouldWork: readonly WouldWork[];
}

export interface Met {
	readonly kind: 'met';
	readonly values: Typed;
	readonly weeks: readonly ProgrammeWeek[];
	readonly words: ProgrammeWords;
}

export interface Asking {
	readonly unit: SpeedUnit;
	readonly pulse: ProgrammePulse;
	readonly today: LocalDate;
}

/** What becomes of the wishes in a form, with what a button of it filled in. */
export function wished(form: FormData, { unit, pulse, today }: Asking): Refused | Met {
	fillIn(form);
	const read = readWishes(form, unit);
	const { values } = read;
	if (!read.ok) {
		const noDays = read.issues.some(({ field }) => field === 'weekdays');
		const days = noDays ? [{ code: 'weekdays-not-as-many', field: 'weekdays' } as const] : [];
		const outingsAWeek = Number(values['outingsAWeek'] ?? 3) || 3;
		const wouldWork = daysThatWork(days, { weekdays: [], outingsAWeek }, today);
		return { kind: 'refused', values, issues: read.issues, wouldWork };
	}
	const { days } = read.value;
	const wishes = { ...read.value.wishes, pulse: rounded(pulse) };
	const dayIssues = checkDays(days, wishes.outingsAWeek, today);
	const answer = generateProgramme(wishes, programme.outingName);
	const asked = { weekdays: days.weekdays, outingsAWeek: wishes.outingsAWeek };
	const refusal = refusalOf(answer, values);
	const issues = [...refusal.issues, ...dayIssues];
	if (answer.kind !== 'programme' || issues.length > 0) {
		const wouldWork = [...refusal.wouldWork, ...daysThatWork(dayIssues, asked, today)];
		return { kind: 'refused', values, issues, wouldWork };
	}
	return { kind: 'met', values, weeks: answer.weeks, words: { inputs: wishes, ...days } };
}

function refusalOf(
	answer: ReturnType<typeof generateProgramme>,
	values: Typed
): Pick<Refused, 'issues' | 'wouldWork'> {
	switch (answer.kind) {
		case 'programme':
			return { issues: [], wouldWork: [] };
		case 'issues':
			return {
				issues: answer.issues.map(({ field }) => ({ field: fieldFor(field, values), code: field })),
				wouldWork: []
			};
		case 'refused':
			return {
				issues: [{ field: fieldOfReason[answer.reason], code: answer.reason }],
				wouldWork: wishesThatWork(answer.nearest)
			};
	}
}

function fieldFor(field: WishIssue['field'], values: Typed): string {
	if (field === 'firstRunSeconds') return 'firstRun';
	if (field !== 'goal') return field;
	const kind = values['goalKind'];
	if (kind === 'distance') return 'goalKilometres';
	return kind === 'minutes' ? 'goalMinutes' : 'goalRun';
}

/** To hundredths: what is kept of a group's pulse need not be finer. */
function rounded({ runShare, walkShare, staysInBand }: ProgrammePulse): ProgrammePulse {
	return { runShare: hundredths(runShare), walkShare: hundredths(walkShare), staysInBand };
}

const hundredths = (share: number) => Math.round(share * 100) / 100;
