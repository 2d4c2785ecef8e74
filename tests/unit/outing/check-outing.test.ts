import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkOuting } from '$lib/outing/check-outing.ts';
import { phasesOf, type Outing, type OutingPart, type OutingPhase } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { anyOuting } from './any-outing.ts';

const walk = plainPhase('brisk-walk', 600);
const outing = (...parts: OutingPart[]): Outing => ({ name: 'Outing 1', parts });
const withPhase = (changed: Partial<OutingPhase>) => outing(walk, { ...walk, ...changed });
const codes = (checked: Outing) => checkOuting(checked).map(({ code }) => code);

describe('a sound outing', () => {
	test('has nothing to say', () => {
		expect(checkOuting(outing(walk, { times: 2, phases: [walk] }))).toEqual([]);
	});

	test('is every outing within the limits', () => {
		fc.assert(
			fc.property(anyOuting, (any) => {
				expect(checkOuting({ ...any, parts: [walk, ...any.parts] })).toEqual([]);
			})
		);
	});
});

describe('its name', () => {
	test.each([
		['', 'name-empty'],
		['  ', 'name-empty'],
		['a'.repeat(81), 'name-too-long'],
		['two\nlines', 'name-unprintable'],
		['turned \u202e round', 'name-unprintable'],
		['half \ud83d', 'name-unprintable']
	])('%j is %s', (name, code) => {
		expect(checkOuting({ name, parts: [walk] })).toEqual([{ code, path: ['name'] }]);
	});
});

describe('the whole', () => {
	test('is not empty, not a moment and not a day', () => {
		expect(codes(outing())).toEqual(['outing-empty']);
		expect(codes(outing(plainPhase('brisk-walk', 59)))).toEqual(['outing-too-short']);
		const hours = plainPhase('brisk-walk', 7200);
		expect(codes(outing(hours, hours))).toEqual([]);
		expect(codes(outing(hours, hours, plainPhase('brisk-walk', 5)))).toEqual(['outing-too-long']);
	});

	test('holds 120 phases written out, and not one more', () => {
		const short = plainPhase('brisk-walk', 5);
		const half = { times: 40, phases: [short, short] };
		expect(codes(outing(half, { times: 40, phases: [short] }))).toEqual([]);
		expect(codes(outing(half, { times: 40, phases: [short] }, short))).toEqual(['too-many-phases']);
		expect(codes(outing(...Array.from({ length: 500 }, () => short)))).toEqual(['too-many-phases']);
	});
});

describe('a phase', () => {
	test.each<[Partial<OutingPhase>, string, string]>([
		[{ seconds: 0 }, 'duration-too-short', 'seconds'],
		[{ seconds: -60 }, 'duration-too-short', 'seconds'],
		[{ seconds: 36_000 }, 'duration-too-long', 'seconds'],
		[{ seconds: Infinity }, 'duration-too-long', 'seconds'],
		[{ seconds: 60.5 }, 'duration-not-whole', 'seconds'],
		[{ seconds: NaN }, 'duration-not-whole', 'seconds'],
		[{ target: { low: 0.5, high: 0.5 } }, 'target-not-a-range', 'target'],
		[{ target: { low: NaN, high: 0.5 } }, 'target-not-a-range', 'target'],
		[{ target: { low: 0.3, high: 0.5 } }, 'target-outside-kind', 'target'],
		[{ target: { low: 0.5, high: 0.7 } }, 'target-outside-kind', 'target'],
		[{ speedKmh: 0 }, 'speed-out-of-limits', 'speedKmh'],
		[{ speedKmh: 50 }, 'speed-out-of-limits', 'speedKmh'],
		[{ speedKmh: NaN }, 'speed-out-of-limits', 'speedKmh'],
		[{ speedKmh: 7.1 }, 'too-fast-to-walk', 'speedKmh'],
		[{ kind: 'steady-run', speedKmh: 4.9 }, 'too-slow-to-run', 'speedKmh'],
		[{ inclinePercent: -1 }, 'incline-out-of-limits', 'inclinePercent'],
		[{ inclinePercent: 15.5 }, 'incline-out-of-limits', 'inclinePercent'],
		[{ cue: 'a'.repeat(121) }, 'cue-too-long', 'cue'],
		[{ cue: 'a\tb' }, 'cue-unprintable', 'cue']
	])('with %j is %s', (changed, code, field) => {
		expect(checkOuting(withPhase(changed))).toEqual([{ code, path: ['parts', 1, field] }]);
	});

	test('may be as wide as its kind, and a cool-down may start at nothing', () => {
		expect(codes(withPhase({ target: { low: 0.4, high: 0.59 } }))).toEqual([]);
		expect(codes(withPhase({ kind: 'cool-down-walk', target: { low: 0, high: 0.4 } }))).toEqual([]);
	});

	test('tells all that is wrong, each with its place', () => {
		const broken = { ...walk, seconds: 0, cue: 'a'.repeat(200) };
		expect(checkOuting(outing(walk, { times: 1, phases: [walk, broken] }))).toEqual([
			{ code: 'times-out-of-limits', path: ['parts', 1, 'times'] },
			{ code: 'duration-too-short', path: ['parts', 1, 'phases', 1, 'seconds'] },
			{ code: 'cue-too-long', path: ['parts', 1, 'phases', 1, 'cue'] }
		]);
	});
});

describe('a repeat', () => {
	test.each([0, 1, 2.5, 41, NaN])('%d times is no repeat', (times) => {
		expect(codes(outing(walk, { times, phases: [walk] }))).toContain('times-out-of-limits');
	});

	test('of nothing is empty', () => {
		expect(checkOuting(outing(walk, { times: 2, phases: [] }))).toEqual([
			{ code: 'repeat-empty', path: ['parts', 1, 'phases'] }
		]);
	});

	test('of very many times is told without writing it out', () => {
		expect(codes(outing({ times: 1e12, phases: [walk] }))).toContain('too-many-phases');
	});
});

test('an outing without issues can always be written out', () => {
	fc.assert(
		fc.property(anyOuting, (any) => {
			fc.pre(checkOuting(any).length === 0);
			expect(phasesOf(any).length).toBeLessThanOrEqual(120);
		})
	);
});
