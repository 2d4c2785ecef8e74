import type { Outing } from '$lib/outing/outing.ts';
import { phasesOf } from '$lib/outing/outing.ts';
import type { OutingLog } from '$lib/outing/outing-log.ts';
import { cuesSince, type Position } from '$lib/outing/timeline.ts';
import { CueGiver, type CueChoice } from './cues.ts';
import { OutingTrack } from './outing-track.ts';
import { FRESH_MS } from './paces.ts';

/** Gives the cues of one outing, each once, and keeps its sound track in step. */
export class Announcer {
	#cues: CueGiver;
	#track: OutingTrack | null = null;

	/** @param lookedMs up to where cues were given; null where the first phase is to be announced */
	constructor(
		readonly outing: Outing,
		readonly choice: CueChoice,
		private lookedMs: number | null
	) {
		this.#cues = new CueGiver(choice);
	}

	/** Sound is allowed only after a tap: call it from one. */
	open(controls: { readonly play: () => void; readonly pause: () => void }) {
		this.#cues.open();
		if (this.choice.sound && this.choice.track)
			this.#track = new OutingTrack(this.outing, controls);
	}

	/** @returns how many phases began since the last look */
	look(log: OutingLog, position: Position, nowMs: number): number {
		const due = cuesSince(phasesOf(this.outing), log, this.lookedMs, nowMs);
		const fresh = due.filter(({ atMs }) => nowMs - atMs <= FRESH_MS);
		for (const cue of fresh) this.#cues.give(cue, position.phases, this.#track?.isPlaying ?? false);
		this.lookedMs = nowMs;
		this.#track?.look(log, position, nowMs);
		return fresh.filter(({ kind }) => kind === 'phase-begins').length;
	}

	close() {
		this.#cues.close();
		this.#track?.close();
	}
}
