import { z } from 'zod';
import { decimalNumber } from './fields.ts';

const beats = decimalNumber({ low: 0, high: 300 });

/** What somebody worked out with paper and a calculator. */
export const byHandForm = z.object({ maximum: beats, reserve: beats, low: beats, high: beats });
