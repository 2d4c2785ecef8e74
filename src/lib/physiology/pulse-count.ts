const SECONDS_PER_MINUTE = 60;

/**
 * Pulse from beats counted by hand: beats times sixty over the seconds. A definition, so without a
 * source. The beat on which the clock starts is "zero"; calling it "one" adds a whole step.
 * @returns beats a minute
 * @throws RangeError for beats below zero or no time at all
 * @example pulseFromCount(19, 15) // 76
 */
export function pulseFromCount(beats: number, seconds: number): number {
	if (!(beats >= 0)) throw new RangeError('pulseFromCount requires beats of zero or more');
	return (beats * SECONDS_PER_MINUTE) / positive(seconds, 'pulseFromCount');
}

/**
 * Beats that a pulse gives in a stretch of time, not rounded: for the count printed on a band card.
 * @throws RangeError for a pulse below zero or no time at all
 * @example beatsIn(15, 136) // 34
 */
export function beatsIn(seconds: number, bpm: number): number {
	if (!(bpm >= 0)) throw new RangeError('beatsIn requires a pulse of zero or more');
	return (bpm * positive(seconds, 'beatsIn')) / SECONDS_PER_MINUTE;
}

/**
 * What one beat more or less is worth, in beats a minute. No count of this length can be finer.
 * @throws RangeError for no time at all
 * @example pulseCountStep(15) // 4
 */
export function pulseCountStep(seconds: number): number {
	return SECONDS_PER_MINUTE / positive(seconds, 'pulseCountStep');
}

/**
 * One standard deviation of a count that starts at a random moment. A pulse that gives n whole beats
 * and a fraction f over is counted as n or as n + 1, rightly on average; the spread is
 * sqrt(f (1 - f)) steps. Own derivation. It assumes that no beat is missed.
 * @throws RangeError for a pulse below zero or no time at all
 * @example pulseCountSpread(15, 74) // 2
 * @example pulseCountSpread(10, 74) // 2.828
 */
export function pulseCountSpread(seconds: number, bpm: number): number {
	const beats = beatsIn(seconds, bpm);
	const over = beats - Math.floor(beats);
	return Math.sqrt(over * (1 - over)) * pulseCountStep(seconds);
}

/**
 * The most that pulseCountSpread can be for a count of this length, whatever the pulse: half a step.
 * @throws RangeError for no time at all
 * @example largestPulseCountSpread(10) // 3
 */
export function largestPulseCountSpread(seconds: number): number {
	return pulseCountStep(seconds) / 2;
}

/**
 * The two pulses that an unhurried count of a steady pulse can come out as; both the same where it
 * gives whole beats. Own derivation.
 * @returns beats a minute
 * @throws RangeError for a pulse below zero or no time at all
 * @example countedAs(15, 74) // { low: 72, high: 76 }
 */
export function countedAs(seconds: number, bpm: number): { low: number; high: number } {
	const beats = beatsIn(seconds, bpm);
	return {
		low: pulseFromCount(Math.floor(beats), seconds),
		high: pulseFromCount(Math.ceil(beats), seconds)
	};
}

function positive(seconds: number, caller: string): number {
	if (!(seconds > 0)) throw new RangeError(`${caller} requires more than 0 seconds`);
	return seconds;
}
