import { z } from 'zod';
import { painLevels, painPlaces, pulseSources, wrongSigns, type Entry } from '../outing/entry.ts';
import type { Outing, OutingPhase } from '../outing/outing.ts';
import { outingLimits } from '../outing/outing-limits.ts';
import { phaseKinds, type PhaseKind } from '../outing/phase.ts';
import { efforts, talkLevels } from '../physiology/effort-scale.ts';

const within = ({ low, high }: { readonly low: number; readonly high: number }) =>
	z.number().min(low).max(high);
const { phaseSeconds, phases, times, nameLength, cueLength } = outingLimits;
const fraction = z.number().min(0).max(1);
const DAY_SECONDS = 86_400;

const outingPhase: z.ZodType<OutingPhase> = z.strictObject({
	kind: z.enum(phaseKinds as [PhaseKind, ...PhaseKind[]]),
	seconds: within(phaseSeconds).int(),
	target: z.strictObject({ low: fraction, high: fraction }).nullable(),
	speedKmh: within(outingLimits.speedKmh).nullable(),
	inclinePercent: within(outingLimits.inclinePercent).nullable(),
	cue: z.string().max(cueLength.high)
});
const repeated = z.strictObject({
	times: within(times).int(),
	phases: z.array(outingPhase).min(1).max(phases.high)
});
const outing: z.ZodType<Outing> = z.strictObject({
	name: z.string().min(nameLength.low).max(nameLength.high),
	parts: z
		.array(z.union([repeated, outingPhase]))
		.min(1)
		.max(phases.high)
});

const ofOuting = {
	id: z.uuid(),
	outingRunId: z.uuid(),
	at: z.int().min(0),
	seq: z.int().min(0).max(1_000_000),
	elapsedMs: z
		.number()
		.min(0)
		.max(7 * DAY_SECONDS * 1000)
};
// One more phase than an outing may hold: a cool-down walk may have been put in on the way.
const ofPhase = { ...ofOuting, phase: z.int().min(0).max(phases.high) };
const seconds = z.number().min(0).max(DAY_SECONDS);
// What a device can measure at all: wide, and made to catch slips rather than to judge a heart.
const bpm = z.number().min(20).max(260);
const source = z.enum(pulseSources);
const how = z.enum(['whole', 'skipped', 'cut-short']);
const kind = z.literal;
const pain = { level: z.enum(painLevels), where: z.enum(painPlaces).nullable() };

/** An entry as a prompter sends it, or as it is read back. */
export const entryShape: z.ZodType<Entry> = z.discriminatedUnion('kind', [
	z.strictObject({
		...ofOuting,
		kind: kind('started'),
		outing,
		plannedId: z.string().max(60).nullable(),
		place: z.enum(['treadmill', 'outdoors']),
		hot: z.boolean()
	}),
	z.strictObject({ ...ofOuting, kind: z.enum(['paused', 'resumed', 'halted', 'cooling-down']) }),
	z.strictObject({ ...ofPhase, kind: kind('skipped') }),
	z.strictObject({ ...ofPhase, kind: kind('added-seconds'), seconds }),
	z.strictObject({
		...ofPhase,
		kind: kind('talk-answer'),
		secondsIntoPhase: seconds,
		talk: z.enum(talkLevels),
		effort: z.literal([...efforts]).nullable(),
		speedKmh: within(outingLimits.speedKmh).nullable(),
		afterPassage: z.boolean(),
		pulse: z.strictObject({ bpm, source }).nullable(),
		guessedBpm: bpm.nullable().optional()
	}),
	z.strictObject({ ...ofPhase, kind: kind('phase-done'), activeSeconds: seconds, how }),
	z.strictObject({ ...ofOuting, kind: kind('ended'), how: z.enum(['finished', 'early']) }),
	z.strictObject({ ...ofOuting, kind: z.enum(['pain', 'pain-next-morning']), ...pain }),
	z.strictObject({ ...ofOuting, kind: kind('something-wrong'), sign: z.enum(wrongSigns) }),
	z.strictObject({
		...ofPhase,
		kind: kind('pulse-summary'),
		source,
		meanBpm: bpm,
		highestBpm: bpm,
		measuredSeconds: seconds
	})
]);

/** What came over the wire as an entry, or null for what is none. */
export function checkEntry(sent: unknown): Entry | null {
	const read = entryShape.safeParse(sent);
	return read.success ? read.data : null;
}
