import fc from 'fast-check';
import { outingLimits } from '$lib/outing/outing-limits.ts';
import type { Outing, OutingPart, OutingPhase } from '$lib/outing/outing.ts';
import { phaseKinds } from '$lib/outing/phase.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';

/** Any phase within the limits; a speed is one at which people both walk and run. */
export const anyPhase: fc.Arbitrary<OutingPhase> = fc
	.record({
		kind: fc.constantFrom(...phaseKinds),
		seconds: fc.integer({ min: 5, max: 130 }),
		speedKmh: fc.option(fc.integer({ min: 50, max: 70 }).map((tenths) => tenths / 10)),
		inclinePercent: fc.option(fc.integer({ min: 0, max: 15 })),
		cue: fc.constantFrom('', 'Let the shoulders hang')
	})
	.map(({ kind, seconds, ...rest }) => ({ ...plainPhase(kind, seconds), ...rest }));

export const anyPart: fc.Arbitrary<OutingPart> = fc.oneof(
	{ weight: 3, arbitrary: anyPhase },
	fc.record({
		times: fc.integer({ min: outingLimits.times.low, max: 5 }),
		phases: fc.array(anyPhase, { minLength: 1, maxLength: 3 })
	})
);

/** Any outing that is sound but perhaps too short. */
export const anyOuting: fc.Arbitrary<Outing> = fc.record({
	name: fc.constantFrom('Outing 3, longest run 0:50', 'Along the canal'),
	parts: fc.array(anyPart, { minLength: 1, maxLength: 7 })
});
