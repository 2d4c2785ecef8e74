import { clockReading } from '$lib/device/clock-reading.ts';
import type { PhoneDatabase, PulseSoFar } from '$lib/device/phone-database.ts';
import { keepClock, keepPulse } from '$lib/device/run-clock.ts';
import { clockToKeep, tellTime, type OutingClock } from '$lib/outing/outing-clock.ts';
import { KEEP_EVERY_MS } from './paces.ts';

/** The clock of an outing that is on. What it says, and the pulse so far, is kept every few seconds. */
export class RunningClock {
	#clock: OutingClock;
	#keptMs = 0;
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

	/** Milliseconds since the start, pauses included. */
	look(): number {
		const told = tellTime(this.#clock, clockReading());
		this.#clock = told.clock;
		return told.elapsedMs;
	}

	isDue(nowMs: number): boolean {
		return nowMs - this.#keptMs >= KEEP_EVERY_MS;
	}

	/** @param pulse what a strap gave so far in the phase that is on */
	async keep(nowMs: number, pulse: PulseSoFar | null): Promise<void> {
		this.#keptMs = nowMs;
		const { database, outingRunId } = this;
		await keepClock(database, outingRunId, clockToKeep(this.#clock, clockReading()));
		// A page that measured nothing leaves alone what another page of this outing keeps.
		if (pulse === null && !this.#isPulseKept) return;
		this.#isPulseKept = pulse !== null;
		await keepPulse(database, outingRunId, pulse);
	}
}
