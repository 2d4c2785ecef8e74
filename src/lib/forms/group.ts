import { z } from 'zod';
import { emergencyNumberForm } from './emergency-number.ts';
import { calendarDate, oneOf, optional, rowId, textUpTo, ticked, timeZone } from './fields.ts';
import { NAME_LENGTH, tidyName } from './person-name.ts';

export const PLACE_LENGTH = 120;

/**
 * A group as its coach describes it. The emergency number may wait: without one no outing starts.
 */
export const groupForm = z.object({
	name: z
		.string({ error: 'missing' })
		.transform(tidyName)
		.pipe(z.string().min(1, 'missing').max(NAME_LENGTH, 'too-long')),
	usualPlace: textUpTo(PLACE_LENGTH),
	timeZone,
	units: oneOf(['km/h', 'mph']),
	paceUnits: oneOf(['min/km', 'min/mile']),
	emergencyNumber: optional(emergencyNumberForm.shape.number),
	meetingPoint: textUpTo(PLACE_LENGTH),
	defibrillator: textUpTo(PLACE_LENGTH),
	firstAider: textUpTo(PLACE_LENGTH)
});

export const invitationForm = z.object({ endsOn: calendarDate });

/** A press about one row. */
export const rowForm = z.object({ id: rowId });

export const coachRoleForm = z.object({ id: rowId, role: oneOf(['owner', 'helper']) });

/** Deleting a group asks for its box. */
export const deleteGroupForm = z.object({ sure: ticked });
