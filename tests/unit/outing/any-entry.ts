import fc from 'fast-check';
import { painLevels, painPlaces, wrongSigns, type Entry } from '$lib/outing/entry.ts';
import { efforts, talkLevels } from '$lib/physiology/effort-scale.ts';
import { anyOuting } from './any-outing.ts';

export const RUN = '6f1c9c2e-3b7a-4f43-9d62-0c9bb2c1a001';

const phase = fc.integer({ min: 0, max: 9 });

const anyContent = fc.oneof(
	fc.record({
		kind: fc.constant('started' as const),
		outing: anyOuting,
		plannedId: fc.constant(null),
		place: fc.constantFrom('treadmill' as const, 'outdoors' as const),
		hot: fc.boolean()
	}),
	fc.record({ kind: fc.constantFrom('paused' as const, 'resumed' as const) }),
	fc.record({
		kind: fc.constant('talk-answer' as const),
		phase,
		secondsIntoPhase: fc.integer({ min: 0, max: 600 }),
		talk: fc.constantFrom(...talkLevels),
		effort: fc.option(fc.constantFrom(...efforts)),
		speedKmh: fc.option(fc.constantFrom(5, 6.5)),
		afterPassage: fc.boolean(),
		pulse: fc.constant(null),
		guessedBpm: fc.constantFrom(undefined, null, 120)
	}),
	fc.record({
		kind: fc.constant('phase-done' as const),
		phase,
		activeSeconds: fc.integer({ min: 0, max: 600 }),
		how: fc.constantFrom('whole' as const, 'skipped' as const)
	}),
	fc.record({
		kind: fc.constant('ended' as const),
		how: fc.constantFrom('finished' as const, 'early' as const)
	}),
	fc.record({
		kind: fc.constantFrom('pain' as const, 'pain-next-morning' as const),
		level: fc.constantFrom(...painLevels),
		where: fc.option(fc.constantFrom(...painPlaces))
	}),
	fc.record({
		kind: fc.constant('something-wrong' as const),
		sign: fc.constantFrom(...wrongSigns)
	})
);

/** Any entry of one outing run. Few numbers, so that two devices often write the same one. */
export const anyEntry: fc.Arbitrary<Entry> = fc
	.tuple(
		fc.uuid(),
		fc.integer({ min: 1_700_000_000_000, max: 1_700_000_000_005 }),
		fc.integer({ min: 0, max: 12 }),
		anyContent
	)
	.map(([id, at, seq, content]) => ({ id, outingRunId: RUN, at, seq, elapsedMs: 0, ...content }));
