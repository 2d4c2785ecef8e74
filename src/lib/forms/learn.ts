import { z } from 'zod';
import { phaseKinds, type PhaseKind } from '../outing/phase.ts';
import { talkLevels, type TalkLevel } from '../physiology/effort-scale.ts';
import { limits } from '../physiology/limits.ts';
import { oneOf, wholeNumber } from './fields.ts';

export const effortField = wholeNumber(limits.effort.plausible).transform(
	(effort) => effort as 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10
);
export const talkField = oneOf(talkLevels as readonly TalkLevel[] as [TalkLevel, ...TalkLevel[]]);

/** After a stretch: which it was, how talk went, how it felt. */
export const edgeForm = z.object({
	stretch: wholeNumber({ low: 0, high: 9 }),
	talk: talkField,
	effort: effortField
});

/** Counts on one breath, at rest and while moving. */
export const oneBreathForm = z.object({
	rest: wholeNumber(limits.speechCount.plausible),
	moving: wholeNumber({ ...limits.speechCount.plausible, low: 0 })
});

const phase = oneOf(phaseKinds as [PhaseKind, ...PhaseKind[]]);

/** A guess at the end of a phase, before anything is seen. */
export const guessForm = z.object({
	phase,
	effort: effortField,
	pulse: wholeNumber(limits.pulseBpm.plausible)
});

/** The same where no pulse is shown. */
export const guessByTalkForm = guessForm.omit({ pulse: true });

export const countMethods = ['15', '10', 'device'] as const;

/** What is then seen: how talk went, and a counted pulse, or one that a device showed. */
export const lookForm = z.object({
	talk: talkField,
	method: oneOf(countMethods),
	beats: wholeNumber({ low: 1, high: limits.pulseBpm.plausible.high })
});

export const lookByTalkForm = lookForm.pick({ talk: true });
