import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/*
 * Relative luminance and contrast: WCAG 2.2, definitions; 1.4.6 asks for 7 to 1 (level AAA), which we
 * ask of the screen of an outing, dark and bright; of other pages 1.4.3 asks for 4.5 to 1 (level AA).
 * Check values: black on white is 21, #767676 on white 4.54 (WCAG, Understanding 1.4.3, seen).
 */

const css = readFileSync('src/lib/look/tokens.css', 'utf8');
const COLOUR = /--([\w-]+):\s*(?:light-dark\((#\w{6}), (#\w{6})\)|(#\w{6}));/g;

/** The colours of a look, by name. */
function coloursOf(look: 'light' | 'dark' | 'bright'): ReadonlyMap<string, string> {
	const [base = '', bright = ''] = css.split(":root[data-theme='bright']");
	const read = (text: string) =>
		[...text.matchAll(COLOUR)].map(([, name = '', light, dark, only]) => {
			return [name, only ?? (look === 'dark' ? dark : light) ?? ''] as const;
		});
	return new Map([...read(base), ...(look === 'bright' ? read(bright) : [])]);
}

function luminance(hex: string): number {
	const [red = 0, green = 0, blue = 0] = [1, 3, 5]
		.map((at) => parseInt(hex.slice(at, at + 2), 16) / 255)
		.map((share) => (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4));
	return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
	const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
	return (high + 0.05) / (low + 0.05);
}

const words = ['ink', 'muted', 'act', 'mark', 'stop'].map((name) => [name, 'paper'] as const);
const pairs = [...words, ['on-act', 'act'], ['stop', 'stop-ground']] as const;

describe('the contrast of words and their ground', () => {
	it('is measured as the guidelines define it', () => {
		expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
		expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
	});

	it.each(pairs)('%s on %s: 7 to 1 on the screen of an outing, dark and bright', (word, ground) => {
		for (const look of ['dark', 'bright'] as const) {
			const colours = coloursOf(look);
			const found = contrast(colours.get(word) ?? '', colours.get(ground) ?? '');
			expect(found, look).toBeGreaterThanOrEqual(7);
		}
	});

	it.each(pairs)('%s on %s: 4.5 to 1 on every other page', (word, ground) => {
		for (const look of ['light', 'dark'] as const) {
			const colours = coloursOf(look);
			const found = contrast(colours.get(word) ?? '', colours.get(ground) ?? '');
			expect(found, look).toBeGreaterThanOrEqual(4.5);
		}
	});

	it('of the button that is always there is 7 to 1, whatever the look', () => {
		const run = readFileSync('src/routes/prompter/Run.svelte', 'utf8');
		const [, ground = '', word = ''] =
			/\.wrong \{[^}]*background: (#\w{6});[^}]*\n\t\tcolor: (#\w{6});/.exec(run) ?? [];
		expect(contrast(word, ground)).toBeGreaterThanOrEqual(7);
	});
});
