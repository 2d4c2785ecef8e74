import type { Cue } from '$lib/outing/walked.ts';

/** Samples a second, eight bits each: enough for tones, and an outing of half an hour is 15 MB. */
const RATE = 8000;
const HEADER_BYTES = 44;
const SILENT = 128;
const LOUD = 100;
const silence = new Uint8Array(RATE).fill(SILENT);

/**
 * Tones at the moments of cues, with silence between, as one piece of sound (WAVE, PCM): a browser
 * plays it on where it would not run a script, as with the screen locked.
 *
 * @param fromMs where on the outing's clock the sound begins
 */
export function cueWav(cues: readonly Cue[], fromMs: number): Blob {
	const parts: Uint8Array<ArrayBuffer>[] = [];
	let at = 0;
	const addSilence = (samples: number) => {
		for (let left = samples; left > 0; left -= RATE) parts.push(silence.subarray(0, left));
		at += Math.max(0, samples);
	};
	for (const { kind, atMs } of cues) {
		const tone = toneOf(kind);
		const start = Math.round(((atMs - fromMs) / 1000) * RATE);
		if (start < at) continue;
		addSilence(start - at);
		parts.push(tone);
		at += tone.length;
	}
	// So that the end of the last tone is heard.
	addSilence(RATE);
	return new Blob([header(at), ...parts], { type: 'audio/wav' });
}

/** Long and high where a phase begins or all is done, short and low for the rest. */
function toneOf(kind: Cue['kind']): Uint8Array<ArrayBuffer> {
	const isLong = kind === 'phase-begins' || kind === 'finished';
	const seconds = isLong ? 0.6 : 0.15;
	const hertz = isLong ? 880 : 587;
	return Uint8Array.from({ length: Math.round(seconds * RATE) }, (_, i) => {
		const share = i / (seconds * RATE);
		// Faded in and out: a tone that is cut off clicks.
		const volume = Math.min(1, share * 20, (1 - share) * 3);
		return Math.round(SILENT + LOUD * volume * Math.sin((2 * Math.PI * hertz * i) / RATE));
	});
}

function header(samples: number): Uint8Array<ArrayBuffer> {
	const bytes = new Uint8Array(HEADER_BYTES);
	const view = new DataView(bytes.buffer);
	const text = (at: number, letters: string) =>
		[...letters].forEach((letter, i) => view.setUint8(at + i, letter.charCodeAt(0)));
	text(0, 'RIFF');
	view.setUint32(4, HEADER_BYTES - 8 + samples, true);
	text(8, 'WAVEfmt ');
	view.setUint32(16, 16, true);
	view.setUint16(20, 1, true);
	view.setUint16(22, 1, true);
	view.setUint32(24, RATE, true);
	view.setUint32(28, RATE, true);
	view.setUint16(32, 1, true);
	view.setUint16(34, 8, true);
	text(36, 'data');
	view.setUint32(40, samples, true);
	return bytes;
}
