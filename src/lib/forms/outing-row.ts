import { z } from 'zod';
import { calendarDate, rowId } from './fields.ts';

/** A press about one outing of a library. */
export const outingRowForm = z.object({ id: rowId });

/** Sets an outing for a day. */
export const planDayForm = z.object({ onDate: calendarDate });
