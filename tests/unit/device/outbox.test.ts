import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sendWaiting, waitMs, type EntryStore } from '$lib/device/outbox.ts';
import type { Entry } from '$lib/outing/entry.ts';
import { RUN } from '../outing/any-entry.ts';

/* Our own rules, no source. */

const answers = Array.from({ length: 120 }, (_, seq): Entry => ({
	id: `00000000-0000-4000-8000-${String(seq).padStart(12, '0')}`,
	outingRunId: RUN,
	at: seq,
	seq,
	elapsedMs: 0,
	kind: 'talk-answer',
	phase: 0,
	secondsIntoPhase: 0,
	talk: 'comfortable',
	effort: 5,
	speedKmh: null,
	afterPassage: false,
	pulse: null
}));

function holding(entries: readonly Entry[]): EntryStore & { add(more: readonly Entry[]): void } {
	let left = [...entries];
	return {
		add: (more) => left.push(...more),
		waiting: async () => [...left],
		settled: async (ids) => {
			left = left.filter(({ id }) => !ids.includes(id));
		}
	};
}

/** Keeps each id once, and counts what came new. */
function server() {
	const kept: string[] = [];
	return {
		kept,
		take: (entries: readonly Entry[]) => {
			for (const { id } of entries) if (!kept.includes(id)) kept.push(id);
			return { kept: entries.map(({ id }) => id), refused: [] };
		}
	};
}

describe('an outbox', () => {
	it('with nothing in it sends nothing', async () => {
		const outcome = await sendWaiting(holding([]), () => Promise.reject(new Error('asked')));
		expect(outcome).toEqual({ waiting: 0, refused: [] });
	});

	it('loses and doubles nothing over 200 random cuts, of requests and of answers', async () => {
		const cut = fc.constantFrom('none' as const, 'request' as const, 'answer' as const);
		await fc.assert(
			fc.asyncProperty(fc.array(cut, { maxLength: 12 }), fc.nat(119), async (cuts, later) => {
				const store = holding(answers.slice(0, later));
				const there = server();
				const left = [...cuts];
				const send = async (entries: readonly Entry[]) => {
					const now = left.shift() ?? 'none';
					if (now === 'request') throw new TypeError('no network');
					const told = there.take(entries);
					if (now === 'answer') throw new TypeError('no network');
					return told;
				};
				await sendWaiting(store, send);
				store.add(answers.slice(later));
				while ((await sendWaiting(store, send)).waiting > 0);
				expect(there.kept).toEqual(answers.map(({ id }) => id));
			}),
			{ numRuns: 200, seed: 20_261_125 }
		);
	});

	it('forgets what is refused, and says so, and keeps what was not named', async () => {
		const store = holding(answers.slice(0, 3));
		const [first, second] = answers;
		let asked = 0;
		const outcome = await sendWaiting(store, async () => {
			asked += 1;
			if (asked > 1) throw new TypeError('no network');
			return {
				kept: [first?.id ?? ''],
				refused: [{ id: second?.id ?? '', code: 'not-an-entry' }]
			};
		});
		expect(outcome).toEqual({ waiting: 1, refused: [{ id: second?.id, code: 'not-an-entry' }] });
	});

	it('does not ask for ever a server that names nothing', async () => {
		const nothing = async () => ({ kept: [], refused: [] });
		expect(await sendWaiting(holding(answers), nothing)).toMatchObject({ waiting: 120 });
	});

	it('waits longer after each failure, five minutes at most', () => {
		expect([1, 2, 3, 50].map(waitMs)).toEqual([2000, 4000, 8000, 300_000]);
	});
});
