import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { EntryContent, TalkAnswer } from '$lib/outing/entry.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import type { Answers } from '$lib/screening/types.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import * as profiles from '$lib/server/profiles.ts';
import * as whatNext from '$lib/server/what-next.ts';
import { DATABASES, DAY, inHouse, NOW } from './in-house.ts';
import { screened, ZONE } from './sample.ts';

// Our own rules, no source.

const today = '2026-11-25';
const NEW_TO_IT = { 'act.days': 1, 'act.minutes': 20, 'act.months': 'lt3', 'act.hard': 'no' };
const PULSE_OFF = { 'meds.rate': 'yes', 'meds.why': 'minor' };
const REFERRED: Answers = { 'signs.other': ['ankles'] };

type Said = Pick<TalkAnswer, 'talk'>;
interface Did {
	readonly kind?: 'steady-run' | 'brisk-walk';
	readonly hot?: boolean;
	readonly daysAgo?: number;
}

describe.each(DATABASES)('what past outings say about the next one, on %s', (type) => {
	const here = inHouse(type);
	const of = (runnerId: string) =>
		whatNext.of(here, { runnerId, sessionId: 'a session' }, NOW, today);

	/** Somebody who answered, and knows a resting pulse. */
	async function runner(changes: Answers = {}) {
		const runnerId = await here.runner();
		await screened(here, runnerId, changes);
		const morning = (kept: profiles.Profile) =>
			profiles.withMorning(kept, { on: today, bpm: 64, method: 60 });
		await profiles.change(here.database, here.vault, runnerId, morning, NOW);
		return runnerId;
	}

	/** A walk or a run of ten minutes, with an answer after reading aloud. */
	async function did(
		runnerId: string,
		{ kind = 'steady-run', hot = false, daysAgo = 1, ...said }: Did & Partial<Said> = {}
	) {
		const outingRunId = randomUUID();
		const at = NOW - daysAgo * DAY;
		const contents: EntryContent[] = [
			{
				kind: 'started',
				outing: { name: 'Outing 3', parts: [plainPhase(kind, 600)] },
				plannedId: null,
				place: 'treadmill',
				hot
			},
			{
				kind: 'talk-answer',
				phase: 0,
				secondsIntoPhase: 500,
				talk: 'comfortable',
				effort: 5,
				speedKmh: 6.4,
				afterPassage: true,
				pulse: { bpm: 128, source: 'chest-strap' },
				...said
			},
			{ kind: 'phase-done', phase: 0, activeSeconds: 600, how: 'whole' },
			{ kind: 'ended', how: 'finished' }
		];
		const entries = contents.map((content, seq) => {
			return { id: randomUUID(), outingRunId, at: at + seq, seq, elapsedMs: seq, ...content };
		});
		const told = { now: NOW, timeZone: ZONE };
		await pastOutings.append(here.database, here.vault, runnerId, entries, told);
		return outingRunId;
	}

	it('is nothing yet without an outing, and that too few answers are there', async () => {
		expect(await of(await runner())).toEqual({
			next: null,
			ceiling: { kind: 'too-few', answers: 0, needed: 5 }
		});
	});

	it('is a notch up after an easy outing, and a pulse after five answers', async () => {
		const mine = await runner();
		let newest = '';
		for (const daysAgo of [9, 7, 5, 3, 1]) newest = await did(mine, { daysAgo });
		const said = await of(mine);
		expect(said?.next).toMatchObject({ advice: 'next-step', speedKmh: 6.4, outingId: newest });
		expect(said?.ceiling).toMatchObject({ kind: 'learned', answers: 5, heard: 'only-comfortable' });
	});

	it('is nothing at all while the gate is closed', async () => {
		const mine = await runner();
		await did(mine);
		expect(await of(mine)).not.toBeNull();
		await screened(here, mine, REFERRED);
		expect(await of(mine)).toBeNull();
		expect(await whatNext.of(here, null, NOW, today)).toBeNull();
	});

	it('is by talk, without a pulse, where pulse is off', async () => {
		const mine = await runner(PULSE_OFF);
		await did(mine, { talk: 'broke-off' });
		const said = await of(mine);
		expect(said?.next).toMatchObject({ advice: 'longer-recovery' });
		expect(said?.ceiling).toBeNull();
		expect(JSON.stringify(said)).not.toMatch(/bpm/i);
	});

	it('says nothing of a run while somebody settles in, and raises no walk', async () => {
		const mine = await runner(NEW_TO_IT);
		await did(mine, { daysAgo: 2 });
		expect((await of(mine))?.next).toBeNull();
		await did(mine, { kind: 'brisk-walk' });
		expect((await of(mine))?.next).toMatchObject({
			advice: 'same',
			main: 'brisk-walk',
			because: [{ kind: 'held', why: 'settling-in' }, expect.anything()]
		});
	});

	it('learns nothing from a hot outing, and raises nothing after one', async () => {
		const mine = await runner();
		await did(mine, { hot: true });
		expect(await of(mine)).toMatchObject({
			next: { advice: 'same', because: [{ kind: 'hot' }, expect.anything()] },
			ceiling: { kind: 'too-few', answers: 0 }
		});
	});

	it('is nothing where a line of them cannot be read', async () => {
		const mine = await runner();
		await did(mine);
		await here.database
			.updateTable('past_entry')
			.set({ sealed: 'not sealed by this house' })
			.where('runner_id', '=', mine)
			.execute();
		expect(await of(mine)).toEqual({ next: null, ceiling: null });
	});

	it('is of their own outings alone', async () => {
		const [mine, other] = [await runner(), await runner()];
		await did(other);
		expect((await of(mine))?.next).toBeNull();
	});
});
