import { z } from 'zod';
import { oneOf, ticked } from './fields.ts';

export const consentForm = z.object({ agree: ticked });
export const checkForm = z.object({ truth: ticked });
export const looserForm = z.object({
	why: oneOf(['mistake', 'health', 'advice', 'plan', 'other'])
});
export const wellAgainForm = z.object({
	feelWell: oneOf(['yes', 'no']),
	signs: oneOf(['no', 'yes', 'not_sure'])
});
