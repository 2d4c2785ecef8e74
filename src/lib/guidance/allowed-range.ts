import { phaseTargets, type PhaseKind } from '../outing/phase.ts';
import type { SettlingIn } from '../outing/settling-in.ts';
import { ceilingNow } from './ceiling-now.ts';
import { MODERATE_CAP_EFFORT, MODERATE_CAP_FRACTION } from './narrow-target.ts';
import type { OpenAccess } from './pulse-basis.ts';

/** Where a setting ends, and whether the runner's screening or the phase itself ends it. */
export interface End {
	readonly highest: number;
	readonly because: 'screening' | 'phase';
}

/** The widest that a coach may set a phase for one runner. */
export interface AllowedRange {
	/** Fraction of reserve that the upper edge may reach. */
	readonly reserve: End;
	/** Effort 0 to 10 that the upper end may reach. */
	readonly effort: End;
}

/**
 * How far each phase may be raised for anybody. Common practice, no source: each end stays in the
 * intensity class of the phase's own upper edge (Garber 2011) and low enough that the phase keeps
 * its meaning, a warm-up gentler than the run that follows. A run ends at 70 % of reserve, about
 * where sedentary adults' comfortable talk ended on the average (Foster 2009, 79 % of maximum), and
 * nothing is set above effort 6, because 7 means ease off.
 */
const phaseEnds: Readonly<Record<PhaseKind, { reserve: number; effort: number }>> = {
	'warm-up-walk': { reserve: 0.5, effort: 5 },
	'brisk-walk': { reserve: MODERATE_CAP_FRACTION, effort: MODERATE_CAP_EFFORT },
	'steady-run': { reserve: 0.7, effort: MODERATE_CAP_EFFORT },
	'recovery-walk': { reserve: 0.55, effort: 5 },
	'cool-down-walk': { reserve: 0.4, effort: 4 }
};

const usualRun = phaseTargets['steady-run'].reserve;

/**
 * What a coach may set for this runner now. Screening comes first: at a moderate ceiling and while
 * settling in nothing passes 59 % or effort 6, and a run of somebody who had to settle in keeps its
 * usual upper edge. The last is our own caution, no source.
 */
export function allowedRange(
	access: OpenAccess,
	settling: SettlingIn,
	phase: PhaseKind
): AllowedRange {
	const screened = screenedEnds(access, settling, phase);
	const own = phaseEnds[phase];
	return {
		reserve: lower(screened.reserve, own.reserve),
		effort: lower(screened.effort, own.effort)
	};
}

/** The ends of a phase for a group, whose runners differ: screening cuts each one's later. */
export function phaseRange(phase: PhaseKind): AllowedRange {
	const { reserve, effort } = phaseEnds[phase];
	return {
		reserve: { highest: reserve, because: 'phase' },
		effort: { highest: effort, because: 'phase' }
	};
}

function screenedEnds(access: OpenAccess, settling: SettlingIn, phase: PhaseKind) {
	if (ceilingNow(access, settling) === 'moderate') {
		return { reserve: MODERATE_CAP_FRACTION, effort: MODERATE_CAP_EFFORT };
	}
	const hadToSettleIn = access.startEffort !== 'vigorous';
	return {
		reserve: hadToSettleIn && phase === 'steady-run' ? usualRun.high : Infinity,
		effort: Infinity
	};
}

/** Where both end at the same place it is the phase: it would end there for anybody. */
function lower(screened: number, own: number): End {
	return screened < own
		? { highest: screened, because: 'screening' }
		: { highest: own, because: 'phase' };
}
