import { z } from 'zod';
import { oneOf, ticked, timeZone } from './fields.ts';

export const settingsForm = z.object({
	theme: oneOf(['system', 'light', 'dark']),
	timeZone
});

export const deleteForm = z.object({ sure: ticked });

/** Eight letters and numbers; spaces, hyphens and small letters are forgiven. */
export const deviceCodeForm = z.object({
	code: z
		.string({ error: 'missing' })
		.transform((code) => code.replace(/[\s-]/g, '').toUpperCase())
		.pipe(
			z
				.string()
				.min(1, 'missing')
				.regex(/^[0-9A-Z]{8}$/, 'wrong')
		)
});
