import { guide } from '../../src/lib/guidance/guide.ts';
import { emptyProfile, type RunnerProfile } from '../../src/lib/guidance/profile.ts';
import type { OpenAccess } from '../../src/lib/guidance/pulse-basis.ts';
import { wideOpen } from '../unit/guidance/wide-open.ts';
import type { BenchCase } from './bench-case.ts';

const MANY = 10_000;

const profile: RunnerProfile = { ...emptyProfile, mornings: [68, 66, 69], supervisedCapacity: 31 };
const runners = Array.from({ length: MANY }, (_, runner) => ({
	access: { ...wideOpen, ageYears: 18 + (runner % 60) },
	profile: { ...profile, mornings: [55 + (runner % 35)] }
}));

const fractions = [0.3, 0.45, 0.5, 0.62, 0.35, 0.5, 0.4];

/** Every edge of every phase by Karvonen and Tanaka, and nothing else. */
function edges({ ageYears }: Pick<OpenAccess, 'ageYears'>, [restingBpm = 0]: readonly number[]) {
	const maximumBpm = 208 - 0.7 * ageYears;
	let sum = 0;
	for (const fraction of fractions) sum += restingBpm + fraction * (maximumBpm - restingBpm);
	return sum;
}

export const cases: readonly BenchCase[] = [
	{
		name: 'bands for one runner, all phases',
		work: () => guide(wideOpen, profile, []),
		reference: {
			name: 'the edges alone, in plain arithmetic',
			work: () => edges(wideOpen, profile.mornings)
		},
		mustReachMicroseconds: 20
	},
	{
		name: `bands for ${MANY} runners`,
		work: () => runners.map((runner) => guide(runner.access, runner.profile, [])),
		reference: {
			name: 'their edges alone, in plain arithmetic',
			work: () => runners.map((runner) => edges(runner.access, runner.profile.mornings))
		},
		mustReachMicroseconds: 250_000
	}
];
