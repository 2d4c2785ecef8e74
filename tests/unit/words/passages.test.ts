import { describe, expect, test } from 'vitest';
import { passages } from '$words/passages.ts';
import { readingGrade, sentencesOf, syllablesIn, wordsOf } from './reading-grade.ts';

/*
 * About 93 words, 28.7 s of speech, met the measured thresholds best (Schroeder 2017, Kinesiology
 * 49(1), abstract). Common practice, no source for five words either way.
 */
const WORDS = { fewest: 88, most: 98 };

/**
 * Reading age 9: US school grade 4, whose pupils are 9 to 10 years old. The grade is that of Kincaid
 * 1975, as in reading-grade.ts, of the whole text; no single sentence goes over grade 6.
 */
const GRADE = 4;
const HARDEST_SENTENCE_GRADE = 6;

describe.each(passages)('$title', ({ text }) => {
	test(`has about ninety words`, () => {
		expect(wordsOf(text).length).toBeGreaterThanOrEqual(WORDS.fewest);
		expect(wordsOf(text).length).toBeLessThanOrEqual(WORDS.most);
	});

	test(`is read at grade ${GRADE} or below`, () => {
		expect(readingGrade(text)).toBeLessThanOrEqual(GRADE);
	});

	test('has no sentence that stands out', () => {
		const hardest = Math.max(...sentencesOf(text).map(readingGrade));
		expect(hardest).toBeLessThanOrEqual(HARDEST_SENTENCE_GRADE);
	});

	test('has no word of more than three syllables, and no figure to stumble over', () => {
		expect(wordsOf(text).filter((word) => syllablesIn(word) > 3)).toEqual([]);
		expect(text).not.toMatch(/\d/);
	});
});

test('no two passages have a title or a sentence in common', () => {
	const all = passages.flatMap(({ title, text }) => [title, ...sentencesOf(text)]);
	expect(new Set(all).size).toBe(all.length);
});
