import type { PulseReading } from './pulse-now.ts';

/** Whether a strap can be used here, and what is missing where it cannot. */
export type BluetoothHere = 'here' | 'not-in-this-browser' | 'not-secure' | 'off';

export type StrapFault =
	/** The list of straps was closed again. */
	| 'nothing-chosen'
	| 'off'
	/** The browser, or whoever set it up, does not allow it. */
	| 'refused'
	/** It can be reached, and is no heart-rate sensor. */
	| 'no-pulse'
	| 'not-reached';

/** Where a strap stands. */
export type StrapState =
	| { readonly kind: 'none' }
	| { readonly kind: 'choosing' }
	| { readonly kind: 'connecting' }
	| { readonly kind: 'connected'; readonly batteryPercent: number | null }
	/** It went away, and is tried again by itself. */
	| { readonly kind: 'away'; readonly tries: number }
	/** It was tried often enough. */
	| { readonly kind: 'given-up' }
	| { readonly kind: 'failed'; readonly fault: StrapFault };

/** What hears of a strap. Neither may throw. */
export interface StrapListener {
	readonly state: (state: StrapState) => void;
	readonly reading: (reading: PulseReading) => void;
}

/** A chest strap, as a page sees it. */
export interface Strap {
	/** Asks the person to pick one. Only from a press: browsers demand it. */
	readonly choose: () => Promise<void>;
	/** Tries the one that was picked once more. */
	readonly again: () => Promise<void>;
	readonly stop: () => void;
}

/** The way to straps that a page hands to its parts. */
export interface Straps {
	readonly here: () => Promise<BluetoothHere>;
	readonly open: (listener: StrapListener) => Strap;
}

/** Under this it may not last an outing. Common practice, no source. */
export const LOW_BATTERY_PERCENT = 20;
