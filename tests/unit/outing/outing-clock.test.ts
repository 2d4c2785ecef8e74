import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	ASKED_FROM_MS,
	TOLERANCE_MS,
	clockToKeep,
	settleLeap,
	startClock,
	tellTime,
	type ClockReading,
	type OutingClock
} from '$lib/outing/outing-clock.ts';

// What a browser's clocks do in each case: the High Resolution Time standard, and what phones are
// known to do in sleep (from memory).

const start: ClockReading = { wallMs: 1_700_000_000_000, steadyMs: 5000, since: 'first' };
const after = (wallMs: number, steadyMs: number, since = 'first'): ClockReading => ({
	wallMs: start.wallMs + wallMs,
	steadyMs: since === 'first' ? start.steadyMs + steadyMs : steadyMs,
	since
});
const told = (...readings: readonly ClockReading[]) => {
	let clock: OutingClock = startClock(start);
	let elapsedMs = 0;
	for (const reading of readings) ({ clock, elapsedMs } = tellTime(clock, reading));
	return elapsedMs;
};

describe('how far an outing is', () => {
	test('at the start, nowhere', () => expect(told(start)).toBe(0));

	test('both clocks agree: the steady one, so that no rounding adds up', () => {
		expect(told(after(60_004, 60_000))).toBe(60_000);
	});

	test('a phone that slept for seven minutes: the runner went on', () => {
		expect(told(after(10_000, 10_000), after(430_000, 10_050))).toBe(430_000);
	});

	test('a wall clock that is set back an hour changes nothing', () => {
		expect(told(after(60_000, 60_000), after(-3_539_000, 61_000))).toBe(61_000);
	});

	test('nor does it when the phone then sleeps', () => {
		expect(told(after(-3_539_000, 61_000), after(-3_119_000, 61_100))).toBe(61_000 + 420_000);
	});

	test('after a reload the wall clock goes on from what was kept', () => {
		const kept = clockToKeep(startClock(start), after(90_000, 90_000));
		expect(tellTime(kept, after(95_000, 1200, 'second')).elapsedMs).toBe(95_000);
	});

	test('set back between a crash and the reload: no time passed, and none is taken away', () => {
		const kept = clockToKeep(startClock(start), after(90_000, 90_000));
		const { elapsedMs, clock } = tellTime(kept, after(-999_000, 800, 'second'));
		expect(elapsedMs).toBe(90_000);
		expect(tellTime(clock, after(-998_000, 1800, 'second')).elapsedMs).toBe(91_000);
	});
});

describe('a wall clock that went on by itself, over the end of an outing of half an hour', () => {
	const ENDS = 1_800_000;
	const HOUR = 3_600_000;
	/** Ten minutes in, the wall clock says an hour more than the steady one, and five seconds later. */
	const asked = () => tellTime(startClock(start), after(600_000 + HOUR, 600_000), ENDS);

	test('counts as nothing until somebody says what it was; the outing goes on meanwhile', () => {
		const { elapsedMs, clock } = asked();
		expect(elapsedMs).toBe(600_000);
		expect(clock.leapMs).toBe(HOUR);
		const later = tellTime(clock, after(605_000 + HOUR, 605_000), ENDS);
		expect(later.elapsedMs).toBe(605_000);
		expect(later.clock.leapMs).toBe(HOUR);
	});

	test('counts in full once the runner says that they went on, and never once the clock was set', () => {
		const { clock } = asked();
		expect(settleLeap(clock, true)).toEqual({
			elapsedMs: 600_000 + HOUR,
			reading: clock.reading
		});
		expect(settleLeap(clock, false)).toEqual({ elapsedMs: 600_000, reading: clock.reading });
		const set = settleLeap(clock, false);
		expect(tellTime(set, after(610_000 + HOUR, 610_000), ENDS).elapsedMs).toBe(610_000);
	});

	test('is asked about after a reload as well, where only the wall clock is left', () => {
		const kept = clockToKeep(startClock(start), after(90_000, 90_000), ENDS);
		const { elapsedMs, clock } = tellTime(kept, after(90_000 + HOUR, 800, 'second'), ENDS);
		expect([elapsedMs, clock.leapMs]).toEqual([90_000, HOUR]);
	});

	test('is still asked about after another reload', () => {
		const kept = clockToKeep(asked().clock, after(610_000 + HOUR, 610_000), ENDS);
		expect(kept).toMatchObject({ elapsedMs: 610_000, leapMs: HOUR });
		const again = tellTime(kept, after(613_000 + HOUR, 500, 'second'), ENDS);
		expect([again.elapsedMs, again.clock.leapMs]).toEqual([613_000, HOUR]);
	});

	test('is a sleep where the outing is not over by it: exactly to the end it is asked', () => {
		const slept = (ms: number) =>
			tellTime(startClock(start), after(600_000 + ms, 600_000), ENDS).clock.leapMs ?? 0;
		expect(slept(1_199_999)).toBe(0);
		expect(slept(1_200_000)).toBe(1_200_000);
	});

	test('is a sleep where it is under a minute, and where the clock of the outing stands', () => {
		const almost = tellTime(startClock(start), after(ENDS - 1 + ASKED_FROM_MS - 1, ENDS - 1), ENDS);
		expect(almost.elapsedMs).toBe(ENDS - 1 + ASKED_FROM_MS - 1);
		expect(tellTime(startClock(start), after(HOUR, 10)).elapsedMs).toBe(HOUR);
	});

	test('no question where both clocks went on: a page that slept with its steady clock awake', () => {
		expect(tellTime(startClock(start), after(HOUR, HOUR), ENDS)).toMatchObject({
			elapsedMs: HOUR,
			clock: startClock(start)
		});
	});
});

