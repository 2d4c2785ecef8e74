import { describe, expect, test } from 'vitest';
import { rosterWord } from '$lib/guidance/roster-word.ts';
import { stepRefusal } from '$lib/guidance/step-refusal.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { wideOpen } from './open-accesses.ts';

// Our own rules, no source.

const runOf = (seconds: number): Outing => ({
	name: 'One',
	parts: [plainPhase('warm-up-walk', 420), plainPhase('steady-run', seconds)]
});
const walk: Outing = { name: 'Walk', parts: [plainPhase('brisk-walk', 600)] };
const starting = { ...wideOpen, startEffort: 'moderate' } as const;
const settled = [14, 11, 9, 6, 3, 1];
const state = (access = wideOpen, days: readonly number[] = []) =>
	rosterWord(access, '2026-11-25', days);

describe('another step of the programme', () => {
	test('is any for who may run and needed no settling in', () => {
		expect(stepRefusal(state(), runOf(50), runOf(1200))).toBe(null);
	});

	test('is any for who may walk: there is no run in it', () => {
		const access = { ...starting, run: false, ceiling: 'moderate' } as const;
		expect(stepRefusal(state(access), runOf(50), runOf(1200))).toBe(null);
	});

	test('has no longer run for whoever settles in', () => {
		expect(stepRefusal(state(starting, [3]), walk, runOf(30))).toBe('settling-in');
		expect(stepRefusal(state(starting, [3]), runOf(50), runOf(50))).toBe(null);
		expect(stepRefusal(state(starting, [3]), runOf(50), walk)).toBe(null);
	});

	test('has no run above the limit of the weeks after it, nor keeps anybody from an easier one', () => {
		expect(stepRefusal(state(starting, settled), walk, runOf(30))).toBe(null);
		expect(stepRefusal(state(starting, settled), runOf(30), runOf(31))).toBe('runs-too-long');
		expect(stepRefusal(state(starting, settled), runOf(90), runOf(60))).toBe(null);
		const later = settled.map((days) => days + 112);
		expect(stepRefusal(state(starting, later), runOf(30), runOf(1200))).toBe(null);
	});

	test('is no harder one where nothing is open', () => {
		const shut = { open: false, word: 'not-today' } as const;
		expect(stepRefusal(shut, runOf(30), runOf(50))).toBe('closed');
		expect(stepRefusal(shut, runOf(50), runOf(30))).toBe(null);
	});
});
