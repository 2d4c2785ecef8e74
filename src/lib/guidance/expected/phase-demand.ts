import type { OutingPhase } from '../../outing/outing.ts';
import { phaseTargets } from '../../outing/phase.ts';
import type { WeighedCapacity } from '../../physiology/capacity.ts';
import { speedLimit } from '../../physiology/limits.ts';
import { oxygenUptake } from '../../physiology/metabolic-cost.ts';
import type { Demand } from '../../physiology/steady-pulse.ts';
import { metresPerMinuteFromKmPerHour } from '../../physiology/units.ts';
import { reserveFractionOfUptake } from '../../physiology/uptake-reserve.ts';
import { LOWEST_FRACTION } from '../band-setting.ts';
import type { Course, ShareRange } from './course.ts';

/** Between 4 and 5 km/h, as recovery walks are for everybody. */
const RECOVERY_KM_PER_HOUR = 4.5;

/** The range in which a runner is in a phase, and what the phase asks. */
export interface PhaseDemand {
	readonly range: ShareRange;
	readonly demand: Demand;
	/** What the demand was taken from. */
	readonly from: 'speed' | 'slowest-run' | 'recovery-speed' | 'range';
}

/**
 * What a phase asks of one runner. A written speed counts where a capacity is known to weigh it
 * against; else the runner is taken to hold the middle of the range, as the line and the band ask.
 * A run for which even the slowest running is more than the range is taken at that slowest speed.
 */
export function phaseDemand(phase: OutingPhase, { ranges, capacity }: Course): PhaseDemand {
	const range = narrowed(ranges[phase.kind], phase.target);
	if (capacity !== null) {
		if (phase.speedKmh !== null) {
			return { range, demand: atSpeed(phase, phase.speedKmh), from: 'speed' };
		}
		if (phase.kind === 'recovery-walk') {
			return { range, demand: atSpeed(phase, RECOVERY_KM_PER_HOUR), from: 'recovery-speed' };
		}
		const slowest = atSpeed(phase, speedLimit('run').valid.low);
		if (slowest.gait === 'run' && shareOf(slowest, capacity) > range.high) {
			return { range, demand: slowest, from: 'slowest-run' };
		}
	}
	return { range, demand: { kind: 'reserve', reserveFraction: middle(range) }, from: 'range' };
}

/** Where a phase's own target and the runner's range do not meet, the gentler of the two counts. */
function narrowed(range: ShareRange, target: OutingPhase['target']): ShareRange {
	if (target === null) return range;
	const high = Math.min(range.high, target.high);
	const low = Math.max(range.low ?? 0, target.low);
	if (low < high) return { low, high };
	return range.high < target.high ? range : target;
}

/** "Anything under" is taken from a stroll up. */
function middle({ low, high }: ShareRange): number {
	return ((low ?? Math.min(LOWEST_FRACTION, high)) + high) / 2;
}

type SpeedDemand = Extract<Demand, { kind: 'speed' }>;

function atSpeed({ kind, inclinePercent }: OutingPhase, speedKmh: number): SpeedDemand {
	return {
		kind: 'speed',
		gait: phaseTargets[kind].gait,
		speedMetresPerMinute: metresPerMinuteFromKmPerHour(speedKmh),
		grade: (inclinePercent ?? 0) / 100
	};
}

function shareOf(effort: SpeedDemand, { mlPerKgPerMinute }: WeighedCapacity): number {
	return reserveFractionOfUptake(oxygenUptake(effort), mlPerKgPerMinute);
}
