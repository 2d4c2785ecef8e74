import { describe, expect, it } from 'vitest';
import type { LearnedCeiling } from '$lib/guidance/ceiling/learned-ceiling.ts';
import { holds } from '$lib/guidance/next-time/asked.ts';
import type { NextTime } from '$lib/guidance/next-time/next-time.ts';
import { nextAdvices } from '$lib/guidance/next-time/rows.ts';
import { ceilingPanel, nextPanel } from '../../src/routes/past/next-lines.ts';

// Our own rules, no source; the mile by the international yard and pound agreement of 1959.

const talked = [
	{ kind: 'talk', talk: 'comfortable' },
	{ kind: 'effort', effort: 5 }
] as const;
const next = (changes: Partial<NextTime> = {}): NextTime => ({
	advice: 'notch-up',
	because: talked,
	main: 'steady-run',
	speedKmh: 6.4,
	inAll: false,
	...changes
});
const first = (changes: Partial<NextTime>, unit: 'mph' | 'km/h' = 'km/h') =>
	nextPanel(next(changes), unit).lines[0] ?? '';

describe('what is said of next time', () => {
	it('is what to do, the two facts that decided it, and that talk comes first', () => {
		const [advice, because, talkFirst, ...more] = nextPanel(next(), 'km/h').lines;
		expect(advice).toBe('One notch faster in the last run, and only there. That is 6.6 km/h.');
		expect(because).toBe(
			'Because talk was comfortable throughout, and the highest effort was 5 of 10.'
		);
		expect(talkFirst).toContain('how you can talk comes first');
		expect(more).toEqual([]);
	});

	it('has a notch of 0.2 km/h or 0.1 mph, from the speed as a treadmill of that unit shows it', () => {
		expect(first({ inAll: true })).toContain('in all runs. That is 6.6 km/h.');
		// 6.4 km/h is 3.98 mph, which a treadmill shows as 4.0.
		expect(first({}, 'mph')).toContain('4.1 mph');
		expect(first({ advice: 'ease-back' }, 'mph')).toContain('3.9 mph');
		expect(first({ advice: 'ease-back' })).toContain('6.2 km/h');
	});

	it('names no speed where none was told', () => {
		for (const advice of nextAdvices) {
			for (const main of ['steady-run', 'brisk-walk'] as const) {
				expect(first({ advice, main, speedKmh: null }), advice).not.toMatch(/\d (km\/h|mph)/);
			}
		}
	});

	it('eases a slowest run by its length, and a fastest walk up a slope', () => {
		expect(first({ advice: 'ease-back', speedKmh: 5.1 })).toContain('shorter runs');
		expect(first({ main: 'brisk-walk', speedKmh: 7 })).toContain('incline');
		expect(first({ main: 'brisk-walk', speedKmh: 6.8 })).toContain('7.0 km/h');
	});

	it('says nothing of runs to whoever walked', () => {
		for (const advice of nextAdvices) {
			for (const speedKmh of [null, 4, 5.1, 7]) {
				expect(first({ advice, main: 'brisk-walk', speedKmh }), advice).not.toMatch(/\brun/i);
			}
		}
	});

	it('holds no beat', () => {
		const held = holds.map((why) => ({ kind: 'held', why }) as const);
		for (const fact of [...held, { kind: 'over-band', share: 0.4 } as const]) {
			const { lines } = nextPanel(next({ because: [fact, talked[0]] }), 'km/h');
			expect(lines.join(' ')).not.toMatch(/bpm/);
		}
	});
});

describe('what is said of a talking pulse', () => {
	const learned = {
		kind: 'learned',
		answers: 9,
		bpm: 138.5,
		lowBpm: 129.4,
		highBpm: 147.5,
		heard: 'both',
		stayUnderBpm: null
	} as const;
	const said = (ceiling: LearnedCeiling) => ceilingPanel(ceiling).lines.join(' ');

	it('is rounded once, half up, with its doubt and the number of answers behind it', () => {
		expect(said(learned)).toContain(
			'about 139 bpm for you: four times in five between 129 and 148'
		);
		expect(said(learned)).toContain('9 talk answers');
		expect(said(learned)).toContain('raises no band');
	});

	it('says where one end is hardly known, and where to stay under it', () => {
		expect(said({ ...learned, heard: 'only-comfortable' })).toContain('upper end is hardly known');
		expect(said({ ...learned, heard: 'never-comfortable' })).toContain('lower end is hardly known');
		expect(said({ ...learned, stayUnderBpm: 131.2 })).toContain('Stay under about 131 bpm');
		expect(said(learned)).not.toContain('Stay under');
	});

	it('says that there are too few answers, and how to give more', () => {
		const few = said({ kind: 'too-few', answers: 2, needed: 5 });
		expect(few).toContain('2 of 5 answers');
		expect(few).not.toMatch(/bpm/);
	});

	it('is no number where it lies above what may be done', () => {
		expect(said({ kind: 'above-band', answers: 6 })).not.toMatch(/bpm|\d\d/);
	});
});
