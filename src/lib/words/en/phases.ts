import type { PhaseKind } from '$lib/outing/phase.ts';

/**
 * The line to say aloud in each phase. `|` stands where the breath falls and is drawn as a breath
 * mark. Short enough to say while moving; a language pack replaces each line whole.
 */
export const phases: Record<PhaseKind, { name: string; line: string; feel: string }> = {
	'warm-up-walk': {
		name: 'Warm-up walk',
		line: 'I could tell you about my whole weekend, no pauses needed.',
		feel: 'Easy, getting warmer. Long sentences.'
	},
	'brisk-walk': {
		name: 'Brisk walk',
		line: 'I can tell you a whole story | and I feel that I am working.',
		feel: 'Breathing deeper. Whole sentences stay comfortable.'
	},
	'steady-run': {
		name: 'Steady run',
		line: 'I can say one full sentence | then I want a breath | then the next.',
		feel: 'Talk stays comfortable. The breaths in this line belong to the last third of a run, not before.'
	},
	'recovery-walk': {
		name: 'Recovery walk',
		line: 'By the end of it | I could chat on the phone again.',
		feel: 'Talk is comfortable again before the next run. Your pulse may still be up.'
	},
	'cool-down-walk': {
		name: 'Cool-down walk',
		line: 'I could sing the chorus if nobody were listening.',
		feel: 'Slower and slower. Do not stop all at once.'
	}
};

export const effortWords: readonly string[] = [
	'sitting still',
	'barely moving',
	'a stroll, could sing',
	'easy, long sentences',
	'steady, long sentences, warmer',
	'whole sentences, breathing deeper',
	'one sentence, then a breath',
	'a few words at a time: ease off',
	'two or three words',
	'single words',
	'everything you have'
];
