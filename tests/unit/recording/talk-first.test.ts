import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { talkLevels } from '$lib/physiology/effort-scale.ts';
import { talkFirst } from '$lib/recording/talk-first.ts';

/* Our own rule, as the lessons give it: no source. */

const band = { low: 122, high: 135 };

describe('talk first', () => {
	it.each([
		['comfortable', 121, 'nothing-to-chase'],
		['comfortable', 122, 'agree'],
		['comfortable', 135, 'agree'],
		['comfortable', 136, 'no-faster'],
		['with-breaths', 121, 'nothing-to-chase'],
		['with-breaths', 128, 'agree'],
		['with-breaths', 136, 'agree'],
		['broke-off', 110, 'ease-off'],
		['broke-off', 135, 'ease-off'],
		['broke-off', 136, 'agree']
	] as const)('%s at %i beats, for a band of 122 to 135: %s', (talk, bpm, said) => {
		expect(talkFirst(talk, bpm, band, null)).toBe(said);
	});

	it('says nothing before talk was asked, or without a band', () => {
		expect(talkFirst(null, 170, band, null)).toBe('agree');
		expect(talkFirst('broke-off', 120, null, null)).toBe('agree');
	});

	it('a band of "anything under" has nothing to be under', () => {
		expect(talkFirst('comfortable', 60, { low: null, high: 110 }, null)).toBe('agree');
	});

	it('a limit of the care team stands above talk, whatever was said', () => {
		fc.assert(
			fc.property(
				fc.option(fc.constantFrom(...talkLevels)),
				fc.integer({ min: 30, max: 220 }),
				fc.integer({ min: 80, max: 160 }),
				(talk, bpm, limit) => {
					expect(talkFirst(talk, bpm, band, limit) === 'over-limit').toBe(bpm > limit);
				}
			)
		);
	});

	it('never asks for more effort than talk allows', () => {
		for (let bpm = 40; bpm < 220; bpm++) {
			expect(['ease-off', 'agree']).toContain(talkFirst('broke-off', bpm, band, null));
		}
	});
});
