/**
 * Keeps the screen on. A browser lets go of it when the page is left, so it is asked for again when
 * the page returns. Where it is refused or missing nothing else is lost.
 *
 * @returns what lets the screen go dark again
 */
export function keepScreenOn(): () => void {
	let held: WakeLockSentinel | null = null;
	let isWanted = true;

	async function ask() {
		if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
		try {
			const lock = await navigator.wakeLock.request('screen');
			if (isWanted) held = lock;
			else await lock.release();
		} catch {
			// Refused, for instance to save power.
		}
	}

	const returned = () => void ask();
	document.addEventListener('visibilitychange', returned);
	void ask();
	return () => {
		isWanted = false;
		document.removeEventListener('visibilitychange', returned);
		void held?.release().catch(() => undefined);
	};
}
