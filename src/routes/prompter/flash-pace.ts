/**
 * How far apart flashes begin at least: no second ever has more than three, which is the most that
 * is known not to harm (WCAG 2.2, 2.3.1, seen). A thumb that skips quickly could ask for more.
 */
export const FLASH_APART_MS = 500;

/** @param lastMs when the last one began; null where there was none */
export const mayFlash = (lastMs: number | null, nowMs: number): boolean =>
	lastMs === null || nowMs - lastMs >= FLASH_APART_MS;

/**
 * How long a flash stands. For whoever asked for less motion it stands until the next second has
 * come, so that the last three seconds are one frame that does not flash. Our own choice.
 */
export function flashMs(isCountdown: boolean, isStill: boolean): number {
	if (isStill) return 1500;
	return isCountdown ? 250 : 500;
}
