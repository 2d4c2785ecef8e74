import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { OutingPhase } from '$lib/outing/outing.ts';
import type { LogEntry, OutingLog } from '$lib/outing/outing-log.ts';
import { phaseKinds } from '$lib/outing/phase.ts';
import { cuesSince, phasesDone, positionAt } from '$lib/outing/timeline.ts';
import { phase } from './beginners-outing.ts';

// Laws of a clock: common sense, no source.

const outings = fc.array(
	fc
		.tuple(fc.constantFrom(...phaseKinds), fc.integer({ min: 5, max: 900 }))
		.map(([kind, seconds]) => phase(kind, seconds)),
	{ minLength: 1, maxLength: 12 }
);

const MOST_MS = 4_000_000;
const moments = fc.integer({ min: 0, max: MOST_MS });
const someMoments = fc
	.array(moments, { maxLength: 40 })
	.map((times) => times.sort((a, b) => a - b));

const logs: fc.Arbitrary<OutingLog> = fc
	.array(
		fc.tuple(
			moments,
			fc.constantFrom<LogEntry['kind']>(
				'paused',
				'resumed',
				'resumed',
				'skipped',
				'added',
				'halted',
				'cooling-down',
				'ended'
			),
			fc.nat(11)
		),
		{ maxLength: 14 }
	)
	.map((entries) =>
		entries
			.sort(([a], [b]) => a - b)
			.map(([atMs, kind, at]): LogEntry =>
				kind === 'skipped' || kind === 'added' ? { kind, phase: at, atMs } : { kind, atMs }
			)
	);

const totalMs = (phases: readonly OutingPhase[]) =>
	phases.reduce((sum, { seconds }) => sum + seconds * 1000, 0);

/** As a phone knows it at a moment: nothing of what is still to come. */
const knownAt = (log: OutingLog, nowMs: number) => log.filter(({ atMs }) => atMs <= nowMs);

describe('laws of the timeline', () => {
	test('looking in any pattern of times gives the same cues, once each', () => {
		fc.assert(
			fc.property(outings, logs, someMoments, (phases, log, looks) => {
				let last: number | null = null;
				const heard = [];
				for (const now of [...looks, MOST_MS]) {
					heard.push(...cuesSince(phases, knownAt(log, now), last, now));
					last = now;
				}
				expect(heard).toEqual(cuesSince(phases, log, null, MOST_MS));
				const names = heard.map(({ kind, phase, atMs }) => `${kind} ${phase} ${atMs}`);
				expect(new Set(names).size).toBe(names.length);
			}),
			{ numRuns: 500 }
		);
	});

	test('cues come in the order of time', () => {
		fc.assert(
			fc.property(outings, logs, (phases, log) => {
				const times = cuesSince(phases, log, null, MOST_MS).map(({ atMs }) => atMs);
				expect(times).toEqual([...times].sort((a, b) => a - b));
			})
		);
	});

	test('a pause adds exactly its length', () => {
		fc.assert(
			fc.property(outings, moments, moments, moments, (phases, from, length, later) => {
				fc.pre(from < totalMs(phases));
				const log: OutingLog = [
					{ kind: 'paused', atMs: from },
					{ kind: 'resumed', atMs: from + length }
				];
				const without = positionAt(phases, [], from + later);
				const paused = positionAt(phases, log, from + length + later);
				expect(withoutBefore(paused)).toEqual(withoutBefore(without));
			})
		);
	});

	test('an outing never runs backwards, and never longer than it was made', () => {
		fc.assert(
			fc.property(outings, logs, moments, moments, (phases, log, one, other) => {
				const [earlier, later] = [Math.min(one, other), Math.max(one, other)];
				const a = positionAt(phases, log, earlier);
				const b = positionAt(phases, log, later);
				if (b.state === 'over') return;
				expect(a.state).not.toBe('over');
				if (a.state === 'over') return;
				expect(b.index).toBeGreaterThanOrEqual(a.index);
				if (a.index === b.index) expect(b.inPhaseMs).toBeGreaterThanOrEqual(a.inPhaseMs);
				expect(b.inPhaseMs).toBeLessThan(b.phaseMs);
			})
		);
	});

	test('what is done and what is on add up to the time that was not paused', () => {
		fc.assert(
			fc.property(outings, logs, moments, (phases, log, now) => {
				const done = phasesDone(phases, log, now);
				const position = positionAt(phases, log, now);
				const behind = done.reduce((sum, { activeMs }) => sum + activeMs, 0);
				const active = behind + (position.state === 'over' ? 0 : position.inPhaseMs);
				expect(active).toBeLessThanOrEqual(now);
				if (log.length === 0) expect(active).toBe(Math.min(now, totalMs(phases)));
				expect(done.map(({ index }) => index)).toEqual(done.map((_, place) => place));
			})
		);
	});
});

/** The phase before keeps the time of day at which it ended, which a pause does move. */
function withoutBefore(position: ReturnType<typeof positionAt>) {
	return { ...position, before: null };
}
