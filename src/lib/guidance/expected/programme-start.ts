import { phaseTargets } from '../../outing/phase.ts';
import { plainPhase } from '../../outing/plain-phase.ts';
import { programmeLimits, wholeSteps } from '../../outing/programme/programme-limits.ts';
import { unknownPulse, type ProgrammePulse } from '../../outing/programme/wishes.ts';
import { longestRun } from '../../physiology/longest-run.ts';
import { reserveShareAsked } from './reserve-share-asked.ts';
import type { Course, NoCourse } from './course.ts';

/** What a programme for these runners begins with, unless their coach wishes otherwise. */
export interface ProgrammeStart {
	readonly firstRunSeconds: number;
	readonly settlingIn: boolean;
	readonly pulse: ProgrammePulse;
	/** How many of the runners who will run it is taken from. */
	readonly runnersKnown: number;
}

/** Where nobody's capacity is known. Our own caution, no source: runs begin with 20 to 30 s. */
const UNKNOWN_FIRST_RUN_SECONDS = 30;
/** Longer first runs are for the coach to wish. Our own caution, no source. */
const LONGEST_FIRST_RUN_SECONDS = 60;

/**
 * From the middle runner of a group: the longest first run that is expected to stay inside their
 * band after a recovery, at least 20 s, and how their pulse answers a slow run and a walk. Only who
 * will run counts, and of these only whose capacity is known.
 */
export function programmeStart(courses: readonly (Course | NoCourse)[]): ProgrammeStart {
	const toRun = courses
		.filter((course) => course.kind === 'course')
		.filter(({ runs, isSettlingIn }) => runs || isSettlingIn);
	const settlingIn = toRun.some((course) => course.isSettlingIn);
	const known = toRun
		.filter(({ capacity }) => capacity !== null)
		.map(answerOf)
		.sort((one, other) => one.runShare - other.runShare);
	const middle = known[Math.floor(known.length / 2)];
	if (middle === undefined) {
		const firstRunSeconds = UNKNOWN_FIRST_RUN_SECONDS;
		return { firstRunSeconds, settlingIn, pulse: unknownPulse, runnersKnown: 0 };
	}
	const { firstRunSeconds, ...pulse } = middle;
	return { firstRunSeconds, settlingIn, pulse, runnersKnown: known.length };
}

/** Of two middle runners the one for whom running is harder counts, by the way they are sorted. */
function answerOf(course: Course): ProgrammePulse & { readonly firstRunSeconds: number } {
	const run = reserveShareAsked(plainPhase('steady-run', 60), course);
	const walk = reserveShareAsked(plainPhase('recovery-walk', 60), course);
	const longest = longestRun({
		startBpm: phaseTargets['recovery-walk'].reserve.high,
		steadyRunBpm: run,
		upperEdgeBpm: course.ranges['steady-run'].high
	});
	const seconds = longest.kind === 'seconds' ? wholeSteps(longest.seconds) : 0;
	const inBand = longest.kind === 'no-limit' ? LONGEST_FIRST_RUN_SECONDS : seconds;
	return {
		runShare: Math.min(run, 1),
		walkShare: Math.min(walk, 1),
		staysInBand: longest.kind === 'no-limit' ? 'yes' : 'no',
		firstRunSeconds: Math.min(
			Math.max(inBand, programmeLimits.firstRunSeconds.low),
			LONGEST_FIRST_RUN_SECONDS
		)
	};
}
