import { z } from 'zod';
import { calendarDate, wholeNumber } from './fields.ts';

/** One morning's count: beats, the seconds that were counted, and the day. */
export const morningForm = z.object({
	beats: wholeNumber({ low: 1, high: 400 }),
	seconds: z
		.enum(['60', '30', '15'], { error: 'unknown-option' })
		.transform((seconds) => Number(seconds) as 60 | 30 | 15),
	on: calendarDate
});
