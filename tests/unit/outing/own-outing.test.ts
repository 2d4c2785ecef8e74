import { expect, test } from 'vitest';
import { ownOuting as made } from '$lib/outing/own-outing.ts';
import { phasesOf } from '$lib/outing/outing.ts';
import { passagePhase } from '$lib/outing/talk-moment.ts';

// Our own rules, no source.

const ownOuting = (kind: Parameters<typeof made>[1]) => phasesOf(made('Outing', kind));

const runsOf = (kind: Parameters<typeof ownOuting>[0]) =>
	ownOuting(kind)
		.filter((phase) => phase.kind === 'steady-run')
		.map(({ seconds }) => seconds);

test('whoever walks has no run in it, and a walk in which the passage can be read', () => {
	expect(runsOf('walks')).toEqual([]);
	expect(passagePhase(ownOuting('walks'))).toBe(1);
});

test('the first runs last 20 to 30 s', () => {
	expect(runsOf('first-runs').length).toBeGreaterThan(0);
	for (const seconds of runsOf('first-runs')) {
		expect(seconds).toBeGreaterThanOrEqual(20);
		expect(seconds).toBeLessThanOrEqual(30);
	}
});

test('every outing begins and ends with a walk of six minutes or more', () => {
	for (const kind of ['walks', 'first-runs', 'runs'] as const) {
		const phases = ownOuting(kind);
		expect(phases[0]).toMatchObject({ kind: 'warm-up-walk' });
		expect(phases.at(-1)).toMatchObject({ kind: 'cool-down-walk' });
		expect(phases[0]?.seconds).toBeGreaterThanOrEqual(360);
		expect(phases.at(-1)?.seconds).toBeGreaterThanOrEqual(360);
	}
});
