import { z } from 'zod';
import type { Outing, OutingPart, OutingPhase, RepeatedPhases } from '../outing/outing.ts';
import { outingLimits } from '../outing/outing-limits.ts';
import { phaseKinds, type PhaseKind } from '../outing/phase.ts';
import { readJson } from './readable.ts';
import { Unreadable } from './vault.ts';

const { phaseSeconds, phases, times, nameLength, cueLength } = outingLimits;
const fraction = z.number().min(0).max(1);

const phase: z.ZodType<OutingPhase> = z.strictObject({
	kind: z.enum(phaseKinds as [PhaseKind, ...PhaseKind[]]),
	seconds: z.int().min(phaseSeconds.low).max(phaseSeconds.high),
	target: z.strictObject({ low: fraction, high: fraction }).nullable(),
	speedKmh: z.number().min(outingLimits.speedKmh.low).max(outingLimits.speedKmh.high).nullable(),
	inclinePercent: z
		.number()
		.min(outingLimits.inclinePercent.low)
		.max(outingLimits.inclinePercent.high)
		.nullable(),
	cue: z.string().max(cueLength.high)
});

const repeated: z.ZodType<RepeatedPhases> = z.strictObject({
	times: z.int().min(times.low).max(times.high),
	phases: z.array(phase).min(1).max(phases.high)
});

const parts: z.ZodType<readonly OutingPart[]> = z.array(z.union([repeated, phase])).min(1);

/** An outing as it stands in a row of ours, or as a script sends it. */
export const outingShape: z.ZodType<Outing> = z.strictObject({
	name: z.string().min(nameLength.low).max(nameLength.high),
	parts
});

/**
 * What a column holds, read back.
 * @throws Unreadable, for nobody should set out on half an outing
 */
export function outingOf(column: string, table: string): Outing {
	const read = outingShape.safeParse(readJson(column, table));
	if (!read.success) throw new Unreadable(table);
	return read.data;
}
