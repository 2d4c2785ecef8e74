import type { Page } from '@playwright/test';

/** The ways in which a cue is given, as the browser is asked for them. */
export type CueWay =
	| 'tone'
	| 'voice'
	| 'shake'
	| 'flash'
	| 'track'
	/** The browser began to play the track. */
	| 'sounding'
	| 'screen-on'
	| 'keys'
	| 'title';

/** A call to the browser. */
export interface Given {
	readonly way: CueWay;
	/** Epoch milliseconds by the page's clock. */
	readonly at: number;
	readonly what: string;
}

/** What a browser may lack. */
export type Missing =
	'AudioContext' | 'speechSynthesis' | 'vibrate' | 'wakeLock' | 'mediaSession' | 'play';

/**
 * Writes down each call that the app makes to the browser, and lets it through; nothing of the app is
 * replaced. A flash is read off the screen: the frame around it as it is drawn.
 *
 * @param missing what this browser does not have; without play it refuses every track
 */
export async function recordCues(page: Page, missing: readonly Missing[] = []) {
	await page.addInitScript((lacks) => {
		const given: Given[] = [];
		Object.assign(window, { given });
		const note = (way: CueWay, what: unknown) =>
			given.push({ way, at: Date.now(), what: String(what) });
		const watch = <Of extends object>(
			of: Of,
			name: keyof Of & string,
			way: CueWay,
			what: (self: never, first: never, second: never) => unknown
		) => {
			const real = of[name] as (...args: never[]) => unknown;
			Object.defineProperty(of, name, {
				configurable: true,
				writable: true,
				value(this: never, ...args: never[]) {
					note(way, what(this, args[0] as never, args[1] as never));
					const answer = real.apply(this, args);
					if (way === 'track') {
						(answer as Promise<void>).then(
							() => note('sounding', ''),
							() => null
						);
					}
					return answer;
				}
			});
		};
		watch(
			OscillatorNode.prototype,
			'start',
			'tone',
			(tone: OscillatorNode) => tone.frequency.value
		);
		watch(SpeechSynthesis.prototype, 'speak', 'voice', (_: never, words: { text: string }) => {
			return words.text;
		});
		watch(Navigator.prototype, 'vibrate', 'shake', (_: never, times: number[]) => times);
		watch(WakeLock.prototype, 'request', 'screen-on', (_: never, kind: string) => kind);
		watch(HTMLMediaElement.prototype, 'play', 'track', (it: HTMLMediaElement) => it.src);
		watch(
			MediaSession.prototype,
			'setActionHandler',
			'keys',
			(_: never, name: string, does: unknown) => {
				Object.assign(window, { keys: { ...(window as never as Keys).keys, [name]: does } });
				return `${name}${does ? '' : ' off'}`;
			}
		);
		const titled = Object.getOwnPropertyDescriptor(MediaSession.prototype, 'metadata');
		Object.defineProperty(MediaSession.prototype, 'metadata', {
			configurable: true,
			get: titled?.get,
			set(this: MediaSession, data: MediaMetadata | null) {
				note('title', data ? `${data.title}, ${data.artist}` : 'none');
				titled?.set?.call(this, data);
			}
		});
		if (lacks.includes('play')) {
			HTMLMediaElement.prototype.play = () =>
				Promise.reject(new DOMException('refused', 'NotAllowedError'));
		}
		for (const name of ['AudioContext', 'speechSynthesis'] as const) {
			if (lacks.includes(name)) Reflect.deleteProperty(window, name);
		}
		for (const name of ['vibrate', 'wakeLock', 'mediaSession'] as const) {
			if (lacks.includes(name)) Reflect.deleteProperty(Navigator.prototype, name);
		}
		// A frame that is drawn and was not: a flash begins; the other way round it ends.
		let isLit = false;
		new MutationObserver(() => {
			const screen = document.querySelector('.screen');
			const frame = screen && getComputedStyle(screen, '::after');
			const isNow = frame !== null && frame.content !== 'none' && frame.borderTopStyle === 'solid';
			if (isNow !== isLit) note('flash', isNow ? 'on' : 'off');
			isLit = isNow;
		}).observe(document, { subtree: true, childList: true, attributeFilter: ['class'] });

		interface Keys {
			readonly keys?: Readonly<Record<string, unknown>>;
		}
	}, missing);
}

export const givenOn = (page: Page): Promise<readonly Given[]> =>
	page.evaluate(() => (window as never as { given: Given[] }).given);

/** Presses a key of a headset, or of the locked screen. */
export const pressKey = (page: Page, key: 'play' | 'pause') =>
	page.evaluate(
		(name) => (window as never as { keys: Record<string, () => void> }).keys[name]?.(),
		key
	);

/** A browser that lets a track begin only while a tap is handled, as some do: no later. */
export async function playsInTapsOnly(page: Page) {
	await page.addInitScript(() => {
		let isTap = false;
		addEventListener('click', () => (isTap = true), true);
		addEventListener('click', () => (isTap = false));
		const real = HTMLMediaElement.prototype.play;
		HTMLMediaElement.prototype.play = function (this: HTMLMediaElement) {
			if (isTap) return real.call(this);
			return Promise.reject(new DOMException('only in a tap', 'NotAllowedError'));
		};
	});
}

/** Leaves the page and comes back to it, as somebody who looks at another app. */
export async function leaveAndReturn(page: Page) {
	for (const state of ['hidden', 'visible'] as const) {
		await page.evaluate((now) => {
			Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => now });
			document.dispatchEvent(new Event('visibilitychange'));
		}, state);
	}
}
