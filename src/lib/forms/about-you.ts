import { z } from 'zod';
import { limits } from '../physiology/limits.ts';
import { decimalNumber, oneOf, optional, shortText, wholeNumber } from './fields.ts';

/** The optional short profile. Empty fields are null; "none" for sex is null too. */
export const aboutYouForm = z.object({
	name: shortText,
	sex: oneOf(['woman', 'man', 'none']).transform((sex) => (sex === 'none' ? null : sex)),
	heightCentimetres: optional(decimalNumber(limits.heightCentimetres.plausible)),
	weightKilograms: optional(decimalNumber(limits.weightKilograms.plausible)),
	activityLevel: optional(wholeNumber(limits.activityLevel.plausible)),
	supervisedMaximumBpm: optional(wholeNumber(limits.maximumBpm.plausible)),
	supervisedCapacity: optional(decimalNumber(limits.capacity.plausible)),
	speedUnits: oneOf(['km/h', 'mph']),
	paceUnits: oneOf(['min/km', 'min/mile'])
});
