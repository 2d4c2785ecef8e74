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
const byTalk = { on: false, reasons: [], careTeamLimitBpm: null } as const;
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
	// By our words of the scale: 5 whole sentences, 6 one sentence and then a breath, 7 ease off. With
	// breaths is the most that is looked for; who may walk only or is settling in stays comfortable.
	// Our own rule, common practice, no source. One letter an effort, from 0 to 10: u up, s stay, f the
	// edge was found, e ease off, x too far.
	const table = {
		comfortable: {
			comfortable: 'uuuuuseeeee',
			'with-breaths': 'ffffffeeeee',
			'broke-off': 'xxxxxxxxxxx'
		},
		'with-breaths': {
			comfortable: 'uuuuuuseeee',
			'with-breaths': 'fffffffeeee',
			'broke-off': 'xxxxxxxxxxx'
		}
	} as const;
	const kinds = { u: 'go-on', s: 'stay', f: 'found', e: 'ease-off', x: 'too-far' } as const;
	const everybody = [
		['may walk', exercise(walker)],
		['plans to walk', exercise({ ...wideOpen, run: false, plan: 'walk' })],
		['settling in', exercise(beginner)],
		['settled', exercise(beginner, SETTLED)],
		['used to it', exercise(wideOpen)],
		['settling in, by talk', exercise({ ...beginner, pulse: byTalk })],
		['used to it, by talk', exercise({ ...wideOpen, pulse: byTalk })]
	] as const;

	describe.each(everybody)('%s', (_, asked) => {
		test.each(talkLevels)('talk %s, every effort at every stretch', (talk) => {
			for (const at of asked.stretches.keys()) {
				for (const effort of efforts) {
					const letter = table[asked.goal][talk][effort] as keyof typeof kinds;
					const isLast = at === asked.stretches.length - 1;
					const kind = letter === 'u' && isLast ? 'comfortable-throughout' : kinds[letter];
					const step = edgeStep(asked, at, talk, effort);
					expect(step.kind, `${effort} at ${at}`).toBe(kind);
					if (step.kind === 'go-on') expect(step.to).toBe(at + 1);
					else if (step.kind !== 'comfortable-throughout') expect(step.at).toBe(at);
				}
			}
		});
	});

	test('whoever is held to comfortable is told to do no more than anybody else', () => {
		const careful = exercise(beginner);
		const free = { ...careful, goal: 'with-breaths' } as const;
		const isUp = ({ kind }: { kind: string }) => kind === 'go-on';
		for (const talk of talkLevels) {
			for (const effort of efforts) {
				if (isUp(edgeStep(careful, 0, talk, effort))) {
					expect(isUp(edgeStep(free, 0, talk, effort))).toBe(true);
				}
			}
		}
	});

	test('a stretch that it does not have is the caller’s mistake', () => {
		for (const at of [-1, 4, 1.5, NaN]) {
			expect(() => edgeStep(exercise(wideOpen), at, 'comfortable', 3)).toThrow(RangeError);
		}
	});
});
