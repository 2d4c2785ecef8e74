import { addDays } from '../../calendar/local-date.ts';
import { plainPhase } from '../../outing/plain-phase.ts';
import type { Outing } from '../../outing/outing.ts';
import * as outingPlans from '../outing-plans.ts';
import { noonOf, type DemoPart } from './parts.ts';
import type { DemoWords } from './words.ts';

/** Uneven runs out along the path, and shorter ones back. Made up. */
const RUNS = [35, 50, 65, 80, 65, 50];
const LONGEST = Math.max(...RUNS);
const RECOVERY_SECONDS = 115;

/** What the coach wrote down beside the programme: one outing with runs, and one of walking. */
export const libraryOfGroup: DemoPart = async ({ database, coach, groupId, words, today }) => {
	const holder = { coach, groupId };
	const at = noonOf(addDays(today, -6));
	for (const outing of [walk(words.library), lockAndBack(words.library)]) {
		const made = await outingPlans.create(database, holder, outing, at);
		if (made.kind !== 'created') throw new Error(`the outing was not kept: ${made.kind}`);
	}
};

function lockAndBack({ withRuns, longCue }: DemoWords['library']): Outing {
	const runs = RUNS.flatMap((seconds, i) => [
		...(i === 0 ? [] : [plainPhase('recovery-walk', RECOVERY_SECONDS)]),
		{ ...plainPhase('steady-run', seconds), cue: seconds === LONGEST ? longCue : '' }
	]);
	const [first, last] = [plainPhase('warm-up-walk', 440), plainPhase('cool-down-walk', 400)];
	return { name: withRuns, parts: [first, ...runs, last] };
}

function walk({ walking }: DemoWords['library']): Outing {
	const brisk = [plainPhase('brisk-walk', 260), plainPhase('brisk-walk', 340)];
	return {
		name: walking,
		parts: [
			plainPhase('warm-up-walk', 440),
			brisk[0]!,
			plainPhase('recovery-walk', 100),
			brisk[1]!,
			plainPhase('cool-down-walk', 400)
		]
	};
}
