import { clockReading } from '$lib/device/clock-reading.ts';
import type { PhoneDatabase, PulseSoFar } from '$lib/device/phone-database.ts';
import { keepClock, keepPulse } from '$lib/device/run-clock.ts';
import { clockToKeep, settleLeap, tellTime, type OutingClock } from '$lib/outing/outing-clock.ts';
import { KEEP_EVERY_MS } from './paces.ts';

/** The clock of an outing that is on. What it says, and the pulse so far, is kept every few seconds. */
export class RunningClock {
	#clock: OutingClock;
	#keptMs = 0;
	#endsAtMs = Number.POSITIVE_INFINITY;
	#isPulseKept: boolean;

	constructor(
		readonly database: PhoneDatabase,
		readonly outingRunId: string,
		clock: OutingClock,
		hasPulse = false
	) {
		this.#clock = clock;
		this.#isPulseKept = hasPulse;
	}

	/** A time that nobody has yet said whether it counts. */
	get leapMs(): number {
		return this.#clock.leapMs ?? 0;
	}

	/**
	 * Milliseconds since the start, pauses included.
	 * @param endsAtMs see `tellTime`
	 */
	look(endsAtMs: number): number {
		const told = tellTime(this.#clock, clockReading(), endsAtMs);
		this.#clock = told.clock;
		this.#endsAtMs = endsAtMs;
		return told.elapsedMs;
	}

	settleLeap(wentOn: boolean) {
		this.#clock = settleLeap(clockToKeep(this.#clock, clockReading(), this.#endsAtMs), wentOn);
	}

	isDue(nowMs: number): boolean {
		return nowMs - this.#keptMs >= KEEP_EVERY_MS;
	}

	/** @param pulse what a strap gave so far in the phase that is on */
	async keep(nowMs: number, pulse: PulseSoFar | null): Promise<void> {
		this.#keptMs = nowMs;
		const { database, outingRunId } = this;
		await keepClock(
			database,
			outingRunId,
			clockToKeep(this.#clock, clockReading(), this.#endsAtMs)
		);
		// A page that measured nothing leaves alone what another page of this outing keeps.
		if (pulse === null && !this.#isPulseKept) return;
		this.#isPulseKept = pulse !== null;
		await keepPulse(database, outingRunId, pulse);
	}
}
