import { z } from 'zod';
import { isLocalDate } from '../screening/calendar.ts';
import type { Advice, Answers, LocalDate, ScreeningResult } from '../screening/types.ts';

/*
 * What a sealed value must look like when it is read back. A row that does not fit is an error
 * that closes the gate, never a guess.
 */

export const localDate: z.ZodType<LocalDate> = z.string().refine(isLocalDate);

export const questionId = z.string().regex(/^[a-z][a-z0-9_.-]{0,79}$/i);

/** Lengths are far above what any form sends: they bound a row, they do not judge an answer. */
export const answers: z.ZodType<Answers> = z.record(
	questionId,
	z.union([z.string().max(400), z.number(), z.array(z.string().max(80)).max(60)])
);

/** A finished result, but for the time of its invalidation, which is a column. */
export type KeptResult = Omit<ScreeningResult, 'invalidatedAt'>;

export const result: z.ZodType<KeptResult> = z.strictObject({
	id: z.string(),
	rulesetId: z.string(),
	rulesetVersion: z.string(),
	status: z.enum(['CLEARED_ALL', 'CLEARED_WALK', 'WAIT', 'SEEK_ADVICE', 'EMERGENCY']),
	reasons: z.array(z.string()),
	plan: z.enum(['walk', 'walkrun', 'hard']),
	ageYears: z.int(),
	activity: z.strictObject({
		days: z.number(),
		minutes: z.number(),
		months: z.enum(['lt3', 'ge3']),
		hard: z.enum(['yes', 'no', 'not_sure'])
	}),
	completedAt: z.int(),
	completedOn: localDate,
	timeZone: z.string()
});

export type AdviceWords = Omit<Advice, 'id' | 'recordedAt'>;

export const advice: z.ZodType<AdviceWords> = z.strictObject({
	givenOn: localDate,
	role: z.enum([
		'doctor',
		'nurse',
		'physiotherapist',
		'midwife',
		'pharmacist',
		'exercise-professional'
	]),
	scope: z.enum(['none', 'walk', 'walkrun', 'all']),
	covers: z.array(z.string().max(40)).max(100),
	limitBpm: z.int().nullable()
});

/** Where an urgent sign was said, and which. */
export interface EventWords {
	readonly source: 'questions' | 'prompter' | 'afterwards';
	/** Ids of the signs that were ticked; empty when none was named. */
	readonly signs: readonly string[];
}

export const event: z.ZodType<EventWords> = z.strictObject({
	source: z.enum(['questions', 'prompter', 'afterwards']),
	signs: z.array(z.string().max(80)).max(60)
});
