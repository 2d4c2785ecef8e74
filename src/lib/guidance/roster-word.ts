import { longestRunNow, settlingIn } from '../outing/settling-in.ts';
import type { Access } from '../screening/access.ts';
import { addDays, addMonths, compareDates } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';

/** What a coach reads of a result. Never a reason, an answer or an age. */
export type CoachWord =
	| 'may-run'
	| 'may-run-by-talk'
	| 'may-walk'
	| 'not-today'
	| 'not-finished'
	| 'not-for-this-app'
	| 'answer-again';

/** All that a coach may know of what a runner may do. A closed one holds its word and nothing else. */
export type RosterWord =
	| {
			readonly open: true;
			readonly word: 'may-run' | 'may-run-by-talk' | 'may-walk';
			/** Whether pulse numbers are on; why they are off is not the coach's to know. */
			readonly pulse: 'on' | 'off';
			/** The first day on which short runs could begin, while settling in goes on. */
			readonly settlingInUntil: LocalDate | null;
			/** How long a run may last in the weeks after settling in; null where nothing limits it. */
			readonly longestRunSeconds: number | null;
			/** The last day on which the word holds. */
			readonly validUntil: LocalDate;
			/** True in the last calendar month. */
			readonly endsSoon: boolean;
	  }
	| {
			readonly open: false;
			readonly word: 'not-today' | 'not-finished' | 'not-for-this-app' | 'answer-again';
	  };

type Closed = Extract<Access, { allowed: false }>;

/** An access, or the fault that keeps us from knowing it. */
type Seen =
	| Extract<Access, { allowed: true }>
	| (Pick<Closed, 'allowed' | 'code'> & { readonly fault?: unknown });

/**
 * The word for a coach. Whatever closes an existing result looks the same, and so does one that
 * cannot be read: a coach cannot tell an illness of today from a heart condition, or from our fault.
 *
 * @param today the date where the group is
 * @param daysSinceEachWalk whole days from each walking outing to today, as `settlingIn` takes them
 * @example rosterWord({ allowed: false, code: 'EXPIRED' }, '2026-11-25', []).word // 'answer-again'
 */
export function rosterWord(
	access: Seen,
	today: LocalDate,
	daysSinceEachWalk: readonly number[]
): RosterWord {
	if (!access.allowed) {
		return {
			open: false,
			word: access.fault === undefined ? closedWord(access.code) : 'not-today'
		};
	}
	const settling = settlingIn(access.startEffort === 'moderate' && access.run, daysSinceEachWalk);
	return {
		open: true,
		word: !access.run ? 'may-walk' : access.pulse.on ? 'may-run' : 'may-run-by-talk',
		pulse: access.pulse.on ? 'on' : 'off',
		settlingInUntil: settling.kind === 'going-on' ? addDays(today, settling.daysLeft) : null,
		longestRunSeconds: longestRunNow(settling),
		validUntil: access.validUntil,
		endsSoon: compareDates(access.validUntil, addMonths(today, 1)) <= 0
	};
}

function closedWord(code: Closed['code']) {
	switch (code) {
		case 'WAIT':
		case 'SEEK_ADVICE':
		case 'EMERGENCY':
			return 'not-today';
		case 'NO_RESULT':
		case 'INCOMPLETE':
			return 'not-finished';
		case 'NOT_ELIGIBLE':
			return 'not-for-this-app';
		case 'EXPIRED':
		case 'RESCREEN':
			return 'answer-again';
	}
}
