import { phaseAt, placesOf } from './edit/place.ts';
import { pathOf } from './field-name.ts';
import type { OutingIssue } from './outing-issues.ts';
import type { Outing } from './outing.ts';
import type { PhaseKind } from './phase.ts';

/**
 * Each phase of a kind that its author may not do: a run, for whoever may walk.
 *
 * @example kindsNotOpen({ name: '', parts: [] }, ['brisk-walk']) // []
 */
export function kindsNotOpen(outing: Outing, open: readonly PhaseKind[]): readonly OutingIssue[] {
	return placesOf(outing)
		.filter((place) => !open.includes(phaseAt(outing, place).kind))
		.map((place) => ({ code: 'run-not-open', path: [...pathOf(place), 'kind'] }));
}
