/**
 * Keeps the screen from going dark, where the browser can, until it is let go. A page that was hidden
 * asks again when it is seen.
 * @returns lets go
 */
export function keepScreenOn(): () => void {
	let lock: WakeLockSentinel | null = null;
	let isGone = false;
	const ask = async () => {
		if (document.visibilityState !== 'visible') return;
		try {
			const given = await navigator.wakeLock.request('screen');
			if (isGone) await given.release();
			else lock = given;
		} catch {
			// Not offered, or refused with a low battery: the clock is right all the same.
		}
	};
	const seen = () => void ask();
	document.addEventListener('visibilitychange', seen);
	seen();
	return () => {
		isGone = true;
		document.removeEventListener('visibilitychange', seen);
		void lock?.release();
	};
}
