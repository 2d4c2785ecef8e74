import { z } from 'zod';
import { decimalNumber, optional } from './fields.ts';

/** Outside this nobody measured it on earth, or it is in degrees Fahrenheit. */
const degrees = { low: -60, high: 60 };

/** What is known of today's heat, in degrees Celsius. */
export const heatForm = z.object({
	wetBulb: optional(decimalNumber(degrees)),
	index: optional(decimalNumber(degrees)),
	warned: z.literal('yes').optional()
});
