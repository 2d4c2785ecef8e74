import type { PlannedPhase } from '$lib/outing/plain-outing.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';

/** Musical arcs over a line: one over each run, as wide as the run lasts, in a box of 1000 by 60. */
export function slurs(phases: readonly PlannedPhase[]): readonly string[] {
	const total = phases.reduce((sum, { seconds }) => sum + seconds, 0);
	let at = 0;
	return phases.flatMap(({ kind, seconds }) => {
		const [from, to] = [at / total, (at + seconds) / total].map((share) => share * 1000);
		at += seconds;
		return kind === 'steady-run' ? [slur(from ?? 0, to ?? 0)] : [];
	});
}

/** Thick in the middle and thin at the ends: two curves between the same two points. */
function slur(from: number, to: number): string {
	const middle = (from + to) / 2;
	const rise = 30 + (to - from) * 2;
	const [outer, inner] = [56 - rise, 56 - rise + 16];
	const point = (left: number, right: number) => `${roundHalfUp(left, 1)} ${roundHalfUp(right, 1)}`;
	return `M${point(from, 56)}Q${point(middle, outer)} ${point(to, 56)}Q${point(middle, inner)} ${point(from, 56)}Z`;
}
