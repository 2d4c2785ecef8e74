import { expect, test } from 'vitest';
import { readingGrade, sentencesOf, wordsOf } from './reading-grade.ts';
import { everyText, textsIn } from './texts-of.ts';

/*
 * The grade is that of Kincaid 1975, as in reading-grade.ts. It was made for passages of a hundred
 * words: on a short text one long word decides. So a text of under twelve words is measured with its
 * file, not alone. It counts length, not sense: only readers can say whether a text is understood.
 */
const MEASURED_ALONE = 12;

/** Reading age 11 to 12: US school grade 6. Common practice, no source, for how far one may go over. */
const GRADE = 6;
const HARDEST_TEXT = 11;
const LONGEST_SENTENCE = 34;

const texts = everyText().filter(({ text }) => wordsOf(text).length >= 3);
const isMeasuredAlone = ({ text }: { text: string }) => wordsOf(text).length >= MEASURED_ALONE;

test('what is put in counts as a word, keys and imports are no text', () => {
	const code =
		"import a from 'b c d'; export const x = { 'a key here': (n: 'one') => `to ${n} now` };";
	expect(textsIn('x.ts', code).map(({ text }) => text)).toEqual(['to 7 now']);
});

const files = [...new Set(texts.map(({ file }) => file))].filter((file) => {
	const words = texts.filter((one) => one.file === file).flatMap(({ text }) => wordsOf(text));
	return words.length >= 100;
});

test.each(files)(`%s is read at grade ${GRADE} or below`, (file) => {
	const all = texts.filter((one) => one.file === file).map(({ text }) => text);
	const asOne = all.map((text) => (/[.?!]$/.test(text) ? text : `${text}.`)).join(' ');
	expect(readingGrade(asOne)).toBeLessThanOrEqual(GRADE);
});

test(`no text goes over grade ${HARDEST_TEXT}`, () => {
	const hard = texts
		.filter(isMeasuredAlone)
		.map(({ file, line, text }) => ({ where: `${file}:${line}`, grade: readingGrade(text) }))
		.filter(({ grade }) => grade > HARDEST_TEXT);
	expect(hard).toEqual([]);
});

test(`no sentence has more than ${LONGEST_SENTENCE} words`, () => {
	const long = texts.flatMap(({ file, line, text }) =>
		sentencesOf(text)
			.filter((sentence) => wordsOf(sentence).length > LONGEST_SENTENCE)
			.map(() => `${file}:${line}`)
	);
	expect(long).toEqual([]);
});

test('no text shouts', () => {
	expect(texts.filter(({ text }) => text.includes('!')).map(({ text }) => text)).toEqual([]);
});
