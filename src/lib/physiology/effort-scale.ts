/**
 * The effort scale of public health, 0 to 10: 0 is the effort of sitting, 5 and 6 are moderate,
 * vigorous begins at 7 or 8, and 10 is everything one has (source pag2018, for all adults). Only its
 * numbers are here; the words that go with them are our own and live with the other words.
 */
export const efforts = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;

export type Effort = (typeof efforts)[number];

/**
 * Whether a number is one that the scale has.
 * @example isEffort(6) // true
 * @example isEffort(6.5) // false
 */
export function isEffort(value: number): value is Effort {
	return Number.isInteger(value) && value >= 0 && value <= 10;
}

/**
 * What speaking aloud for about half a minute was like, easiest first. The talk-test literature
 * calls the three positive, equivocal and negative (source persinger2004).
 */
export const talkLevels = ['comfortable', 'with-breaths', 'broke-off'] as const;

export type TalkLevel = (typeof talkLevels)[number];
