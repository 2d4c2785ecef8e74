import { z } from 'zod';
import { WALKING_PULSE_BPM } from '../guidance/typed-walk.ts';
import { decimalNumber, oneOf, wholeNumber } from './fields.ts';

/** In km/h or miles an hour; which of them, and whether anybody walks so fast, is asked later. */
const speed = decimalNumber({ low: 1, high: 10 });
/** Beats as they were read; what they can be depends on for how long. */
const pulse = wholeNumber({ low: 1, high: WALKING_PULSE_BPM.high });

/** Three walks on a level treadmill: the speed of each, and the pulse at its end. */
export const walkCheckForm = z.object({
	read: oneOf(['minute', 'count-15']),
	speed1: speed,
	pulse1: pulse,
	speed2: speed,
	pulse2: pulse,
	speed3: speed,
	pulse3: pulse
});
