import { phaseKinds, type PhaseKind } from '../../outing/phase.ts';
import { longestRunNow, settlingIn } from '../../outing/settling-in.ts';
import type { WeighedCapacity } from '../../physiology/capacity.ts';
import { reserveFractionOf } from '../../physiology/reserve.ts';
import type { Access } from '../../screening/access.ts';
import { ceilingNow } from '../ceiling-now.ts';
import { MODERATE_CAP_FRACTION } from '../narrow-target.ts';
import type { RunnerProfile } from '../profile.ts';
import { pulseBasis, type OpenAccess, type PulseBasis } from '../pulse-basis.ts';
import { curveCapacityOf } from '../runner-capacity.ts';
import { setTarget } from '../set-target.ts';
import type { SetBand } from '../settings-in-force.ts';
import { gentleStart } from './gentle-start.ts';

/** Fractions of reserve. A null low edge means "anything under". */
export interface ShareRange {
	readonly low: number | null;
	readonly high: number;
}

/**
 * All that the expected pulse of one runner is worked out from, so that an outing may change under
 * it many times a second. Everything is a share of the heart-rate reserve: no beat, no age.
 */
export interface Course {
	readonly kind: 'course';
	/** False where each run is a brisk walk of the same length. */
	readonly runs: boolean;
	/** True where the runs come later: after six walks over two weeks. */
	readonly isSettlingIn: boolean;
	/** How long a run may last in the weeks after settling in; null where nothing limits it. */
	readonly longestRunSeconds: number | null;
	readonly ranges: Readonly<Record<PhaseKind, ShareRange>>;
	/** The most that any phase may be expected to reach for now; null where the ranges alone decide. */
	readonly top: { readonly share: number; readonly because: 'moderate' | 'first-weeks' } | null;
	/** One standard deviation of resting pulse and maximum, as shares of the reserve. */
	readonly restingSpread: number;
	readonly maximumSpread: number;
	readonly capacity: WeighedCapacity | null;
}

export type NoCourse = {
	readonly kind: 'no-course';
	/** With pulse off nothing is drawn, for its course could be wrong for this person. */
	readonly why: 'closed' | 'pulse-off' | 'pulse-not-known';
};

/**
 * @param daysSinceEachWalk whole days from each walking outing so far to today
 * @param set what the coaches of the runner's groups set, in any order
 */
export function courseOf(
	access: Access,
	profile: RunnerProfile,
	daysSinceEachWalk: readonly number[],
	set: readonly SetBand[] = []
): Course | NoCourse {
	if (!access.allowed) return { kind: 'no-course', why: 'closed' };
	const settling = settlingIn(access.startEffort === 'moderate' && access.run, daysSinceEachWalk);
	const basis = pulseBasis(access, profile);
	if (basis.kind === 'off') return { kind: 'no-course', why: 'pulse-off' };
	if (basis.kind === 'not-yet') return { kind: 'no-course', why: 'pulse-not-known' };
	const { resting, maximum } = basis;
	const reserveBpm = maximum.bpm - resting.bpm;
	const rangeOf = (kind: PhaseKind) =>
		cutByCareTeam(setTarget(kind, set, access, settling).target.reserve, basis);
	const isModerate = ceilingNow(access, settling) === 'moderate';
	return {
		kind: 'course',
		runs: access.run && settling.kind !== 'going-on',
		isSettlingIn: settling.kind === 'going-on',
		longestRunSeconds: longestRunNow(settling),
		ranges: Object.fromEntries(phaseKinds.map((kind) => [kind, rangeOf(kind)])) as Course['ranges'],
		top: topOf(access, isModerate, daysSinceEachWalk),
		restingSpread: resting.spreadBpm / reserveBpm,
		maximumSpread: maximum.spreadBpm / reserveBpm,
		capacity: curveCapacityOf(access, profile, basis)
	};
}

function topOf(
	access: OpenAccess,
	isModerate: boolean,
	daysSinceEachWalk: readonly number[]
): Course['top'] {
	if (isModerate) return { share: MODERATE_CAP_FRACTION, because: 'moderate' };
	const share = gentleStart(access.startEffort === 'moderate', daysSinceEachWalk);
	return share === null ? null : { share, because: 'first-weeks' };
}

/** As in pulseBand: a limit under the whole range makes it "anything under". */
function cutByCareTeam(
	{ low, high }: ShareRange,
	{ resting, maximum, careTeamLimitBpm }: Extract<PulseBasis, { kind: 'on' }>
): ShareRange {
	if (careTeamLimitBpm === null) return { low, high };
	const limit = Math.max(0, reserveFractionOf(careTeamLimitBpm, resting.bpm, maximum.bpm));
	if (limit >= high) return { low, high };
	return { low: low !== null && low < limit ? low : null, high: limit };
}
