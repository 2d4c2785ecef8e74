const EVERY_MILLISECONDS = 200;

/**
 * Looks at the clock often enough for seconds that are shown, and at once when the page returns: a
 * page that is out of sight is asked seldom or never.
 *
 * @returns what ends the looking
 */
export function lookOften(look: () => void): () => void {
	const timer = setInterval(look, EVERY_MILLISECONDS);
	document.addEventListener('visibilitychange', look);
	return () => {
		clearInterval(timer);
		document.removeEventListener('visibilitychange', look);
	};
}
