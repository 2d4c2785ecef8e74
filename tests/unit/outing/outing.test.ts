import { expect, test } from 'vitest';
import { phasesOf, type OutingPhase } from '$lib/outing/outing.ts';

const plain = { target: null, speedKmh: null, inclinePercent: null, cue: '' };
const run: OutingPhase = { kind: 'steady-run', seconds: 50, ...plain };
const walk: OutingPhase = { kind: 'recovery-walk', seconds: 110, ...plain };
const warmUp: OutingPhase = { kind: 'warm-up-walk', seconds: 420, ...plain };

test('an outing without parts has no phase', () => {
	expect(phasesOf({ parts: [] })).toEqual([]);
});

test('repeated phases are met one after another, in their order, between what stands around them', () => {
	const outing = { parts: [warmUp, { times: 2, phases: [run, walk] }, warmUp] };
	expect(phasesOf(outing)).toEqual([warmUp, run, walk, run, walk, warmUp]);
});
