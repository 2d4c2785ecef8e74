import type { PulseNow } from '$lib/recording/pulse-now.ts';
import { LOW_BATTERY_PERCENT, type StrapState } from '$lib/recording/strap.ts';
import { livePulse } from '$words/live-pulse.ts';

const words = livePulse.strap;

/** How a strap is doing, in one or two sentences. No number in it: it is read aloud when it changes. */
export function strapText(state: StrapState, now: PulseNow): string {
	switch (state.kind) {
		case 'none':
			return words.lead;
		case 'connected':
			return words.connected[now.kind === 'known' ? 'known' : now.why];
		case 'failed':
			return words.faults[state.fault];
		case 'choosing':
		case 'connecting':
		case 'away':
		case 'given-up':
			return words.states[state.kind];
	}
}

/** Null where the strap does not tell, or has enough and only what is out of order is to be said. */
export function batteryText(state: StrapState, isOnlyLow: boolean): string | null {
	if (state.kind !== 'connected' || state.batteryPercent === null) return null;
	const { batteryPercent } = state;
	if (batteryPercent <= LOW_BATTERY_PERCENT) return words.batteryLow(batteryPercent);
	return isOnlyLow ? null : words.battery(batteryPercent);
}
