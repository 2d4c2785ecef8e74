import type { Ruleset } from '../ruleset.ts';
import { ruleset202611 } from './2026-11.ts';

const published: readonly Ruleset[] = [ruleset202611];

/** The set that new forms are asked from. */
export const currentRuleset: Ruleset = ruleset202611;

/**
 * A published rule set. An unknown id is an error, never the nearest set.
 *
 * @throws RangeError for an id that was never published
 */
export function rulesetById(id: string): Ruleset {
	const found = published.find((ruleset) => ruleset.id === id);
	if (found === undefined) throw new RangeError(`rulesetById requires a published id, not ${id}`);
	return found;
}
