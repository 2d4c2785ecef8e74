import type { Entry } from './entry.ts';
import type { OutingClock } from './outing-clock.ts';

/**
 * The clock of an outing run, from what was written down: where its last entry left it. A reading
 * that was kept since counts instead, so that a clock which is set anew between two entries takes no
 * time away.
 *
 * @throws RangeError for no entry at all
 */
export function clockOfEntries(entries: readonly Entry[], kept: OutingClock | null): OutingClock {
	const [first, ...others] = entries;
	if (first === undefined) throw new RangeError('clockOfEntries requires an entry');
	const last = others.reduce(
		(one, other) => (other.elapsedMs >= one.elapsedMs ? other : one),
		first
	);
	if (kept !== null && kept.elapsedMs >= last.elapsedMs) return kept;
	// The steady clock of the page that wrote it is not known here.
	const reading = { wallMs: last.at, steadyMs: 0, since: 'written' };
	return { elapsedMs: last.elapsedMs, reading };
}
