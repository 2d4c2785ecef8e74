import { z } from 'zod';
import { painLevels, painPlaces } from '../outing/entry.ts';
import { oneOf, rowId, ticked } from './fields.ts';

/** Pain on the morning after an outing. Where it hurts may be left open. */
export const morningForm = z.object({
	run: rowId,
	level: oneOf(painLevels),
	where: z.preprocess((typed) => typed || null, oneOf(painPlaces).nullable())
});

/** Whoever deletes an outing says twice that they want to. */
export const deleteOutingForm = z.object({ sure: ticked });
