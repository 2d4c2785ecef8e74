import { expect, test } from 'vitest';
import { readingGrade, sentencesOf, syllablesIn } from './reading-grade.ts';

// Secondary: the sentence, its 13 words, 24 syllables and grade 11.3 stand in the encyclopaedia
// article on the Flesch-Kincaid readability tests.
test('the published example sentence has grade 11.3', () => {
	const example =
		'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.';
	expect(readingGrade(example)).toBeCloseTo(11.3, 1);
});

test.each([
	['the', 1],
	['these', 1],
	['table', 2],
	['stumbled', 2],
	['needed', 2],
	['passed', 1],
	['medicine', 3],
	['tied', 1]
])('%s has %i spoken syllables', (word, syllables) => {
	expect(syllablesIn(word)).toBe(syllables);
});

test('a sentence ends with its mark, not at an abbreviation without a space', () => {
	expect(sentencesOf('Are you? Yes. 160/90 counts.')).toEqual([
		'Are you?',
		'Yes.',
		'160/90 counts.'
	]);
});
