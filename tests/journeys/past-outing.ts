import { randomUUID } from 'node:crypto';
import { expect } from '@playwright/test';
import type { Entry, EntryContent } from '../../src/lib/outing/entry.ts';
import { plainPhase } from '../../src/lib/outing/plain-phase.ts';
import type { Phone } from './phone.ts';

const DAY_MS = 24 * 60 * 60 * 1000;

interface Did {
	readonly daysAgo?: number;
	readonly kind?: 'steady-run' | 'brisk-walk';
	readonly more?: readonly EntryContent[];
}

/** Sends an outing as a phone that did it would; answers its place. Invented numbers. */
export async function didAnOuting(phone: Phone, { daysAgo = 1, kind, more = [] }: Did = {}) {
	const outingRunId = randomUUID();
	const at = Date.now() - daysAgo * DAY_MS;
	const main = kind ?? 'steady-run';
	const parts = [
		plainPhase('warm-up-walk', 400),
		plainPhase(main, main === 'steady-run' ? 50 : 700),
		plainPhase('recovery-walk', 110),
		plainPhase(main, 70),
		plainPhase('cool-down-walk', 380)
	];
	const contents: EntryContent[] = [
		{
			kind: 'started',
			outing: { name: 'Outing 3', parts },
			plannedId: null,
			place: 'treadmill',
			hot: false
		},
		...parts.flatMap(({ seconds }, phase): EntryContent[] => [
			{
				kind: 'talk-answer',
				phase,
				secondsIntoPhase: seconds - 5,
				talk: phase === 3 ? 'with-breaths' : 'comfortable',
				effort: 5,
				speedKmh: 6.4,
				afterPassage: false,
				pulse: { bpm: 137, source: 'chest-strap' }
			},
			{ kind: 'phase-done', phase, activeSeconds: seconds, how: 'whole' }
		]),
		{
			kind: 'pulse-summary',
			phase: 1,
			source: 'chest-strap',
			meanBpm: 134,
			highestBpm: 141,
			measuredSeconds: 48
		},
		{ kind: 'ended', how: 'finished' },
		...more
	];
	const entries = contents.map((content, seq): Entry => {
		return { id: randomUUID(), outingRunId, at: at + seq, seq, elapsedMs: seq * 1000, ...content };
	});
	const answer = await phone.request.post(`${phone.url}/prompter/entries`, { data: { entries } });
	expect(answer.status()).toBe(200);
	return `/past/${outingRunId}`;
}
