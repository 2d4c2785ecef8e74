import { describe, expect, it } from 'vitest';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { positionAt } from '$lib/outing/timeline.ts';
import { PhasePulse } from '../../src/routes/prompter/phase-pulse.ts';

/* Our own rules, no source. */

const planned = [
	plainPhase('warm-up-walk', 60),
	plainPhase('steady-run', 30),
	plainPhase('cool-down-walk', 60)
];
const at = (seconds: number) => positionAt(planned, [], seconds * 1000);
const strap = (bpm: number) => ({ bpm, source: 'chest-strap' as const });
/** One whose phase is the warm-up, unless another is said. */
function begun(seconds = 0) {
	const pulse = new PhasePulse(null);
	pulse.look(planned, at(seconds), seconds * 1000, 0);
	return pulse;
}

describe('the pulse of a phase', () => {
	it('is written when the phase is over: mean, highest, and time in contact', () => {
		const pulse = begun();
		pulse.hear(strap(120), 0);
		pulse.hear(strap(130), 1000);
		pulse.hear(null, 2000);
		expect(pulse.look(planned, at(59), 59_000, 8000), 'still on').toEqual([]);
		expect(pulse.look(planned, at(61), 61_000, 9000)).toEqual([
			{
				kind: 'pulse-summary',
				phase: 0,
				source: 'chest-strap',
				meanBpm: 125,
				highestBpm: 130,
				measuredSeconds: 2,
				elapsedMs: 61_000
			}
		]);
		expect(pulse.look(planned, at(91), 91_000, 9500), 'and forgotten').toEqual([]);
	});

	it('is not made of taps or counts, nor where nothing was measured', () => {
		const pulse = begun();
		expect(pulse.look(planned, at(61), 61_000, 0)).toEqual([]);
		pulse.hear({ bpm: 120, source: 'tapped' }, 0);
		pulse.hear({ bpm: 120, source: 'counted' }, 1000);
		expect(pulse.look(planned, at(91), 91_000, 2000)).toEqual([]);
		expect(pulse.soFar).toBeNull();
	});

	it('belongs to the phase in which it was heard, however many ended while nobody looked', () => {
		const pulse = begun();
		pulse.hear(strap(120), 0);
		expect(pulse.look(planned, at(600), 600_000, 600_000)).toMatchObject([
			{ phase: 0, measuredSeconds: 3 }
		]);
	});

	it('belongs to its own phase also where another page has written down the end of that phase', () => {
		const pulse = begun(70);
		pulse.hear(strap(150), 0);
		pulse.hear(strap(150), 1000);
		const [first] = pulse.look(planned, at(95), 95_000, 2000);
		expect(first).toMatchObject({ phase: 1, meanBpm: 150 });
		pulse.hear(strap(110), 3000);
		const [second] = pulse.look(planned, at(200), 200_000, 4000);
		expect(second, 'a value that stood began the next').toMatchObject({ phase: 2 });
	});

	it('goes on after the page was loaded again, and the time between counts for nothing', () => {
		const before = begun();
		before.hear(strap(120), 0);
		before.hear(strap(120), 1000);
		const after = new PhasePulse(before.soFar);
		after.hear(strap(140), 50_000);
		after.hear(null, 51_000);
		expect(after.look(planned, at(61), 61_000, 52_000)).toMatchObject([
			{ phase: 0, meanBpm: 130, highestBpm: 140, measuredSeconds: 2 }
		]);
	});

	it('is written at once where the phase ended while no page was there', () => {
		const before = begun();
		before.hear(strap(120), 0);
		before.hear(strap(120), 1000);
		const after = new PhasePulse(before.soFar);
		expect(after.look(planned, at(600), 600_000, 5)).toMatchObject([{ phase: 0, meanBpm: 120 }]);
	});

	it('is forgotten once pulse numbers are off', () => {
		const pulse = begun();
		pulse.hear(strap(120), 0);
		pulse.hear(strap(120), 1000);
		pulse.forget();
		expect(pulse.soFar).toBeNull();
		expect(pulse.look(planned, at(61), 61_000, 2000)).toEqual([]);
	});
});
