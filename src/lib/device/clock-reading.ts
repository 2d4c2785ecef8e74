import type { ClockReading } from '$lib/outing/outing-clock.ts';

/** Another for each load of the page, as the steady clock begins anew with it. */
const SINCE = crypto.randomUUID();

/** What the two clocks of this browser say now. */
export const clockReading = (): ClockReading => ({
	wallMs: Date.now(),
	steadyMs: performance.now(),
	since: SINCE
});
