import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rosterWord } from '$lib/guidance/roster-word.ts';
import { closed, closedFor } from '$lib/screening/closed-access.ts';
import type { AccessCode } from '$lib/screening/types.ts';
import { anyAccess, wideOpen } from './open-accesses.ts';

/* The words are our own table of what a coach reads; no source outside. */

const TODAY = '2026-11-25';
const word = (access: Parameters<typeof rosterWord>[0]) => rosterWord(access, TODAY, []);

describe('a result that is open', () => {
	const walkOnly = { ...wideOpen, status: 'CLEARED_WALK', run: false } as const;
	const pulseOff = { on: false, reasons: ['H-MEDS'], careTeamLimitBpm: 120 } as const;

	test('may run', () => {
		expect(word(wideOpen)).toMatchObject({ open: true, word: 'may-run', pulse: 'on' });
	});

	test('with pulse off: may run, by talk', () => {
		const access = { ...wideOpen, pulse: pulseOff };
		expect(word(access)).toMatchObject({ word: 'may-run-by-talk', pulse: 'off' });
	});

	test('walking only: may walk, whatever the pulse', () => {
		expect(word(walkOnly)).toMatchObject({ word: 'may-walk', pulse: 'on' });
		expect(word({ ...walkOnly, pulse: pulseOff })).toMatchObject({
			word: 'may-walk',
			pulse: 'off'
		});
	});

	test('a plan of walking only is may walk too', () => {
		expect(word({ ...wideOpen, run: false, plan: 'walk' })).toMatchObject({ word: 'may-walk' });
	});

	test('settling in ends two weeks on at the earliest, and only for whoever may run', () => {
		const starting = { ...wideOpen, startEffort: 'moderate' } as const;
		expect(word(starting)).toMatchObject({ settlingInUntil: '2026-12-09' });
		expect(rosterWord(starting, TODAY, [13, 11, 9, 6, 3, 1])).toMatchObject({
			settlingInUntil: '2026-11-26'
		});
		expect(rosterWord(starting, TODAY, [14, 11, 9, 6, 3, 1])).toMatchObject({
			settlingInUntil: null
		});
		expect(word({ ...starting, run: false })).toMatchObject({ settlingInUntil: null });
		expect(word(wideOpen)).toMatchObject({ settlingInUntil: null });
	});

	test('in the weeks after settling in it says how long runs may last', () => {
		const starting = { ...wideOpen, startEffort: 'moderate' } as const;
		const settled = [14, 11, 9, 6, 3, 1];
		const later = (days: number) => settled.map((since) => since + days);
		const longest = (days: readonly number[], access: typeof wideOpen = starting) => {
			const seen = rosterWord(access, TODAY, days);
			return seen.open ? seen.longestRunSeconds : 'closed';
		};
		expect(longest([13, 11, 9, 6, 3, 1])).toBe(null);
		expect(longest(settled)).toBe(30);
		expect(longest(later(7))).toBe(45);
		expect(longest(later(42))).toBe(340);
		expect(longest(later(112))).toBe(null);
		expect(longest(settled, wideOpen)).toBe(null);
		expect(longest(settled, { ...starting, run: false })).toBe(null);
	});

	test.each([
		['2026-11-25', true],
		['2026-12-25', true],
		['2026-12-26', false]
	])('its last day %s is near: %s', (validUntil, endsSoon) => {
		expect(word({ ...wideOpen, validUntil })).toMatchObject({ validUntil, endsSoon });
	});

	test('tells no reason, no age, no plan and no beat', () => {
		fc.assert(
			fc.property(anyAccess, (access) => {
				const known = ['open', 'word', 'pulse', 'settlingInUntil', 'longestRunSeconds'];
				known.push('validUntil', 'endsSoon');
				expect(Object.keys(word(access)).sort()).toEqual(known.sort());
				expect(JSON.stringify(word({ ...access, validUntil: TODAY }))).not.toMatch(
					/"(H|R|S|A)-|[a-z]":\d/
				);
			})
		);
	});
});

describe('a result that is closed', () => {
	const words: Record<Exclude<AccessCode, 'CLEARED_ALL' | 'CLEARED_WALK'>, string> = {
		WAIT: 'not-today',
		SEEK_ADVICE: 'not-today',
		EMERGENCY: 'not-today',
		NO_RESULT: 'not-finished',
		INCOMPLETE: 'not-finished',
		NOT_ELIGIBLE: 'not-for-this-app',
		EXPIRED: 'answer-again',
		RESCREEN: 'answer-again'
	};
	const codes = Object.keys(words) as (keyof typeof words)[];

	test.each(codes)('%s is its word, and nothing beside it', (code) => {
		expect(word(closed(code))).toEqual({ open: false, word: words[code] });
	});

	test('ill today, ask first, an urgent sign and advice that refuses are one and the same', () => {
		const nothing = { remaining: [], covered: [], lifting: [] };
		const urgent = { ...closed('SEEK_ADVICE'), urgent: true, reasons: ['R-EVENT'] };
		const seen = [
			word(closed('WAIT')),
			word(closed('SEEK_ADVICE')),
			word(closed('EMERGENCY')),
			word(closedFor('SEEK_ADVICE', nothing, ['an-advice'])),
			word(urgent)
		];
		expect(new Set(seen.map((one) => JSON.stringify(one))).size).toBe(1);
	});

	test('one that cannot be read looks like any other that is closed', () => {
		const unreadable = { ...closed('NO_RESULT'), fault: 'unreadable' };
		expect(word(unreadable)).toEqual(word(closed('WAIT')));
	});
});
