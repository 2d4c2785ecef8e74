import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EDGE_STRETCH_SECONDS, edgeExercise, edgeStep } from '$lib/guidance/edge.ts';
import { guide } from '$lib/guidance/guide.ts';
import type { OpenAccess } from '$lib/guidance/pulse-basis.ts';
import { efforts, talkLevels } from '$lib/physiology/effort-scale.ts';
import { anyAccess, anyProfile, measured, wideOpen } from './open-accesses.ts';

const SETTLED = [14, 11, 9, 6, 3, 1];

function exercise(access: OpenAccess, walks: readonly number[] = [], profile = measured) {
	const guidance = guide(access, profile, walks);
	if (!guidance.open) throw new Error('an open access stays open');
	return edgeExercise(guidance);
}

const walker = { ...wideOpen, status: 'CLEARED_WALK', run: false, ceiling: 'moderate' } as const;
const beginner = { ...wideOpen, startEffort: 'moderate' } as const;

describe('how far it goes', () => {
	// The target of a run is comfortable talk; "with breaths" is the most that is looked for, and for
	// walk only and settling in comfortable is. Our own rule, common practice, no source.
	test.each([
		['may walk', exercise(walker), 'comfortable'],
		['plans to walk', exercise({ ...wideOpen, run: false, plan: 'walk' }), 'comfortable'],
		['settling in', exercise(beginner), 'comfortable'],
		['settled', exercise(beginner, SETTLED), 'with-breaths'],
		['used to it', exercise(wideOpen), 'with-breaths']
	] as const)('%s', (_, { goal }, expected) => {
		expect(goal).toBe(expected);
	});

	test('only who is used to regular exercise ends with a run', () => {
		expect(exercise(wideOpen).stretches).toContain('slow-run');
		for (const other of [exercise(walker), exercise(beginner), exercise(beginner, SETTLED)]) {
			expect(other.stretches).not.toContain('slow-run');
		}
	});

	// Foster 2008 (abstract): talk takes over two minutes to turn.
	test('a stretch is longer than talk takes to turn', () => {
		expect(EDGE_STRETCH_SECONDS).toBeGreaterThan(120);
	});

	test('with pulse off there is no beat in it, and a care team’s limit is never passed', () => {
		fc.assert(
			fc.property(anyAccess, anyProfile, (access, profile) => {
				const { highestBpm } = exercise(access, [], profile);
				if (!access.pulse.on) expect(highestBpm).toBeNull();
				else if (highestBpm !== null && access.pulse.careTeamLimitBpm !== null) {
					expect(highestBpm).toBeLessThanOrEqual(access.pulse.careTeamLimitBpm);
				}
			})
		);
	});
});

describe('what comes next', () => {
	const four = exercise(wideOpen);

	test('it goes on only from comfortable talk and an effort under 7', () => {
		for (const talk of talkLevels) {
			for (const effort of efforts) {
				for (const at of four.stretches.keys()) {
					const { kind } = edgeStep(four, at, talk, effort);
					const isEasy = talk === 'comfortable' && effort < 7;
					expect(kind === 'go-on' || kind === 'comfortable-throughout').toBe(isEasy);
				}
			}
		}
	});

	test('from comfortable one step at a time, and no further than the last', () => {
		expect(edgeStep(four, 0, 'comfortable', 3)).toEqual({ kind: 'go-on', to: 1 });
		expect(edgeStep(four, 3, 'comfortable', 6)).toEqual({ kind: 'comfortable-throughout' });
	});

	test('with breaths is the edge, whatever the number says', () => {
		expect(edgeStep(four, 2, 'with-breaths', 3)).toEqual({ kind: 'found', at: 2 });
		expect(edgeStep(four, 2, 'with-breaths', 9)).toEqual({ kind: 'found', at: 2 });
	});

	test('broken off is too far, and 7 with comfortable talk is eased', () => {
		expect(edgeStep(four, 1, 'broke-off', 4).kind).toBe('too-far');
		expect(edgeStep(four, 1, 'comfortable', 7).kind).toBe('ease-off');
	});

	test('a stretch that it does not have is the caller’s mistake', () => {
		for (const at of [-1, 4, 1.5, NaN]) {
			expect(() => edgeStep(four, at, 'comfortable', 3)).toThrow(RangeError);
		}
	});
});
