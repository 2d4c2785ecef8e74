import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dueEntries } from '$lib/outing/due-entries.ts';
import type { Entry } from '$lib/outing/entry.ts';
import { settleEntries } from '$lib/outing/settle-entries.ts';
import { isWalkingOuting } from '$lib/outing/walked-outing.ts';
import { BEGAN, entriesOf, outing } from './run-entries.ts';

/* Our own rules, no source. Lengths are added up from the outing: 420, 50, 110, 40, 360 s. */

const due = (entries: readonly Entry[], seconds: number) =>
	dueEntries(outing, entries, seconds * 1000);

/** As a prompter writes them: with the next numbers. */
function written(entries: readonly Entry[], seconds: number): readonly Entry[] {
	const first = entries[0];
	if (first === undefined) throw new Error('no entries');
	const next = due(entries, seconds).map((one, i): Entry => {
		const seq = entries.length + i;
		const id = `00000000-0000-4000-8000-${String(seq).padStart(12, '0')}`;
		return { ...one, id, outingRunId: first.outingRunId, seq, at: BEGAN + one.elapsedMs };
	});
	return [...entries, ...next];
}

describe('what has to be written down', () => {
	it('is nothing in the first phase', () => {
		expect(due(entriesOf(), 419)).toEqual([]);
	});

	it('is a phase once it is behind, at the moment when it ended', () => {
		expect(due(entriesOf(), 480)).toEqual([
			{ kind: 'phase-done', phase: 0, activeSeconds: 420, how: 'whole', elapsedMs: 420_000 },
			{ kind: 'phase-done', phase: 1, activeSeconds: 50, how: 'whole', elapsedMs: 470_000 }
		]);
	});

	it('is all of it and the end, after a lock that outlasted the outing', () => {
		const all = due(entriesOf(), 5000);
		expect(all).toHaveLength(6);
		expect(all.at(-1)).toEqual({ kind: 'ended', how: 'finished', elapsedMs: 980_000 });
	});

	it('comes to the same however often one looks', () => {
		const whole = written(entriesOf(), 5000);
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 0, max: 5000 })), (looks) => {
				const sorted = [...looks].sort((one, other) => one - other);
				const bit = [...sorted, 5000].reduce(written, entriesOf());
				expect(bit).toEqual(whole);
				expect(due(bit, 9000)).toEqual([]);
			})
		);
	});

	it('keeps the place in the plan of a cool-down that was gone to early', () => {
		const entries = written(entriesOf([100, { kind: 'cooling-down' }]), 2000);
		const { phases, ended } = settleEntries(entries);
		expect(phases.map(({ phase, how }) => [phase, how])).toEqual([
			[0, 'cut-short'],
			[4, 'whole']
		]);
		expect(ended?.how).toBe('early');
	});

	it('puts a cool-down that the plan does not have after all of it: it is a walk, not the next run', () => {
		const { name } = outing;
		const bare = { name, parts: outing.parts.slice(0, 4) };
		const entries = entriesOf([300, { kind: 'cooling-down' }]);
		const [first, ...others] = entries as [Entry & { kind: 'started' }, ...Entry[]];
		const started = { ...first, outing: bare };
		const content = dueEntries(bare, [started, ...others], 2_000_000);
		expect(content.flatMap((it) => (it.kind === 'phase-done' ? it.phase : []))).toEqual([0, 4]);
		const all = content.map(
			(one, i) => ({ ...first, ...one, id: `${i}`, seq: i + 9, at: BEGAN }) as Entry
		);
		expect(isWalkingOuting(settleEntries([started, ...others, ...all]))).toBe(true);
	});

	it('is an end that was written before it came, once', () => {
		const entries = entriesOf([100, { kind: 'ended', how: 'early' }]);
		expect(due(entries, 200)).toEqual([
			{ kind: 'phase-done', phase: 0, activeSeconds: 100, how: 'cut-short', elapsedMs: 100_000 }
		]);
	});
});
