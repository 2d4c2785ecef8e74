import { talkEvidence } from '../guidance/ceiling/evidence.ts';
import { learnedCeiling, type LearnedCeiling } from '../guidance/ceiling/learned-ceiling.ts';
import type { Guidance } from '../guidance/guide.ts';
import type { Hold } from '../guidance/next-time/asked.ts';
import { nextTime, type NextTime } from '../guidance/next-time/next-time.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Signed } from './auth.ts';
import * as effortBands from './effort-bands.ts';
import type { House } from './open-house.ts';
import * as pains from './pains.ts';
import * as pastOutings from './past-outings.ts';
import type { Missed, Note } from './readable.ts';

/** So many outings back nothing weighs any more. */
const LOOKED_AT = 40;

/** What a runner's past outings say about the next one. */
export interface WhatNext {
	/** The outing that it follows from, and what to do next time; null without one. */
	readonly next: (NextTime & { readonly outingId: string }) | null;
	/** Null where no pulse of the runner's own may be shown. */
	readonly ceiling: LearnedCeiling | null;
}

type OpenGuidance = Extract<Guidance, { open: true }>;

/**
 * @param today the runner's own date
 * @returns null while the gate is closed
 * @throws VaultClosed
 */
export async function of(
	house: Pick<House, 'database' | 'vault'>,
	runner: Signed | null,
	now: number,
	today: LocalDate
): Promise<WhatNext | null> {
	const { access, guidance } = await effortBands.of(house, runner, now, today);
	if (!access.allowed || !guidance.open || runner === null) return null;
	const { database, vault } = house;
	const missed: Missed[] = [];
	const note: Note = (line) => missed.push(line);
	const all = await pastOutings.newest(database, vault, runner.runnerId, LOOKED_AT, note);
	// A line that cannot be read may have said that it was too much: then nothing is advised.
	if (missed.length > 0) return { next: null, ceiling: null };
	const begun = all.filter(({ started }) => started !== null);
	const painStands = await pains.stands(database, runner.runnerId);
	const careLimitBpm = access.pulse.careTeamLimitBpm;
	return {
		next: nextOf(begun, guidance, { today, painStands, careLimitBpm }),
		ceiling: learnedCeiling(guidance, talkEvidence(begun, today))
	};
}

interface Now {
	readonly today: LocalDate;
	readonly painStands: boolean;
	readonly careLimitBpm: number | null;
}

function nextOf(
	outings: readonly pastOutings.PastOuting[],
	{ mayRun, settlingIn, phases, pulse }: OpenGuidance,
	{ today, painStands, careLimitBpm }: Now
): WhatNext['next'] {
	const [newest] = outings;
	if (newest === undefined) return null;
	const settles = settlingIn.kind === 'going-on';
	const runsAreOpen = mayRun && !settles;
	const held = holdOf(settles, careLimitBpm);
	const highOf = (kind: 'steady-run' | 'brisk-walk') =>
		pulse.kind === 'on' ? (phases.find((one) => one.kind === kind)?.pulse?.high.bpm ?? null) : null;
	const next = nextTime(outings, {
		today,
		held: { 'steady-run': runsAreOpen ? held : 'no-runs', 'brisk-walk': held },
		bandHighBpm: { 'steady-run': highOf('steady-run'), 'brisk-walk': highOf('brisk-walk') },
		painStands,
		// An urgent sign closes the gate until a doctor has lifted it.
		signStands: false
	});
	// Whoever ran and may not run now is told nothing about runs.
	const isAboutRuns = next.main === 'steady-run' && next.advice !== 'walk-only';
	return isAboutRuns && !runsAreOpen ? null : { ...next, outingId: newest.id };
}

/** Whether a limit of a care team is kept is theirs to judge, not ours from talk alone. */
function holdOf(settles: boolean, careLimitBpm: number | null): Hold | null {
	if (settles) return 'settling-in';
	return careLimitBpm === null ? null : 'care-limit';
}
