import { describe, expect, it } from 'vitest';
import type { DueEntry } from '$lib/outing/due-entries.ts';
import { PhasePulse } from '../../src/routes/prompter/phase-pulse.ts';

/* Our own rules, no source. */

const done = (phase: number): DueEntry => ({
	kind: 'phase-done',
	phase,
	activeSeconds: 30,
	how: 'whole',
	elapsedMs: 30_000
});
const strap = (bpm: number) => ({ bpm, source: 'chest-strap' as const });

describe('the pulse of a phase', () => {
	it('is written behind its phase: mean, highest, and time in contact', () => {
		const pulse = new PhasePulse();
		pulse.hear(strap(120), 0);
		pulse.hear(strap(130), 1000);
		pulse.hear(null, 2000);
		expect(pulse.withSummary([done(1)], 9000)).toEqual([
			done(1),
			{
				kind: 'pulse-summary',
				phase: 1,
				source: 'chest-strap',
				meanBpm: 125,
				highestBpm: 130,
				measuredSeconds: 2,
				elapsedMs: 30_000
			}
		]);
		expect(pulse.withSummary([done(2)], 9500), 'and forgotten').toEqual([done(2)]);
	});

	it('is not made of taps or counts, nor where nothing was measured or nothing is over', () => {
		const pulse = new PhasePulse();
		pulse.hear({ bpm: 120, source: 'tapped' }, 0);
		pulse.hear({ bpm: 120, source: 'counted' }, 1000);
		expect(pulse.withSummary([done(1)], 2000)).toEqual([done(1)]);
		pulse.hear(strap(120), 3000);
		expect(pulse.withSummary([], 4000)).toEqual([]);
	});

	it('belongs to the first of several phases that were over while nobody looked', () => {
		const pulse = new PhasePulse();
		pulse.hear(strap(120), 0);
		const kinds = pulse.withSummary([done(1), done(2)], 600_000).map(({ kind }) => kind);
		expect(kinds).toEqual(['phase-done', 'pulse-summary', 'phase-done']);
	});
});
