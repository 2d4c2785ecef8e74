import { describe, expect, it } from 'vitest';
import { talkEvidence } from '$lib/guidance/ceiling/evidence.ts';
import { learnedCeiling } from '$lib/guidance/ceiling/learned-ceiling.ts';
import { guide, type Guidance } from '$lib/guidance/guide.ts';
import type { OpenAccess } from '$lib/guidance/pulse-basis.ts';
import { closed } from '$lib/screening/closed-access.ts';
import { emptyProfile } from '$lib/guidance/profile.ts';
import type { TalkAnswer } from '$lib/outing/entry.ts';
import { doneOuting } from '../../outing/done-entries.ts';
import { measured, wideOpen } from '../open-accesses.ts';

// Our own rules, no source.

const strap = (bpm: number) => ({ bpm, source: 'chest-strap' }) as const;
const counts = { afterPassage: true, secondsIntoPhase: 150, pulse: strap(140) } as const;
const outing = (answer: Partial<TalkAnswer>, more: { hot?: boolean } = {}) => ({
	...doneOuting([{ kind: 'brisk-walk', seconds: 300, answer }], more),
	onDate: '2026-11-20'
});
const evidence = (...given: Parameters<typeof outing>) =>
	talkEvidence([outing(...given)], '2026-11-25');

describe('answers that a talk ceiling is learned from', () => {
	it('come after the passage, two minutes or more into a phase, with a measured pulse', () => {
		expect(evidence(counts)).toEqual([
			{ daysAgo: 5, answers: [{ pulseBpm: 140, talk: 'comfortable' }] }
		]);
		expect(evidence({ ...counts, secondsIntoPhase: 120 })).toHaveLength(1);
		expect(evidence({ ...counts, secondsIntoPhase: 119 })).toEqual([]);
		expect(evidence({ ...counts, afterPassage: false })).toEqual([]);
		expect(evidence({ ...counts, pulse: null })).toEqual([]);
	});

	it('are none of a hot outing, nor of one whose start is not known', () => {
		expect(evidence(counts, { hot: true })).toEqual([]);
		expect(talkEvidence([{ ...outing(counts), started: null }], '2026-11-25')).toEqual([]);
	});

	it('of a phone that runs ahead are of today', () => {
		expect(talkEvidence([outing(counts)], '2026-11-19')).toMatchObject([{ daysAgo: 0 }]);
	});
});

describe('what is said of a talk ceiling', () => {
	const open = (access: Partial<OpenAccess> = {}) =>
		guide({ ...wideOpen, ...access }, measured, []);
	const said = (talk: 'comfortable' | 'broke-off', pulseBpm: number, times: number) =>
		Array.from({ length: times }, () => ({ daysAgo: 0, answers: [{ pulseBpm, talk }] }));
	const of = (guidance: Guidance, some = said('comfortable', 120, 5)) =>
		learnedCeiling(guidance, some);

	it('is nothing while the gate is closed, with pulse off, without a resting pulse or under a limit', () => {
		const off = { on: false, reasons: ['H-MEDS'], careTeamLimitBpm: null } as const;
		const limit = { on: true, careTeamLimitBpm: 130 } as const;
		expect(of(guide(closed('SEEK_ADVICE'), measured, []))).toBeNull();
		expect(of(open({ pulse: off }))).toBeNull();
		expect(of(guide(wideOpen, emptyProfile, []))).toBeNull();
		expect(of(open({ pulse: limit }))).toBeNull();
	});

	it('is what is missing, until there are enough answers', () => {
		expect(of(open(), [])).toEqual({ kind: 'too-few', answers: 0, needed: 5 });
		expect(of(open(), said('comfortable', 120, 4))).toMatchObject({ answers: 4 });
		expect(of(open())).toMatchObject({ kind: 'learned', answers: 5, heard: 'only-comfortable' });
	});

	it('is a pulse to stay under only where it lies below the band, and never raises one', () => {
		const low = of(open(), said('broke-off', 118, 6));
		if (low?.kind !== 'learned') throw new Error('not learned');
		expect(low.heard).toBe('never-comfortable');
		expect(low.stayUnderBpm).toBeLessThan(118);
		expect(of(open(), said('comfortable', 165, 8))).toMatchObject({ stayUnderBpm: null });
	});

	it('is no number above the band for whoever may only walk or is settling in', () => {
		const comfortable = said('comfortable', 125, 6);
		const walks: Partial<OpenAccess> = { status: 'CLEARED_WALK', run: false, ceiling: 'moderate' };
		for (const access of [walks, { startEffort: 'moderate' } as const]) {
			expect(of(open(access), comfortable)).toEqual({ kind: 'above-band', answers: 6 });
		}
		expect(of(open(walks), said('broke-off', 95, 8))?.kind).toBe('learned');
	});
});
