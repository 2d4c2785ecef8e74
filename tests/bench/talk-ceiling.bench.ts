import { priorGrid } from '../../src/lib/guidance/ceiling/prior.ts';
import { outingLikelihood } from '../../src/lib/guidance/ceiling/outing-likelihood.ts';
import { talkCeiling } from '../../src/lib/guidance/ceiling/talk-ceiling.ts';
import { inventedRunner, maximum, resting } from '../unit/guidance/ceiling/invented-runners.ts';
import type { BenchCase } from './bench-case.ts';

const grid = priorGrid(resting, maximum);
const { evidence } = inventedRunner(1, 4);
const answer = [{ pulseBpm: 139, talk: 'with-breaths' }] as const;
const cells = new Float64Array(
	grid.ceilingsBpm.length * grid.gapsBpm.length * grid.scattersBpm.length
).fill(0.5);

const reference = {
	name: `one logarithm for each of ${cells.length} cells`,
	work: () => cells.reduce((sum, cell) => sum + Math.log(cell), 0)
};

export const cases: readonly BenchCase[] = [
	{
		name: 'talk ceiling, one talk answer more',
		work: () => grid.scattersBpm.map((scatter) => outingLikelihood(answer, grid, scatter)),
		reference,
		mustReachMicroseconds: 2_000
	},
	{
		name: 'talk ceiling, twelve answers from the start',
		work: () => talkCeiling(resting, maximum, evidence),
		reference,
		mustReachMicroseconds: 50_000
	}
];
