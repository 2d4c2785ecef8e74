import { z } from 'zod';
import { phaseKinds, type PhaseKind } from '../outing/phase.ts';
import { oneOf } from './fields.ts';

export const phaseField = oneOf(phaseKinds as [PhaseKind, ...PhaseKind[]]);

/** "This feels wrong", about one phase. */
export const bandDoubtForm = z.object({
	phase: phaseField,
	feels: oneOf(['too-easy', 'too-hard', 'other'])
});