/** Something that happens to a phone between two looks, in a world where true time is known. */
type Happening =
	| { readonly kind: 'passes'; readonly ms: number }
	| { readonly kind: 'sleeps'; readonly ms: number }
	| { readonly kind: 'set-back'; readonly ms: number; readonly passes: number }
	| { readonly kind: 'reload'; readonly ms: number };

const lengths = fc.integer({ min: 0, max: 600_000 });
const happenings = fc.array(
	fc.oneof(
		fc.record({ kind: fc.constant('passes' as const), ms: lengths }),
		fc.record({ kind: fc.constant('sleeps' as const), ms: lengths }),
		fc.record({ kind: fc.constant('set-back' as const), ms: lengths, passes: lengths }),
		fc.record({ kind: fc.constant('reload' as const), ms: lengths })
	),
	{ maxLength: 30 }
);

function live(happened: readonly Happening[], each: (trueMs: number, toldMs: number) => void) {
	let [wallMs, steadyMs, page, trueMs] = [start.wallMs, 0, 0, 0];
	let clock = startClock({ wallMs, steadyMs, since: 'page 0' });
	for (const one of happened) {
		const passedMs = one.kind === 'set-back' ? one.passes : one.ms;
		trueMs += passedMs;
		wallMs += one.kind === 'set-back' ? one.passes - one.ms : one.ms;
		if (one.kind === 'passes' || one.kind === 'set-back') steadyMs += passedMs;
		if (one.kind === 'reload') [steadyMs, page] = [0, page + 1];
		const told = tellTime(clock, { wallMs, steadyMs, since: `page ${page}` });
		clock = told.clock;
		each(trueMs, told.elapsedMs);
	}
}

describe('laws of the clock, over seeded lives of a phone', () => {
	test('sleeps, reloads and a wall clock that is set back do not lose the true time', () => {
		fc.assert(
			fc.property(happenings, (happened) => {
				let steps = 0;
				live(happened, (trueMs, toldMs) => {
					steps += 1;
					expect(Math.abs(trueMs - toldMs)).toBeLessThanOrEqual(steps * TOLERANCE_MS);
				});
			}),
			{ numRuns: 500, seed: 20_261_125 }
		);
	});

	test('whatever the two clocks say, an outing never runs backwards', () => {
		const anyReading = fc.record({
			wallMs: fc.integer({ min: -1e9, max: 1e9 }),
			passesMs: fc.integer({ min: 0, max: 1e9 }),
			isReload: fc.boolean()
		});
		fc.assert(
			fc.property(fc.array(anyReading), (readings) => {
				let [page, steadyMs, last] = [0, 0, 0];
				let clock = startClock({ wallMs: 0, steadyMs, since: 'page 0' });
				for (const { wallMs, passesMs, isReload } of readings) {
					if (isReload) [page, steadyMs] = [page + 1, 0];
					// Within a page the steady clock keeps its promise: it never falls.
					steadyMs += passesMs;
					const told = tellTime(clock, { wallMs, steadyMs, since: `page ${page}` });
					expect(told.elapsedMs).toBeGreaterThanOrEqual(last);
					// What is written down is what a later page begins with.
					clock = clockToKeep(clock, { wallMs, steadyMs, since: `page ${page}` });
					last = told.elapsedMs;
				}
			}),
			{ seed: 20_261_125 }
		);
	});
});
