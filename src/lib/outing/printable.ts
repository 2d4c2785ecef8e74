/**
 * Whether a text is one line without control characters, halves of characters, or marks that turn
 * the direction of writing: such text would break a card, a table or another person's screen.
 *
 * @example isPrintable('Ease off 😊') // true
 * @example isPrintable('two\nlines') // false
 */
export function isPrintable(text: string): boolean {
	return !/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/u.test(text);
}
