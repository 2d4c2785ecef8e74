import { openBeeper, type Beeper } from '$lib/device/beep.ts';
import { keepHere, keptHere } from '$lib/device/on-this-phone.ts';
import { say } from '$lib/device/say.ts';
import type { OutingPhase } from '$lib/outing/outing.ts';
import type { Cue } from '$lib/outing/walked.ts';
import { phases as phaseWords } from '$words/phases.ts';
import { prompter } from '$words/prompter.ts';

export interface CueChoice {
	sound: boolean;
	voice: boolean;
	vibration: boolean;
	flash: boolean;
	/** Tones as a track, which a locked phone plays on. Off unless chosen: it stops other music. */
	track: boolean;
}

const NAME = 'cues';

export function chosenCues(): CueChoice {
	const kept = keptHere(NAME) as Partial<Record<keyof CueChoice, unknown>> | null;
	const isOn = (name: keyof CueChoice) => kept?.[name] !== false;
	return {
		sound: isOn('sound'),
		voice: isOn('voice'),
		vibration: isOn('vibration'),
		flash: isOn('flash'),
		track: kept?.track === true
	};
}

export const keepCues = (choice: CueChoice) => keepHere(NAME, choice);

export const countsDown = ({ kind }: Cue): boolean =>
	kind === 'three' || kind === 'two' || kind === 'one';

/** Gives cues in every way that was chosen and that the browser has; each works without the others. */
export class CueGiver {
	#beeper: Beeper | null = null;

	constructor(readonly choice: CueChoice) {}

	/** Sound is allowed only after a tap: call it from one. */
	open() {
		if (this.choice.sound) this.#beeper ??= openBeeper();
	}

	/** @param isSounding whether the tones come from a track already */
	give(cue: Cue, phases: readonly OutingPhase[], isSounding: boolean) {
		const isCountdown = countsDown(cue);
		if (!isSounding) this.#beeper?.beep(!isCountdown);
		if (this.choice.vibration) navigator.vibrate?.(isCountdown ? 80 : [300, 120, 300]);
		const text = textOf(cue.kind, phases[cue.phase]);
		if (this.choice.voice && text !== null) say(text, document.documentElement.lang);
	}

	close() {
		this.#beeper?.close();
		this.#beeper = null;
	}
}

function textOf(kind: Cue['kind'], phase: OutingPhase | undefined): string | null {
	switch (kind) {
		case 'phase-begins':
			if (phase === undefined) return null;
			return phase.cue || prompter.begins(phaseWords[phase.kind].name, phase.seconds);
		case 'half-way':
		case 'one-minute-left':
		case 'three':
		case 'two':
		case 'one':
		case 'finished':
			return prompter.cues[kind];
	}
}
