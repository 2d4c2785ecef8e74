import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { guide } from '$lib/guidance/guide.ts';
import { narrowerBand } from '$lib/guidance/narrower-band.ts';
import { phaseKinds } from '$lib/outing/phase.ts';
import { anyAccess, anyProfile, measured, wideOpen } from './open-accesses.ts';

// Our own rules, no source.

const opened = (access = wideOpen, profile = measured) => {
	const guidance = guide(access, profile, []);
	if (!guidance.open) throw new Error('closed');
	return guidance;
};

describe('a target that a phase has of its own', () => {
	test('is in beats what it is in shares', () => {
		const target = { low: 0.52, high: 0.55 };
		const band = narrowerBand(opened(), { kind: 'steady-run', target });
		expect([band?.low?.fraction, band?.high.fraction]).toEqual([0.52, 0.55]);
	});

	test('is none where none is written', () => {
		expect(narrowerBand(opened(), { kind: 'steady-run', target: null })).toBeNull();
	});

	test('gives way to the band where nothing of it is inside', () => {
		const target = { low: 0.8, high: 0.9 };
		const band = narrowerBand(opened(), { kind: 'steady-run', target });
		const usual = opened().phases.find(({ kind }) => kind === 'steady-run')?.pulse;
		expect(band).toEqual(usual);
	});

	test('never goes over the band of its kind, whoever the runner is, and is not there without a pulse', () => {
		const share = fc.double({ min: 0, max: 1, noNaN: true });
		fc.assert(
			fc.property(
				anyAccess,
				anyProfile,
				fc.constantFrom(...phaseKinds),
				share,
				share,
				(access, profile, kind, low, high) => {
					const guidance = guide(access, profile, []);
					if (!guidance.open) return;
					const band = narrowerBand(guidance, { kind, target: { low, high } });
					const bands = [...guidance.phases, ...guidance.others];
					const usual = bands.find((phase) => phase.kind === kind)?.pulse ?? null;
					if (usual === null) expect(band).toBeNull();
					else expect(band?.high.bpm).toBeLessThanOrEqual(usual.high.bpm);
				}
			)
		);
	});
});
