import { describe, expect, test } from 'vitest';
import { safetySheets } from '$words/safety-sheets.ts';
import { stopSignSources } from '$words/stop-sign-sources.ts';
import { stopSigns } from '$words/stop-signs.ts';

const signs = Object.entries(stopSigns).flatMap(([group, those]) =>
	Object.entries<string>(those).map(([sign, text]) => ({ group, sign, text }))
);

test.each(signs)('$group $sign names its source, or says that there is none', ({ group, sign }) => {
	const sources: Record<string, Record<string, { basis: string }>> = stopSignSources.of;
	const basis = sources[group]?.[sign]?.basis ?? '';
	expect(basis).toMatch(/[A-Z]{2,}|[A-Z][a-z]+ [A-Z][a-z]+|\b20\d{2}\b|common practice, no source/);
	expect(basis).not.toMatch(/from memory/);
});

test('no two signs have one name', () => {
	const names = Object.values(stopSignSources.of).flatMap((group) =>
		Object.values<{ name: string }>(group).map(({ name }) => name)
	);
	expect(new Set(names).size).toBe(signs.length);
});

test('nothing on a safety sheet is from memory', () => {
	const lines = Object.values(safetySheets.sheets).flatMap(({ parts }) =>
		parts.flatMap((part) => part.lines)
	);
	for (const { text, basis } of lines) expect(basis, text).not.toMatch(/memory|to be checked/);
});

// Warning signs to end exercise in pregnancy of ACOG, and the Urgent Maternal Warning Signs of ACOG
// and CDC, as others give them (secondary): each topic has to be on the list, in whatever words.
describe('pregnancy', () => {
	const text = `${stopSigns.now.pregnant} ${stopSigns.today.pregnant}`;
	test.each([
		['bleeding', /bleeding/],
		['contractions', /painful tightening/],
		['fluid', /fluid/],
		['dyspnoea before exertion', /breathless before you begin/],
		['dizziness, fainting', /dizziness.*|fainting/],
		['headache', /headache/],
		['chest pain, fast heart', /chest pain, a racing heart/],
		['weakness', /weak muscles/],
		['calf', /calf pain or swelling/],
		['sight', /sight/],
		['swelling of face or hands', /swollen face or hands/],
		['belly pain', /belly pain/],
		['fever', /fever/],
		['trouble breathing', /trouble breathing/],
		['movements of the baby', /the baby moves less/]
	])('%s', (_, topic) => expect(text).toMatch(topic));
});

// NHS, anaphylaxis (seen): swollen lips or throat, tight throat, wheeze, faintness, rash; 999, adrenaline.
test.each([
	/lips, tongue or throat/,
	/tight throat/,
	/wheeze/,
	/faint/,
	/rash/,
	/adrenaline/,
	/call/
])('a severe allergic reaction: %s', (topic) => expect(stopSigns.now.allergy).toMatch(topic));
