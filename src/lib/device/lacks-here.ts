/** What a prompter can do without, and some browsers do not have. */
export const lackable = ['screen-on', 'sound', 'voice', 'vibration', 'strap'] as const;
export type Lackable = (typeof lackable)[number];

/** What this browser lacks, as far as it says so. Asks nobody anything. */
export function lacksHere(): readonly Lackable[] {
	const has: Record<Lackable, boolean> = {
		'screen-on': 'wakeLock' in navigator,
		sound: 'AudioContext' in window,
		voice: 'speechSynthesis' in window,
		vibration: 'vibrate' in navigator,
		strap: 'bluetooth' in navigator
	};
	return lackable.filter((one) => !has[one]);
}
