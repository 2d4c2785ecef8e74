import type { Outing } from '$lib/outing/outing.ts';
import { phasesOf } from '$lib/outing/outing.ts';
import type { OutingLog } from '$lib/outing/outing-log.ts';
import { cuesSince, type Position } from '$lib/outing/timeline.ts';
import type { Cue } from '$lib/outing/walked.ts';
import { CueGiver, type CueChoice } from './cues.ts';
import { OutingTrack } from './outing-track.ts';
import { FRESH_MS } from './paces.ts';

/** Gives the cues of one outing, each once, and keeps its sound track in step. */
export class Announcer {
	#cues: CueGiver;
	#track: OutingTrack | null = null;
	#isOpen = false;

	/** @param lookedMs up to where cues were given; null where the first phase is to be announced */
	constructor(
		readonly outing: Outing,
		readonly choice: CueChoice,
		private lookedMs: number | null
	) {
		this.#cues = new CueGiver(choice);
	}

	/**
	 * Whether tones, voice and vibration wait for a tap: a browser gives none before it, as after a
	 * reload, and may refuse or stop the track at any time.
	 */
	get waitsForTap(): boolean {
		const { sound, voice, vibration } = this.choice;
		if (!this.#isOpen) return sound || voice || vibration;
		return this.#track?.isStopped ?? false;
	}

	/** Call it from a tap, and look right after it: what sounds later was not allowed by a tap. */
	open(controls: { readonly play: () => void; readonly pause: () => void }) {
		this.#isOpen = true;
		this.#cues.open();
		if (!this.choice.sound || !this.choice.track) return;
		this.#track ??= new OutingTrack(this.outing, controls);
		this.#track.again();
	}

	/** @returns the cues that were given */
	look(log: OutingLog, position: Position, nowMs: number): readonly Cue[] {
		const due = cuesSince(phasesOf(this.outing), log, this.lookedMs, nowMs);
		const fresh = due.filter(({ atMs }) => nowMs - atMs <= FRESH_MS);
		for (const cue of fresh) this.#cues.give(cue, position.phases, this.#track?.isPlaying ?? false);
		this.lookedMs = nowMs;
		this.#track?.look(log, position, nowMs);
		return fresh;
	}

	close() {
		this.#cues.close();
		this.#track?.close();
	}
}
