/** What the two clocks of a browser say at one moment, in milliseconds. */
export interface ClockReading {
	/** The clock on the wall. It goes on while a phone sleeps, and anybody may set it. */
	readonly wallMs: number;
	/** Counts up and cannot be set; stands still on some phones while they sleep. */
	readonly steadyMs: number;
	/** Names what the steady clock counts from: it begins anew with each load of a page. */
	readonly since: string;
}

/** How far an outing had come at a reading. Kept with its log, so that a crash loses nothing. */
export interface OutingClock {
	/** Milliseconds since the start, pauses included. Never falls. */
	readonly elapsedMs: number;
	readonly reading: ClockReading;
}

export interface Told {
	readonly elapsedMs: number;
	/** The clock to ask next time. */
	readonly clock: OutingClock;
}

/**
 * How far the two clocks may part before something has happened to one of them. Smaller differences
 * are how a phone corrects its clock. Common practice, no source.
 */
export const TOLERANCE_MS = 1000;

export const startClock = (reading: ClockReading): OutingClock => ({ elapsedMs: 0, reading });

/**
 * How far an outing is at a reading, and the clock to ask next.
 *
 * The steady clock counts. Where the wall clock went further, the phone slept, and the runner went
 * on: the wall clock counts. Where the wall clock went less far, or back, somebody set it: the
 * steady clock counts. After a reload only the wall clock is left; set back meanwhile, it counts as
 * no time at all, so that an outing never runs backwards.
 *
 * A wall clock that is set forward looks like a sleep, and counts as one: the outing ends too early,
 * which is the harmless mistake of the two.
 *
 * It counts on from the same reading for as long as the clocks agree: many short times added up
 * would add up their rounding too.
 *
 * @example tellTime({ elapsedMs: 0, reading: { wallMs: 9, steadyMs: 0, since: 'a' } }, { wallMs: 5009, steadyMs: 5000, since: 'a' }).elapsedMs // 5000
 */
export function tellTime(clock: OutingClock, reading: ClockReading): Told {
	const { elapsedMs, reading: from } = clock;
	const wallMs = reading.wallMs - from.wallMs;
	const steadyMs = Math.max(0, reading.steadyMs - from.steadyMs);
	if (reading.since !== from.since) return countFrom(elapsedMs + Math.max(0, wallMs), reading);
	if (wallMs - steadyMs > TOLERANCE_MS) return countFrom(elapsedMs + wallMs, reading);
	if (steadyMs - wallMs > TOLERANCE_MS) return countFrom(elapsedMs + steadyMs, reading);
	return { elapsedMs: elapsedMs + steadyMs, clock };
}

/**
 * The clock to write down, with all that has passed in it: whatever is then done to the clock on
 * the wall, no time from before is lost.
 */
export function clockToKeep(clock: OutingClock, reading: ClockReading): OutingClock {
	return { elapsedMs: tellTime(clock, reading).elapsedMs, reading };
}

const countFrom = (elapsedMs: number, reading: ClockReading): Told => ({
	elapsedMs,
	clock: { elapsedMs, reading }
});
