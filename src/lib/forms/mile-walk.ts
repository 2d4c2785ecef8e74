import { z } from 'zod';
import { WALKING_PULSE_BPM } from '../guidance/typed-walk.ts';
import { typedLength } from '../outing/typed-length.ts';
import { limits } from '../physiology/limits.ts';
import { decimalNumber, oneOf, wholeNumber } from './fields.ts';

const { low, high } = limits.mileWalkMinutes.plausible;

/** The time as minutes and seconds: 14.30 may be 14 min 30 s or 14.3 min, and is asked again. */
const time = z
	.string({ error: 'missing' })
	.trim()
	.min(1, 'missing')
	.transform((text) => (/^\d{1,3}:[0-5]\d$/.test(text) ? (typedLength(text) ?? NaN) / 60 : NaN))
	.pipe(
		z.number({ error: 'not-a-time' }).min(low, 'faster-than-a-walk').max(high, 'slower-than-a-walk')
	);

/** A mile walked as fast as one can, and what its equation asks. */
export const mileWalkForm = z.object({
	/** In kilograms or pounds: which of them decides what it can be. */
	weight: decimalNumber({ low: 1, high: 1000 }),
	weightUnit: oneOf(['kg', 'lb']),
	sex: oneOf(['woman', 'man', 'none']).transform((sex) => (sex === 'none' ? null : sex)),
	time,
	read: oneOf(['minute', 'count-15']),
	pulse: wholeNumber({ low: 1, high: WALKING_PULSE_BPM.high })
});
