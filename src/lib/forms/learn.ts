import { z } from 'zod';
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
