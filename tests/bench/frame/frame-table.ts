import type { Frame } from './main-thread.ts';

/** Of the work of frames, or of the time that it took on the clock. */
export function quantile(
	frames: readonly Frame[],
	part: number,
	of: 'workMs' | 'clockMs' = 'workMs'
): number {
	const sorted = frames.map((frame) => frame[of]).sort((one, other) => one - other);
	return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? NaN;
}

/** A line of the table that is printed. */
export function row(work: string, frames: readonly Frame[]) {
	return {
		work,
		frames: frames.length,
		'median, ms': quantile(frames, 0.5).toFixed(1),
		'95th, ms': quantile(frames, 0.95).toFixed(1),
		'most, ms': quantile(frames, 1).toFixed(1),
		'95th on the clock, ms': quantile(frames, 0.95, 'clockMs').toFixed(1)
	};
}
