import { z } from 'zod';
import { oneOf, optional, ticked } from './fields.ts';
import { PASSWORD_LONGEST } from './password.ts';
import { personName, tidyName } from './person-name.ts';

/** RFC 5321, 4.5.3.1.3 (M): a path has at most 256 characters, brackets included. */
const EMAIL_LONGEST = 254;
const QUALIFICATION_LONGEST = 120;

/** One e-mail is one coach, however it is typed: capitals do not count, a plus and after it does. */
const email = z
	.string({ error: 'missing' })
	.trim()
	.toLowerCase()
	.min(1, 'missing')
	.max(EMAIL_LONGEST, 'not-an-email')
	.pipe(z.email('not-an-email'));

/** Taken as it is: a space at either end is part of it. Its rules are in password.ts. */
const newPassword = z.string({ error: 'missing' }).min(1, 'missing');

/** One that exists already: its length is limited only so that nobody sends a book. */
const password = newPassword.max(PASSWORD_LONGEST * 2, 'too-long');

/** As people write it, in one line. */
const qualification = optional(
	z.string().transform(tidyName).pipe(z.string().max(QUALIFICATION_LONGEST, 'too-long'))
);

/** Ticked to be remembered on this device. */
const stay = z.literal('yes').optional();

export const signUpForm = z.object({
	name: personName,
	qualification,
	email,
	password: newPassword
});
export const signInForm = z.object({ email, password, stay });
/** Puts the runner's account aside that this browser holds. */
export const asideForm = z.object({ aside: ticked });
export const forgotForm = z.object({ email });
export const resetForm = z.object({ token: z.string().max(200), password: newPassword });
export const changePasswordForm = z.object({ current: password, password: newPassword });
export const aboutCoachForm = z.object({ name: personName, qualification });
export const signUpSettingForm = z.object({ signUp: oneOf(['open', 'invitation']) });
