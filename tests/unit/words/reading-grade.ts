/**
 * The Flesch-Kincaid grade: school years that a reader needs.
 * 0.39 x words per sentence + 11.8 x syllables per word - 15.59
 *
 * Kincaid JP, Fishburne RP, Rogers RL, Chissom BS. Derivation of new readability formulas for Navy
 * enlisted personnel. Naval Technical Training Command, Research Branch Report 8-75, 1975.
 * Secondary: the formula as restated in encyclopaedias.
 *
 * It counts length, not sense, and says nothing about single words: only a proxy for real readers.
 */
export function readingGrade(text: string): number {
	const sentences = sentencesOf(text).length;
	const words = wordsOf(text);
	const syllables = words.reduce((sum, word) => sum + syllablesIn(word), 0);
	return (0.39 * words.length) / sentences + (11.8 * syllables) / words.length - 15.59;
}

export function sentencesOf(text: string): readonly string[] {
	return text.split(/(?<=[.?!])\s+/).filter((sentence) => /[a-z]/i.test(sentence));
}

export function wordsOf(text: string): readonly string[] {
	return text.toLowerCase().match(/[a-z0-9]+(?:['’][a-z]+)?/g) ?? [];
}

/**
 * A simple rule: groups of vowels, less an e that is not spoken in a last -e or -ed. Never under
 * one. Where it errs it mostly counts too many, which is the strict side.
 */
export function syllablesIn(word: string): number {
	const letters = word.toLowerCase().replace(/[^a-z]/g, '');
	const spoken = /[^aeiouy]l(e|ed)$/.test(letters)
		? letters
		: letters.replace(/e$/, '').replace(/(?<=[^td])ed$/, '');
	return Math.max(1, spoken.match(/[aeiouy]+/g)?.length ?? 0);
}
