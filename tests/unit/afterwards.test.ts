import { describe, expect, it } from 'vitest';
import { entriesOfLeft } from '../../src/routes/prompter/afterwards.ts';
import { BEGAN, entriesOf } from './outing/run-entries.ts';

/* Our own rules, no source. */

const later = BEGAN + 7 * 60 * 60 * 1000;

describe('what is written of an outing that was left', () => {
	it('is nothing where its clock goes on', () => {
		expect(entriesOfLeft(entriesOf(), later)).toEqual([]);
	});

	it('comes after all that was written before, each with a number and an id of its own', () => {
		const entries = entriesOf([60, { kind: 'halted' }]);
		const written = entriesOfLeft(entries, later);
		expect(written).toMatchObject([
			{ kind: 'something-wrong', sign: 'not-said', seq: 2, at: later, elapsedMs: 60_000 },
			{ kind: 'ended', how: 'early', seq: 3, at: later, elapsedMs: 60_000 }
		]);
		expect(new Set(written.map(({ outingRunId }) => outingRunId))).toEqual(
			new Set(entries.map(({ outingRunId }) => outingRunId))
		);
		expect(new Set([...entries, ...written].map(({ id }) => id)).size).toBe(4);
	});

	it('is written once: looked at again there is nothing left to write', () => {
		const entries = entriesOf([60, { kind: 'paused' }]);
		const written = entriesOfLeft(entries, later);
		expect(written).toHaveLength(1);
		expect(entriesOfLeft([...entries, ...written], later)).toEqual([]);
	});
});
