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
	/** What the wall clock went on by itself, and nobody has yet said whether it counts. Not in `elapsedMs`. */
	readonly leapMs?: number;
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

/**
 * A leap that is shorter needs no question: an outing that it ends was over in a minute. Our own choice.
 */
export const ASKED_FROM_MS = 60_000;

export const startClock = (reading: ClockReading): OutingClock => ({ elapsedMs: 0, reading });

/**
 * How far an outing is at a reading, and the clock to ask next.
 *
 * The steady clock counts. Where the wall clock went further, the phone slept, and the runner went
 * on: the wall clock counts. Where the wall clock went less far, or back, somebody set it: the
 * steady clock counts. After a reload only the wall clock is left; set back meanwhile, it counts as
 * no time at all, so that an outing never runs backwards.
 *
 * A wall clock that is set forward looks like a sleep. Only where it would end the outing does that
 * matter much: then nothing of the leap counts until the runner has said what it was.
 *
 * It counts on from the same reading for as long as the clocks agree: many short times added up
 * would add up their rounding too.
 *
 * @param endsAtMs where on its clock the outing ends if nothing more is done; for ever while it stands
 *
 * @example tellTime({ elapsedMs: 0, reading: { wallMs: 9, steadyMs: 0, since: 'a' } }, { wallMs: 5009, steadyMs: 5000, since: 'a' }).elapsedMs // 5000
 */
export function tellTime(
	clock: OutingClock,
	reading: ClockReading,
	endsAtMs = Number.POSITIVE_INFINITY
): Told {
	const { elapsedMs, reading: from } = clock;
	const isSame = reading.since === from.since;
	const steadyMs = isSame ? Math.max(0, reading.steadyMs - from.steadyMs) : 0;
	const wallMs = reading.wallMs - from.wallMs;
	if (isSame && Math.abs(wallMs - steadyMs) <= TOLERANCE_MS) {
		return { elapsedMs: elapsedMs + steadyMs, clock };
	}
	const leapMs = Math.max(0, wallMs - steadyMs);
	const sureMs = elapsedMs + steadyMs;
	return leapMs >= ASKED_FROM_MS && sureMs + leapMs >= endsAtMs
		? countFrom({ elapsedMs: sureMs, reading, leapMs: (clock.leapMs ?? 0) + leapMs })
		: countFrom({ ...clock, elapsedMs: sureMs + leapMs, reading });
}

/**
 * The clock to write down, with all that has passed in it: whatever is then done to the clock on
 * the wall, no time from before is lost.
 */
export function clockToKeep(
	clock: OutingClock,
	reading: ClockReading,
	endsAtMs?: number
): OutingClock {
	const told = tellTime(clock, reading, endsAtMs);
	return { ...told.clock, elapsedMs: told.elapsedMs, reading };
}

/** The clock once the runner has said what a leap was: time that they went on in, or none at all. */
export function settleLeap({ leapMs = 0, ...clock }: OutingClock, wentOn: boolean): OutingClock {
	return wentOn ? { ...clock, elapsedMs: clock.elapsedMs + leapMs } : clock;
}

const countFrom = (clock: OutingClock): Told => ({ elapsedMs: clock.elapsedMs, clock });
