import { factsOf, type Asked, type DatedOuting, type NextTimeRules } from './asked.ts';
import type { Fact } from './fact.ts';
import { timesItWentWell } from './how-it-went.ts';
import type { OutingFacts } from './outing-facts.ts';
import { rows, type NextAdvice } from './rows.ts';

/** What to do next time, and the two facts that decided it. */
export interface NextTime {
	readonly advice: NextAdvice;
	readonly because: readonly [Fact, Fact];
	/** What the outing was about: runs, or brisk walks. */
	readonly main: OutingFacts['main'];
	/** The speed that was used last, km/h. */
	readonly speedKmh: number | null;
	/** For one notch up: first in the last one, and the time after in all of them. */
	readonly inAll: boolean;
}

/**
 * What to do next time, from the newest outing and those before it: a table, tried from the top.
 * Common practice and our own caution, no source.
 *
 * A raise is never given after two weeks without an outing, a hot one, pain, or one that was not
 * ended as planned: the gap stands lower in the table, but it undoes what was earned. A sign that a
 * doctor's advice has lifted since counts as an illness: one step back.
 *
 * @param outings newest first, at least one
 * @throws RangeError for none
 */
export function nextTime(outings: readonly DatedOuting[], rules: NextTimeRules): NextTime {
	const [newest] = outings;
	if (newest === undefined) throw new RangeError('nextTime requires an outing');
	const asked: Asked = { seen: factsOf(newest, rules), newest, outings, rules };
	const row = rows.find(({ when }) => when(asked));
	const [one, other] = row?.because(asked) ?? [];
	if (!row || !one || !other) throw new RangeError('nextTime requires two facts for each row');
	return {
		advice: row.advice,
		because: [one, other],
		main: asked.seen.main,
		speedKmh: asked.seen.speedKmh,
		inAll: row.advice === 'notch-up' && timesItWentWell(asked) > 1
	};
}
