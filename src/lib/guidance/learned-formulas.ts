import type { Formula } from '../physiology/formulas.ts';

/**
 * What is worked out of a runner's own outings, in the same records as the formulas of physiology.
 * Names and sentences live with the other words; a test holds that the functions are there.
 */
export const learnedFormulas = {
	talkCeiling: {
		use: 'learned',
		code: ['talkCeiling', 'priorCeiling', 'outingLikelihood', 'dayShifts', 'talkEvidence'],
		sources: ['foster2009', 'foster2008', 'abramowitzStegun1964'],
		error: null,
		limits: []
	},
	trend: {
		use: 'learned',
		code: ['lineThrough', 'ninetiethOfStudent', 'changeOf'],
		sources: ['abramowitzStegun1964'],
		error: null,
		limits: []
	},
	weeksAmount: {
		use: 'learned',
		code: ['doneWeeks', 'grewFast'],
		sources: ['nielsen2014'],
		error: null,
		limits: ['effort']
	}
} as const satisfies Record<string, Formula>;

export type LearnedFormulaId = keyof typeof learnedFormulas;
