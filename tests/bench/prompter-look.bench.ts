import { dueEntries } from '../../src/lib/outing/due-entries.ts';
import type { Entry } from '../../src/lib/outing/entry.ts';
import { logOfEntries } from '../../src/lib/outing/log-of-entries.ts';
import { phasesOf, type Outing } from '../../src/lib/outing/outing.ts';
import { plainPhase } from '../../src/lib/outing/plain-phase.ts';
import { talkMomentAt } from '../../src/lib/outing/talk-moment.ts';
import { cuesSince, positionAt } from '../../src/lib/outing/timeline.ts';
import type { BenchCase } from './bench-case.ts';

const round = [plainPhase('steady-run', 50), plainPhase('recovery-walk', 110)];
const outing: Outing = { name: 'Long', parts: [{ times: 30, phases: round }] };
const planned = phasesOf(outing);
/** Near the end of an outing of 80 minutes, with an answer and an end written down of each phase. */
const NOW_MS = 79 * 60 * 1000;
const of = (seq: number) => ({ id: `${seq}`, outingRunId: 'run', at: seq, seq, elapsedMs: 0 });
const started: Entry = {
	...of(0),
	kind: 'started',
	outing,
	plannedId: null,
	place: 'outdoors',
	hot: false
};
const others = planned.slice(0, -2).flatMap((_, phase): Entry[] => [
	{
		...of(2 * phase + 1),
		kind: 'talk-answer',
		phase,
		secondsIntoPhase: 40,
		talk: 'comfortable',
		effort: 5,
		speedKmh: null,
		afterPassage: false,
		pulse: null
	},
	{ ...of(2 * phase + 2), kind: 'phase-done', phase, activeSeconds: 50, how: 'whole' }
]);
const entries = [started, ...others];

const log = logOfEntries(entries);

/** What the prompter works out four times a second. */
function look() {
	const position = positionAt(planned, log, NOW_MS);
	return [talkMomentAt(position), cuesSince(planned, log, NOW_MS - 250, NOW_MS)];
}

/** What it works out where a phase has ended or a thumb has done something. */
const write = () => [logOfEntries(entries), dueEntries(outing, entries, NOW_MS)];

/** Where in the plan a moment lies, by adding up, and nothing else. */
function place() {
	let at = 0;
	return planned.findIndex(({ seconds }) => (at += seconds * 1000) > NOW_MS);
}

export const cases: readonly BenchCase[] = [
	{
		// Half of the 8 ms that a frame may take on a phone that is four times slower: the rest draws.
		name: 'one look of the prompter at a long outing',
		work: look,
		reference: { name: 'the lengths added up', work: place },
		mustReachMicroseconds: 1000
	},
	{
		name: 'what the prompter has to write down of a long outing',
		work: write,
		reference: { name: 'the lengths added up', work: place },
		mustReachMicroseconds: 2000
	}
];
