import { questions, type QuestionWords } from './questions-2026-11.ts';

/**
 * The words of a question of the rule set in use.
 * @throws RangeError for a question without words: a test makes sure that there is none
 */
export function questionWords(id: string): QuestionWords {
	const words = questions[id];
	if (words === undefined) throw new RangeError('questionWords requires a question with words');
	return words;
}
