/** So often a browser has to have run a sum before it compiles it well; tried in Chromium. */
const TIMES = 4;

/**
 * Does some work a few times while the page is at rest, so that a browser has compiled it before a
 * hand drags: the first frame of a drag is the slowest otherwise. Where a browser does not tell when
 * it rests, nothing is done.
 *
 * @returns how to stop
 */
export function warmUp(work: () => unknown): () => void {
	if (typeof requestIdleCallback !== 'function') return () => undefined;
	let left = TIMES;
	let next = requestIdleCallback(step);
	function step() {
		work();
		left -= 1;
		if (left > 0) next = requestIdleCallback(step);
	}
	return () => cancelIdleCallback(next);
}
