import { CueTrack } from '$lib/device/cue-track.ts';
import { cueWav } from '$lib/device/cue-wav.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { phasesOf } from '$lib/outing/outing.ts';
import type { OutingLog } from '$lib/outing/outing-log.ts';
import { cuesAhead, type Position } from '$lib/outing/timeline.ts';
import { phases as phaseWords } from '$words/phases.ts';

/** The sound of one outing: made anew whenever a thumb changes what lies ahead. */
export class OutingTrack {
	readonly #track: CueTrack;
	#made = -1;
	#fromMs = 0;
	#index = -1;

	constructor(
		readonly outing: Outing,
		controls: { readonly play: () => void; readonly pause: () => void }
	) {
		this.#track = new CueTrack(outing.name, controls);
	}

	get isPlaying() {
		return this.#track.isPlaying;
	}

	/** True where the browser refused the sound or something else stopped it: it waits for a tap. */
	get isStopped() {
		return this.#track.isStopped;
	}

	/** Makes the sound anew with the next look. */
	again(): void {
		this.#made = -1;
	}

	look(log: OutingLog, position: Position, nowMs: number): void {
		if (position.state === 'over') return this.#track.close();
		const { name } = phaseWords[position.phase.kind];
		if (log.length !== this.#made) {
			this.#made = log.length;
			this.#fromMs = nowMs;
			if (position.state !== 'going') return this.#track.pause();
			const wav = cueWav(cuesAhead(phasesOf(this.outing), log, nowMs), nowMs);
			void this.#track.begin(wav, name);
		} else if (position.state === 'going') {
			this.#track.follow((nowMs - this.#fromMs) / 1000);
		}
		if (position.index !== this.#index) this.#track.say(name);
		this.#index = position.index;
	}

	close(): void {
		this.#track.close();
	}
}
