import { z } from 'zod';
import { oneOf, phoneNumber, rowId, textUpTo, ticked, wholeNumber } from './fields.ts';
import { personName } from './person-name.ts';

export const memberForm = z.object({ name: personName });

/** Joining a group: the name that its coach will see, and the box that was not ticked before. */
export const joinForm = z.object({ name: personName, agree: ticked });

/** Taking somebody off the list asks for its box. */
export const removeMemberForm = z.object({ sure: ticked });

/** Who is here: one member, on or off the list of a day. */
export const attendanceForm = z.object({
	member: rowId,
	here: oneOf(['yes', 'no'])
});

/** At which outing of the programme somebody stands, and what was seen of it. */
export const stepForm = z.object({
	to: wholeNumber({ low: 1, high: 1000 }),
	programme: rowId,
	changes: wholeNumber({ low: 0, high: 1_000_000 })
});

/** A press about one of the runner's own groups. */
export const membershipForm = z.object({ membership: rowId });

/** Whom to call for a runner. */
export const emergencyContactForm = z.object({
	contactName: personName,
	contactPhone: phoneNumber,
	contactRelation: textUpTo(40)
});
