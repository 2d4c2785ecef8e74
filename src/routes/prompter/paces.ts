/** A cue that is older than this says what no longer is: it is left out. */
export const FRESH_MS = 2000;
export const LOOK_EVERY_MS = 250;
export const KEEP_EVERY_MS = 5000;
export const REFRESH_EVERY_MS = 2 * 60 * 1000;
