import { z } from 'zod';
import { checkWishes, type ProgrammeWishes } from '../outing/programme/wishes.ts';

/** What a programme was made from. The generator makes the same weeks of it again. */
export type ProgrammeInputs = ProgrammeWishes;

const share = z.number().min(0).max(1);

const goal = z.discriminatedUnion('kind', [
	z.strictObject({ kind: z.literal('minutes'), minutes: z.number() }),
	z.strictObject({ kind: z.literal('distance'), kilometres: z.number(), speedKmh: z.number() }),
	z.strictObject({ kind: z.literal('walk-and-run'), longestRunSeconds: z.number() })
]);

/** As it stands in a row of ours. How far each wish may go is the generator's to say. */
export const programmeInputs: z.ZodType<ProgrammeInputs> = z
	.strictObject({
		weeks: z.int(),
		outingsAWeek: z.int(),
		firstRunSeconds: z.number(),
		goal,
		settlingIn: z.boolean(),
		pulse: z.strictObject({
			runShare: share,
			walkShare: share,
			staysInBand: z.enum(['yes', 'no', 'not-known'])
		})
	})
	.refine((wishes) => checkWishes(wishes).length === 0);
