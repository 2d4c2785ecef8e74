/** Marks that stand around every text which came from the words. */
export const OPENING = '⟦';
export const CLOSING = '⟧';

/** @type {Readonly<Record<string, string>>} */
const longer = { a: 'áå', e: 'éë', i: 'íï', o: 'óö', u: 'úü' };

/**
 * A text in a language that nobody speaks: vowels doubled and accented, so that it can still be
 * read and is about a third longer, as German or Finnish would be (common practice, no source).
 * A text without a letter stays as it is.
 * @param {string} text
 */
export function pseudoText(text) {
	if (!/\p{L}/u.test(text)) return text;
	return OPENING + text.replace(/[aeiou]/g, (vowel) => longer[vowel] ?? vowel) + CLOSING;
}

/**
 * The same for all texts of a value, those that a function of it will answer with included.
 * @template Value
 * @param {Value} value
 * @returns {Value}
 */
export function pseudo(value) {
	/** @type {any} */
	const any = value;
	if (typeof any === 'string') return /** @type {any} */ (pseudoText(any));
	if (typeof any === 'function') {
		return /** @type {any} */ ((/** @type {unknown[]} */ ...given) => pseudo(any(...given)));
	}
	if (Array.isArray(any)) return /** @type {any} */ (any.map(pseudo));
	if (typeof any !== 'object' || any === null) return value;
	return /** @type {any} */ (
		Object.fromEntries(Object.entries(any).map(([key, inner]) => [key, pseudo(inner)]))
	);
}
