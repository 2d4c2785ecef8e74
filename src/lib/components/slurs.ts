import { phasesOf, type Outing } from '$lib/outing/outing.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';

/** A run as an arc over the line of time, in a box of 1000 by 100. */
export interface Slur {
	readonly path: string;
	readonly from: number;
	readonly to: number;
}

const WIDTH = 1000;
const BASE = 84;

/**
 * An outing as a line for walking with a slur over each run: the longer the run, the higher its arc.
 * Runs that follow each other without a walk are one.
 */
export function slursOf(outing: Pick<Outing, 'parts'>): readonly Slur[] {
	const phases = phasesOf(outing);
	const total = phases.reduce((sum, { seconds }) => sum + seconds, 0);
	if (!(total > 0)) return [];
	const runs: { from: number; to: number }[] = [];
	let at = 0;
	for (const { kind, seconds } of phases) {
		const until = at + seconds;
		const last = runs.at(-1);
		if (phaseTargets[kind].gait === 'run') {
			if (last?.to === at) last.to = until;
			else runs.push({ from: at, to: until });
		}
		at = until;
	}
	return runs.map(({ from, to }) => arc((from / total) * WIDTH, (to / total) * WIDTH));
}

function arc(from: number, to: number): Slur {
	// A short run stays to be seen, a long one stays in the picture.
	const height = Math.min(72, 26 + (to - from) * 0.35);
	const [left, right] = [from + (to - from) * 0.2, to - (to - from) * 0.2];
	const [top, under] = [BASE - height * 1.3, BASE - height * 1.12];
	const point = (x: number, y: number) => `${roundHalfUp(x, 1)} ${roundHalfUp(y, 1)}`;
	const there = `C ${point(left, top)} ${point(right, top)} ${point(to, BASE - 8)}`;
	const back = `C ${point(right, under)} ${point(left, under)} ${point(from, BASE - 8)}`;
	return { path: `M ${point(from, BASE - 8)} ${there} ${back} Z`, from, to };
}
