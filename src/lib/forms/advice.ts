import { z } from 'zod';
import { limits } from '../physiology/limits.ts';
import { calendarDate, oneOf, optional, wholeNumber } from './fields.ts';

/** What a professional said, as the runner writes it down. */
export const adviceForm = z.object({
	givenOn: calendarDate,
	role: oneOf([
		'doctor',
		'nurse',
		'physiotherapist',
		'midwife',
		'pharmacist',
		'exercise-professional'
	]),
	covers: z.array(z.string().max(40)).max(60),
	scope: oneOf(['none', 'walk', 'walkrun', 'all']),
	limitBpm: optional(wholeNumber({ low: 60, high: limits.maximumBpm.plausible.high }))
});
