/** Short tones. The browser lets them sound only after a tap, so open it from one. */
export interface Beeper {
	/** @param isLong the tone that begins a phase, not one that counts down to it */
	beep(isLong: boolean): void;
	close(): void;
}

const silent: Beeper = { beep: () => undefined, close: () => undefined };

/** Where a browser has no sound, or gives none, the tones are silent and nothing else is lost. */
export function openBeeper(): Beeper {
	try {
		const context = new AudioContext();
		return {
			beep: (isLong) => sound(context, isLong),
			close: () => void context.close().catch(() => undefined)
		};
	} catch {
		return silent;
	}
}

function sound(context: AudioContext, isLong: boolean) {
	// A call or another app may have put it to sleep.
	if (context.state !== 'running') void context.resume().catch(() => undefined);
	const tone = context.createOscillator();
	const volume = context.createGain();
	const from = context.currentTime;
	const until = from + (isLong ? 0.6 : 0.15);
	tone.frequency.value = isLong ? 880 : 587;
	volume.gain.setValueAtTime(0.4, from);
	// Faded out: a tone that is cut off clicks.
	volume.gain.exponentialRampToValueAtTime(0.001, until);
	tone.connect(volume).connect(context.destination);
	tone.start(from);
	tone.stop(until);
}
