import type { Issue } from '$lib/forms/read-form.ts';
import { inForce } from '$lib/screening/advice-in-force.ts';
import { compareDates } from '$lib/screening/calendar.ts';
import { whoMaySetPulseLimit } from '$lib/screening/who-may-advise.ts';
import type { Advice, AdviceRole, LocalDate } from '$lib/screening/types.ts';

/** A reason that stands, who may cover it, and the first day from which advice about it counts. */
export interface Coverable {
	readonly reason: string;
	readonly roles: readonly AdviceRole[];
	readonly countsFrom: LocalDate | null;
}

type Typed = Omit<Advice, 'id' | 'recordedAt'>;

/** What is wrong with advice that is well formed: it would lift nothing, and the person is told why. */
export function adviceIssues(
	typed: Typed,
	coverable: readonly Coverable[],
	today: LocalDate
): readonly Issue[] {
	if (compareDates(typed.givenOn, today) > 0) return [{ field: 'givenOn', code: 'in-the-future' }];
	if (!inForce({ ...typed, id: '', recordedAt: 0 }, today)) {
		return [{ field: 'givenOn', code: 'too-long-ago' }];
	}
	if (typed.limitBpm !== null && !whoMaySetPulseLimit.includes(typed.role)) {
		return [{ field: 'limitBpm', code: 'limit-role' }];
	}
	// What only narrows may be about anything; what opens has to be about something.
	const opens = typed.scope === 'walkrun' || typed.scope === 'all';
	if (opens && typed.covers.length === 0 && typed.limitBpm === null) {
		return [{ field: 'covers', code: 'nothing-covered' }];
	}
	const known = coverable.filter(({ reason }) => typed.covers.includes(reason));
	if (known.length < typed.covers.length) return [{ field: 'covers', code: 'unknown-option' }];
	if (known.some(({ roles }) => !roles.includes(typed.role))) {
		return [{ field: 'covers', code: 'wrong-role' }];
	}
	const isTooEarly = ({ countsFrom }: Coverable) =>
		countsFrom !== null && compareDates(typed.givenOn, countsFrom) < 0;
	return known.some(isTooEarly) ? [{ field: 'givenOn', code: 'before-the-sign' }] : [];
}
