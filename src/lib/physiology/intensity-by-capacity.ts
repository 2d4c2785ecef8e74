import type { CutPoints } from './intensity.ts';

/**
 * Per cent of the highest uptake at a per cent of uptake reserve. For: why "64 % of the highest
 * uptake" means different efforts in a fit and in an unfit person, and reserve does not.
 *
 * One MET of rest plus the fraction of what lies above it, over the whole. Follows from the meaning
 * of reserve with rest taken as one MET (source swain1997 for the use; garber2011 prints the result
 * for three capacities). Exact but for people whose resting uptake is not one MET.
 *
 * @param reservePercent 0 to 100
 * @param capacityMets highest uptake in METs, above 1
 * @throws RangeError when either is outside
 * @example uptakePercentAt(60, 10) // 64
 */
export function uptakePercentAt(reservePercent: number, capacityMets: number): number {
	if (!(reservePercent >= 0 && reservePercent <= 100)) {
		throw new RangeError('uptakePercentAt requires 0 to 100 % of reserve');
	}
	if (!(capacityMets > 1 && capacityMets < Infinity)) {
		throw new RangeError('uptakePercentAt requires a capacity above 1 MET');
	}
	return (100 + reservePercent * (capacityMets - 1)) / capacityMets;
}

/**
 * Cut points in per cent of the highest uptake for three capacities, as printed (source garber2011,
 * from memory). Each is uptakePercentAt of the reserve cut points, rounded half up.
 */
export const uptakeCutPointsByCapacity: readonly {
	readonly capacityMets: number;
	readonly cutPoints: CutPoints;
}[] = [
	{ capacityMets: 20, cutPoints: [34, 43, 62, 91] },
	{ capacityMets: 10, cutPoints: [37, 46, 64, 91] },
	{ capacityMets: 5, cutPoints: [44, 52, 68, 92] }
];
