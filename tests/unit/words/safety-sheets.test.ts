import { expect, test } from 'vitest';
import { safetySheets, type SafetySheet } from '$words/safety-sheets.ts';

const sheets = Object.entries<SafetySheet>(safetySheets.sheets);

test.each(sheets)('%s says of every line what it rests on', (_, { parts }) => {
	for (const { text, basis } of parts.flatMap(({ lines }) => lines)) {
		expect(basis, text).toMatch(
			/\b(19|20)\d{2}\b|common practice, no source|from memory|[A-Z]{2,}/
		);
	}
});

test('no line stands on two sheets', () => {
	const texts = sheets.flatMap(([, { parts }]) => parts.flatMap(({ lines }) => lines));
	expect(new Set(texts.map(({ text }) => text)).size).toBe(texts.length);
});
