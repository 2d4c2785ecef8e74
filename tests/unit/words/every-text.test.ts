import { expect, test } from 'vitest';
import { readingGrade, sentencesOf, wordsOf } from './reading-grade.ts';
import { everyText, textsIn } from './texts-of.ts';

/*
 * The grade is that of Kincaid 1975, as in reading-grade.ts. It was made for passages of about a
 * hundred words: on a short text one long word decides. So
 *
 * - a text of twelve words or more is measured alone;
 * - shorter ones, down to a single word on a button, are measured together, those of each file as one
 *   passage; a file is the words of one page or one topic. They are no sentences, and as such would
 *   all be easy: so they count as if they stood in sentences of twelve words;
 * - every file is measured as a whole;
 * - what is left, files whose texts or short texts come to under a hundred words, is one passage.
 *
 * It counts length, not sense: only readers can say whether a text is understood.
 */
const MEASURED_ALONE = 12;
const PASSAGE = 100;

/** Reading age 11 to 12: US school grade 6. Common practice, no source, for how far one may go over. */
const GRADE = 6;
const HARDEST_TEXT = 11;
const LONGEST_SENTENCE = 34;

const texts = everyText().filter(({ text }) => wordsOf(text).length > 0);
const isMeasuredAlone = ({ text }: { text: string }) => wordsOf(text).length >= MEASURED_ALONE;
const isShort = (one: { text: string }) => !isMeasuredAlone(one);

/** As one passage: a text without an end is a sentence. */
const joined = (some: readonly { text: string }[]) =>
	some.map(({ text }) => (/[.?!]$/.test(text) ? text : `${text}.`)).join(' ');
/** The words of short texts, in sentences of twelve. */
const inSentences = (some: readonly { text: string }[]) =>
	wordsOf(joined(some))
		.map((word, at) => ((at + 1) % MEASURED_ALONE === 0 ? `${word}.` : word))
		.join(' ');
const byFile = (some: typeof texts) => [...Map.groupBy(some, ({ file }) => file)];
const isPassage = ([, some]: readonly [string, readonly { text: string }[]]) =>
	wordsOf(joined(some)).length >= PASSAGE;

test('what is put in counts as a word, keys and imports are no text', () => {
	const code =
		"import a from 'b c d'; export const x = { 'a key here': (n: 'one') => `to ${n} now` };";
	expect(textsIn('x.ts', code).map(({ text }) => text)).toEqual(['to 7 now']);
});

test.each(byFile(texts).filter(isPassage))(`%s is read at grade ${GRADE} or below`, (_, some) => {
	expect(readingGrade(joined(some))).toBeLessThanOrEqual(GRADE);
});

test.each(byFile(texts.filter(isShort)).filter(isPassage))(
	`the short texts of %s together are read at grade ${GRADE} or below`,
	(_, some) => {
		expect(readingGrade(inSentences(some))).toBeLessThanOrEqual(GRADE);
	}
);

test('what is too little for a passage is read at that grade together', () => {
	const little = (some: typeof texts) =>
		byFile(some)
			.filter((one) => !isPassage(one))
			.flatMap(([, those]) => those);
	expect(readingGrade(joined(little(texts)))).toBeLessThanOrEqual(GRADE);
	expect(readingGrade(inSentences(little(texts.filter(isShort))))).toBeLessThanOrEqual(GRADE);
});

test('short texts that are hard are found, however short', () => {
	const hard = ['Cardiovascular contraindications', 'Pharmacological', 'Verify eligibility'];
	expect(readingGrade(inSentences(hard.map((text) => ({ text }))))).toBeGreaterThan(GRADE);
});

test('no text is left out: each is in a passage, alone or with others', () => {
	const measured = [
		...texts.filter(isMeasuredAlone),
		...byFile(texts.filter(isShort)).flatMap(([, some]) => some)
	];
	expect(measured).toHaveLength(texts.length);
	expect(texts.filter(isShort).length).toBeGreaterThan(1000);
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
