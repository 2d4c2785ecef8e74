import type { OutingPhase } from '../../outing/outing.ts';
import { oxygenUptake } from '../../physiology/metabolic-cost.ts';
import { reserveFractionOfUptake } from '../../physiology/uptake-reserve.ts';
import type { Course } from './course.ts';
import { phaseDemand } from './phase-demand.ts';

/** The share of the reserve that a phase asks of a runner; above 1 it cannot be kept up. */
export function reserveShareAsked(phase: OutingPhase, course: Course): number {
	const { demand } = phaseDemand(phase, course);
	if (demand.kind === 'reserve') return demand.reserveFraction;
	if (course.capacity === null) throw new RangeError('reserveShareAsked requires a capacity');
	return reserveFractionOfUptake(oxygenUptake(demand), course.capacity.mlPerKgPerMinute);
}
