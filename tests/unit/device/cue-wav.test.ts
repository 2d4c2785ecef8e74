import { describe, expect, it } from 'vitest';
import { cueWav } from '$lib/device/cue-wav.ts';
import { cuesAhead } from '$lib/outing/timeline.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';

/*
 * The layout of the header: Multimedia Programming Interface and Data Specifications 1.0 (IBM and
 * Microsoft, 1991), WAVE with PCM; from memory. Moments are added up from the outing.
 */

const outing = [plainPhase('warm-up-walk', 60), plainPhase('steady-run', 30)];

async function bytesOf(fromMs: number) {
	const wav = cueWav(cuesAhead(outing, [], fromMs), fromMs);
	return new Uint8Array(await wav.arrayBuffer());
}

/** The seconds at which something begins to sound, after at least a tenth of silence. */
function heard(bytes: Uint8Array): number[] {
	const samples = bytes.subarray(44);
	const starts: number[] = [];
	let silent = 800;
	samples.forEach((sample, i) => {
		const isLoud = Math.abs(sample - 128) > 8;
		if (isLoud && silent >= 800) starts.push(Math.round((i / 8000) * 10) / 10);
		silent = isLoud ? 0 : silent + 1;
	});
	return starts;
}

describe('the cues of an outing as one piece of sound', () => {
	it('is a WAVE of one channel with 8000 samples of 8 bits a second', async () => {
		const bytes = await bytesOf(0);
		const view = new DataView(bytes.buffer);
		const text = (at: number, length: number) =>
			new TextDecoder().decode(bytes.subarray(at, at + length));
		expect([text(0, 4), text(8, 8), text(36, 4)]).toEqual(['RIFF', 'WAVEfmt ', 'data']);
		expect(view.getUint32(4, true)).toBe(bytes.length - 8);
		expect([20, 22, 32, 34].map((at) => view.getUint16(at, true))).toEqual([1, 1, 1, 8]);
		expect([24, 28].map((at) => view.getUint32(at, true))).toEqual([8000, 8000]);
		expect(view.getUint32(40, true)).toBe(bytes.length - 44);
	});

	it('sounds when the cues fall due', async () => {
		expect(heard(await bytesOf(0))).toEqual([57, 58, 59, 60, 87, 88, 89, 90]);
	});

	it('begins where the outing is', async () => {
		expect(heard(await bytesOf(58_500))).toEqual([0.5, 1.5, 28.5, 29.5, 30.5, 31.5]);
	});
});
