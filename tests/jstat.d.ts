/** The few functions of the statistics library that the tests take as a reference. */
declare module 'jstat' {
	interface Normal {
		pdf(at: number, mean: number, spread: number): number;
		cdf(at: number, mean: number, spread: number): number;
		inv(share: number, mean: number, spread: number): number;
	}
	export const jStat: {
		readonly normal: Normal;
		readonly studentt: { inv(share: number, degreesOfFreedom: number): number };
		quantiles(
			values: readonly number[],
			parts: readonly number[],
			alpha: number,
			beta: number
		): number[];
	};
}
