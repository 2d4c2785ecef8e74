import { z } from 'zod';

/** A number to call, as digits. The page puts what was typed under "other" in its place. */
export const emergencyNumberForm = z.object({
	number: z
		.string({ error: 'missing' })
		.trim()
		.min(1, 'missing')
		.regex(/^\+?[0-9][0-9 ]{1,14}$/, 'not-a-number')
		.transform((number) => number.replaceAll(' ', ''))
});
