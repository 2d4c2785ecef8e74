import { describe, expect, it } from 'vitest';
import { mileMoment, mileSeconds } from '$lib/guidance/mile-moment.ts';

// Our own rules, no source.

const START = Date.UTC(2026, 10, 25, 18);
const at = (seconds: number) => START + seconds * 1000;

describe('where a timed mile is', () => {
	it('is not known when the clock was set back', () => {
		expect(mileMoment({ startedAt: START, endedAt: null }, START - 1).kind).toBe('not-known');
		expect(mileMoment({ startedAt: START, endedAt: at(900) }, at(899)).kind).toBe('not-known');
		expect(mileMoment({ startedAt: START, endedAt: START - 5 }, at(9)).kind).toBe('not-known');
	});

	it('goes on, then counts down 15 seconds from its end, then is done', () => {
		expect(mileMoment({ startedAt: START, endedAt: null }, at(754.9))).toEqual({
			kind: 'going',
			seconds: 754
		});
		const ended = { startedAt: START, endedAt: at(920) };
		expect(mileMoment(ended, at(920))).toEqual({ kind: 'count', leftSeconds: 15 });
		expect(mileMoment(ended, at(934.5))).toEqual({ kind: 'count', leftSeconds: 1 });
		expect(mileMoment(ended, at(935))).toEqual({ kind: 'done' });
		expect(mileMoment(ended, at(9000))).toEqual({ kind: 'done' });
		expect(mileSeconds({ startedAt: START, endedAt: at(920) })).toBe(920);
	});

	it('was forgotten when it goes on for more than 40 minutes', () => {
		expect(mileMoment({ startedAt: START, endedAt: null }, at(2400)).kind).toBe('going');
		expect(mileMoment({ startedAt: START, endedAt: null }, at(2401)).kind).toBe('too-long');
	});
});
