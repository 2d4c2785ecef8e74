import { outingLimits } from './outing-limits.ts';

/** From so many seconds on, a hand moves a length by steps of so many. Our own choice, no source. */
const STEPS = [
	{ from: 5, by: 5 },
	{ from: 120, by: 10 },
	{ from: 300, by: 30 },
	{ from: 900, by: 60 },
	{ from: 1800, by: 300 }
] as const;

/**
 * The lengths that a slider of a phase stops at, in seconds: fine where they are short. Every other
 * whole second can be typed.
 *
 * @example lengthSteps[0] // 5
 */
export const lengthSteps: readonly number[] = STEPS.flatMap(({ from, by }, index) => {
	const until = STEPS[index + 1]?.from ?? outingLimits.phaseSeconds.high + by;
	return Array.from({ length: (until - from) / by }, (_, step) => from + step * by);
});

/**
 * The stop that is nearest to a length.
 *
 * @example lengthSteps[nearestStep(52)] // 50
 */
export function nearestStep(seconds: number): number {
	let nearest = 0;
	lengthSteps.forEach((step, index) => {
		const best = lengthSteps[nearest] ?? 0;
		if (Math.abs(step - seconds) < Math.abs(best - seconds)) nearest = index;
	});
	return nearest;
}
