import { describe, expect, test } from 'vitest';
import { passagePhase, talkMomentAt } from '$lib/outing/talk-moment.ts';
import { positionAt } from '$lib/outing/timeline.ts';
import { phase, twoRuns } from './beginners-outing.ts';

// When to ask: our own choice, no source. Two minutes until the pulse has caught up: three time
// constants of Hunt 2015 are 173 s, two are 115 s.

const momentAt = (nowMs: number, phases = twoRuns, log: Parameters<typeof positionAt>[1] = []) =>
	talkMomentAt(positionAt(phases, log, nowMs));

describe('the line', () => {
	test('a warm-up asks nothing, not even as it ends', () => {
		expect(momentAt(0)).toBeNull();
		expect(momentAt(399_000)).toBeNull();
		expect(momentAt(401_000)).toBeNull();
	});

	test('it is asked in the last third of a short run, at most 20 s of it', () => {
		expect(momentAt(430_000)).toBeNull();
		expect(momentAt(434_000)).toMatchObject({ phase: 1, said: 'line' });
		expect(momentAt(609_999)).toBeNull();
		expect(momentAt(610_000)).toMatchObject({ phase: 3, said: 'line' });
	});

	test('whoever has no breath for it may answer in the first 40 s of the walk after', () => {
		expect(momentAt(489_000)).toMatchObject({ phase: 1, kind: 'steady-run' });
		expect(momentAt(490_000)).toBeNull();
	});

	test('nothing is asked while the clock stands, after a skip, or at the end', () => {
		expect(momentAt(440_000, twoRuns, [{ kind: 'paused', atMs: 435_000 }])).toBeNull();
		expect(momentAt(440_000, twoRuns, [{ kind: 'skipped', phase: 1, atMs: 438_000 }])).toBeNull();
		expect(momentAt(2_000_000)).toBeNull();
	});
});

describe('the passage', () => {
	const longWalk = [phase('warm-up-walk', 400), phase('brisk-walk', 900)];

	test('where no run or brisk walk lasts 2:30 there is none', () => {
		expect(passagePhase(twoRuns)).toBeNull();
		expect(passagePhase([phase('warm-up-walk', 900), phase('steady-run', 149)])).toBeNull();
		expect(passagePhase([phase('steady-run', 150), phase('steady-run', 300)])).toBe(0);
	});

	test('it begins two minutes into the phase, takes half a minute, and is then asked about', () => {
		expect(momentAt(519_000, longWalk)).toBeNull();
		expect(momentAt(520_000, longWalk)).toMatchObject({ said: 'passage', isReading: true });
		expect(momentAt(550_000, longWalk)).toMatchObject({ said: 'passage', isReading: false });
		expect(momentAt(600_000, longWalk)).toBeNull();
		expect(momentAt(1_290_000, longWalk)).toMatchObject({ said: 'line', phase: 1 });
	});

	test('in a run that ends soon after, it stands for the line', () => {
		const run = [phase('steady-run', 160), phase('recovery-walk', 200)];
		expect(momentAt(159_000, run)).toMatchObject({ said: 'passage', isReading: false });
		expect(momentAt(170_000, run)).toMatchObject({ said: 'passage', phase: 0 });
	});
});
