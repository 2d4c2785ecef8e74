import type { Reason } from './advice-in-force.ts';
import type { AdviceRole, LocalDate } from './types.ts';
import { canBeLifted, whoMayAdvise } from './who-may-advise.ts';

export interface Liftable {
	readonly reason: string;
	/** Empty where no advice can take the reason away. */
	readonly roles: readonly AdviceRole[];
	/** The first day from which advice about it counts; null where older advice counts too. */
	readonly countsFrom: LocalDate | null;
}

/** For each rule that stands in the way, whose advice could take it away, and since when. */
export function liftableBy(reasons: readonly Reason[]): readonly Liftable[] {
	return [...new Set(reasons.map(({ rule }) => rule))].map((rule) => ({
		reason: rule.id,
		roles: canBeLifted(rule) ? whoMayAdvise[rule.kind] : [],
		countsFrom: rule.kind === 'symptom' ? latest(reasons.filter((one) => one.rule === rule)) : null
	}));
}

/**
 * Of two urgent signs the later one counts: advice has to cover both. Dates written YYYY-MM-DD sort
 * as text, and one that cannot be read sorts last, where no advice reaches it.
 */
function latest(reasons: readonly Reason[]): LocalDate | null {
	return (
		reasons
			.flatMap(({ since }) => since ?? [])
			.sort()
			.at(-1) ?? null
	);
}
