import { z } from 'zod';
import { limits } from '../physiology/limits.ts';
import { decimalNumber, wholeNumber } from './fields.ts';

/** In km/h or miles an hour; which of them, and whether anybody walks so fast, is asked later. */
const speed = decimalNumber({ low: 1, high: 10 });
/** A full minute's beats: no adult's pulse is under 50 after three minutes of walking. */
const pulse = wholeNumber({ low: 50, high: limits.pulseBpm.plausible.high });

/** Three walks on a level treadmill: the speed of each, and the pulse at its end. */
export const walkCheckForm = z.object({
	speed1: speed,
	pulse1: pulse,
	speed2: speed,
	pulse2: pulse,
	speed3: speed,
	pulse3: pulse
});
