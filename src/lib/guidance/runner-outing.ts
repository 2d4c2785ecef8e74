import { isRepeated, type Outing, type OutingPhase } from '../outing/outing.ts';
import { plainPhase } from '../outing/plain-phase.ts';
import { longestRunNow, type SettlingIn } from '../outing/settling-in.ts';
import { shortenRuns } from '../outing/shorten-runs.ts';
import { allowedRange } from './allowed-range.ts';
import type { Guidance } from './guide.ts';
import type { OpenAccess } from './pulse-basis.ts';

type OpenGuidance = Extract<Guidance, { open: true }>;

export interface RunnerOuting {
	readonly outing: Outing;
	/** True where runs became brisk walks of the same length. */
	readonly walksInstead: boolean;
	/** How long its runs are at most where some had to end sooner; null where they are as written. */
	readonly shortenedToSeconds: number | null;
}

/**
 * An outing as one runner may do it now. Whoever may walk only, or still settles in, walks briskly
 * for as long as the others run; in the weeks after settling in a longer run ends sooner. A target ends where screening or the phase ends it, and with pulse
 * off there is none: it is a share of the reserve.
 */
export function runnerOuting(
	outing: Outing,
	access: OpenAccess,
	{ mayRun, settlingIn, pulse }: OpenGuidance
): RunnerOuting {
	const walks = !mayRun || settlingIn.kind === 'going-on';
	const longest = walks ? null : longestRunNow(settlingIn);
	const short = longest === null ? outing : shortenRuns(outing, longest);
	let walksInstead = false;
	const cut = (phase: OutingPhase): OutingPhase => {
		// The speed of a run is no speed of a walk, and its cue may speak of running.
		const isChanged = walks && phase.kind === 'steady-run';
		walksInstead ||= isChanged;
		const done = isChanged ? plainPhase('brisk-walk', phase.seconds) : phase;
		const target = pulse.kind === 'off' ? null : targetWithin(done, access, settlingIn);
		return { ...done, target };
	};
	const parts = short.parts.map((part) =>
		isRepeated(part) ? { ...part, phases: part.phases.map(cut) } : cut(part)
	);
	const shortenedToSeconds = short === outing ? null : longest;
	return { outing: { ...outing, parts }, walksInstead, shortenedToSeconds };
}

/** The low edge comes down with the high one; where nothing is left the phase's own target counts. */
function targetWithin(
	{ kind, target }: OutingPhase,
	access: OpenAccess,
	settling: SettlingIn
): OutingPhase['target'] {
	if (target === null) return null;
	const high = Math.min(target.high, allowedRange(access, settling, kind).reserve.highest);
	return target.low < high ? { low: target.low, high } : null;
}
