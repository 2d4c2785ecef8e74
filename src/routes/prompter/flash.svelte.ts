import { flashMs, mayFlash } from './flash-pace.ts';

/** The frame around the screen that lights up at a cue. */
export class Flash {
	isOn = $state(false);
	#lastMs: number | null = null;
	#timer: ReturnType<typeof setTimeout> | undefined;

	give(isCountdown: boolean) {
		const nowMs = performance.now();
		if (!mayFlash(this.#lastMs, nowMs)) return;
		this.#lastMs = nowMs;
		const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches;
		clearTimeout(this.#timer);
		this.isOn = true;
		this.#timer = setTimeout(() => (this.isOn = false), flashMs(isCountdown, isStill));
	}

	close() {
		clearTimeout(this.#timer);
	}
}
