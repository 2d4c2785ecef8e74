import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dueEntries } from '$lib/outing/due-entries.ts';
import type { Entry, EntryContent } from '$lib/outing/entry.ts';
import { logOfEntries } from '$lib/outing/log-of-entries.ts';
import { mergeEntries } from '$lib/outing/merge-entries.ts';
import { phasesOf } from '$lib/outing/outing.ts';
import { settleEntries } from '$lib/outing/settle-entries.ts';
import { positionAt } from '$lib/outing/timeline.ts';
import { BEGAN, entriesOf, outing } from './run-entries.ts';

/*
 * One outing run, written down by two pages that did not hear of each other: of a phone and of a
 * tablet, or two tabs without a network. Our own rules, no source.
 */

const [begun] = entriesOf();
if (begun === undefined) throw new Error('an outing begins');

/** What one page wrote down; each counts on from the start by itself, so that numbers come twice. */
function page(name: 'a' | 'b', ...done: readonly (readonly [number, EntryContent])[]): Entry[] {
	return done.map(([seconds, content], nth) => ({
		...content,
		id: `${name}0000000-0000-4000-8000-${String(nth).padStart(12, '0')}`,
		outingRunId: begun!.outingRunId,
		at: BEGAN + seconds * 1000,
		seq: nth + 1,
		elapsedMs: seconds * 1000
	}));
}

const at = (seconds: number, ...pages: readonly (readonly Entry[])[]) =>
	positionAt(phasesOf(outing), logOfEntries(mergeEntries([begun], ...pages)), seconds * 1000);
const settled = (...pages: readonly (readonly Entry[])[]) =>
	settleEntries(mergeEntries([begun], ...pages));
const skip = (phase: number): EntryContent => ({ kind: 'skipped', phase });
const talk = (level: 'comfortable' | 'broke-off'): EntryContent => ({
	kind: 'talk-answer',
	phase: 1,
	secondsIntoPhase: 40,
	talk: level,
	effort: 5,
	speedKmh: null,
	afterPassage: false,
	pulse: null
});

describe('two pages of one outing', () => {
	it('that skip the same part skip it once', () => {
		const [one, other] = [page('a', [100, skip(0)]), page('b', [101, skip(0)])];
		expect(at(110, one, other)).toMatchObject({ index: 1, inPhaseMs: 10_000 });
		expect(at(110, other, one)).toMatchObject({ index: 1, inPhaseMs: 10_000 });
	});

	it('that pause and go on each at their own time stand where the clock puts them', () => {
		const paused = page('a', [100, { kind: 'paused' }]);
		const resumed = page('b', [160, { kind: 'resumed' }]);
		expect(at(150, resumed, paused)).toMatchObject({ state: 'paused', inPhaseMs: 100_000 });
		expect(at(170, resumed, paused)).toMatchObject({ state: 'going', inPhaseMs: 110_000 });
	});

	it('of which one halted stand still for both, and no sign is lost', () => {
		const halted = page('a', [100, { kind: 'halted' }]);
		const other = page('b', [130, skip(2)], [140, { kind: 'something-wrong', sign: 'ask-first' }]);
		expect(at(200, other, halted)).toMatchObject({ state: 'halted', inPhaseMs: 100_000 });
		expect(settled(other, halted).wrong).toHaveLength(1);
	});

	it('of which one ended the outing end it: what the other did later changes nothing', () => {
		const ended = page('a', [200, { kind: 'ended', how: 'early' }]);
		const later = page('b', [230, skip(0)], [260, { kind: 'ended', how: 'finished' }]);
		expect(at(500, later, ended)).toMatchObject({ state: 'over' });
		expect(settled(later, ended).ended).toMatchObject({ how: 'early', elapsedMs: 200_000 });
	});

	it('that both wrote down the end of a part have it once', () => {
		const end: EntryContent = {
			kind: 'phase-done',
			phase: 0,
			activeSeconds: 420,
			how: 'whole'
		};
		const both = [page('a', [420, end]), page('b', [420, end])];
		expect(settled(...both).phases).toHaveLength(1);
		expect(dueEntries(outing, mergeEntries([begun], ...both), 425_000)).toEqual([]);
	});

	it('that were told different things about one part keep what was said last', () => {
		const one = page('a', [440, talk('comfortable')]);
		const other = page('b', [450, talk('broke-off')]);
		for (const pages of [
			[one, other],
			[other, one]
		]) {
			expect(settled(...pages).answers).toMatchObject([{ talk: 'broke-off' }]);
		}
	});

	it('come to the same for every page and the server, whoever sends first, and sent again', () => {
		const act = fc.record({
			seconds: fc.integer({ min: 1, max: 900 }),
			content: fc.constantFrom<EntryContent>(
				{ kind: 'paused' },
				{ kind: 'resumed' },
				{ kind: 'cooling-down' },
				{ kind: 'ended', how: 'early' },
				skip(0),
				skip(2),
				{ kind: 'added-seconds', phase: 2, seconds: 30 },
				talk('comfortable'),
				talk('broke-off')
			)
		});
		const acts = fc.array(act, { maxLength: 8 });
		fc.assert(
			fc.property(acts, acts, fc.integer({ min: 0, max: 1200 }), (one, other, seconds) => {
				const inTime = (all: typeof one) =>
					[...all]
						.sort((a, b) => a.seconds - b.seconds)
						.map((it) => [it.seconds, it.content] as const);
				const [a, b] = [page('a', ...inTime(one)), page('b', ...inTime(other))];
				expect(at(seconds, b, a)).toEqual(at(seconds, a, b));
				expect(at(seconds, b, a, b)).toEqual(at(seconds, a, b));
				expect(settled(b, a, a)).toEqual(settled(a, b));
			}),
			{ numRuns: 200 }
		);
	});
});
