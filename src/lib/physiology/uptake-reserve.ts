import { withinPlausible } from './limits.ts';
import { REST_UPTAKE } from './metabolic-cost.ts';

/**
 * Uptake at a fraction of uptake reserve: rest, plus the fraction times capacity less rest. For:
 * turning a target in per cent of reserve into oxygen, and from there into a speed. The same
 * fraction of heart-rate reserve is taken as the same effort: on a treadmill the two lay within two
 * points, slope 1.03 (source swain1998, 50 adults), on a cycle within a tenth of a point (source
 * swain1997, 63 adults). Steady state only. Typical error of one person: 5 points.
 *
 * @param fraction 0 to 1
 * @param capacityUptake highest uptake, mL/kg/min
 * @returns mL/kg/min
 * @throws RangeError for a fraction outside 0 to 1 or a capacity that is not plausible
 * @example uptakeAtReserve(0.4, 35) // 16.1
 */
export function uptakeAtReserve(fraction: number, capacityUptake: number): number {
	if (!(fraction >= 0 && fraction <= 1)) {
		throw new RangeError('uptakeAtReserve requires a fraction from 0 to 1');
	}
	return REST_UPTAKE + fraction * uptakeReserve(capacityUptake);
}

/**
 * Fraction of uptake reserve that an uptake is, the inverse of uptakeAtReserve, with its sources and
 * error. Not cut to 0 and 1: more than 1 says that the person cannot keep it up.
 *
 * @param uptake mL/kg/min
 * @param capacityUptake highest uptake, mL/kg/min
 * @throws RangeError for a capacity that is not plausible
 * @example reserveFractionOfUptake(16.1, 35) // 0.4
 */
export function reserveFractionOfUptake(uptake: number, capacityUptake: number): number {
	return (uptake - REST_UPTAKE) / uptakeReserve(capacityUptake);
}

function uptakeReserve(capacityUptake: number): number {
	if (!withinPlausible('capacity', capacityUptake)) {
		throw new RangeError('uptakeReserve requires a plausible capacity, in mL/kg/min');
	}
	return capacityUptake - REST_UPTAKE;
}
