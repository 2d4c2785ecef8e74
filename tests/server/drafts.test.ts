import { describe, expect, it } from 'vitest';
import * as consents from '$lib/server/consents.ts';
import { openDatabase } from '$lib/server/database/open.ts';
import * as drafts from '$lib/server/drafts.ts';
import { sweep } from '$lib/server/sweep.ts';
import { openVault, VaultClosed } from '$lib/server/vault.ts';
import { DATABASES, DAY, freshKey, inHouse, MINUTE, NOW } from './in-house.ts';

// Kept for seven days and no longer: our own rule, so that nobody's answers lie about.

const RULES = '2026-11';

describe.each(DATABASES)('open answers on %s', (type) => {
	const here = inHouse(type);
	const load = (runner: string, now = NOW) => drafts.load(here.database, here.vault, runner, now);
	const save = (
		runner: string,
		questionId: string,
		answer: drafts.OneAnswer['answer'],
		{ revision = null as number | null, rulesetId = RULES, now = NOW, aboutNow = false } = {}
	) =>
		drafts.save(
			here.database,
			here.vault,
			runner,
			{ questionId, answer, revision, rulesetId, aboutNow },
			now
		);

	it('are none before the first one', async () => {
		expect(await load(await here.runner())).toBeNull();
		expect(await load('nobody')).toBeNull();
	});

	it('are kept one by one, each kind of answer as it was given', async () => {
		const runner = await here.runner();
		await save(runner, 'age.years', 52);
		await save(runner, 'chest.pain', ['rest', 'exercise']);
		const saved = await save(runner, 'heart.told', 'not_sure', { now: NOW + MINUTE });
		expect(saved.kind).toBe('saved');
		expect(await load(runner)).toEqual({
			answers: { 'age.years': 52, 'chest.pain': ['rest', 'exercise'], 'heart.told': 'not_sure' },
			rulesetId: RULES,
			revision: 3,
			startedAt: NOW,
			urgentAt: NOW,
			expiresAt: NOW + 7 * DAY
		});
	});

	it('keep when the question about right now was answered, and not the others', async () => {
		const runner = await here.runner();
		await save(runner, 'now.urgent', ['none'], { aboutNow: true });
		await save(runner, 'age.years', 52, { now: NOW + DAY });
		expect((await load(runner, NOW + DAY))?.urgentAt).toBe(NOW);
		await save(runner, 'now.urgent', ['none'], { aboutNow: true, now: NOW + 2 * DAY });
		expect((await load(runner, NOW + 2 * DAY))?.urgentAt).toBe(NOW + 2 * DAY);
	});

	it('are changed and taken back', async () => {
		const runner = await here.runner();
		await save(runner, 'age.years', 52);
		await save(runner, 'age.years', 25);
		expect((await load(runner))?.answers).toEqual({ 'age.years': 25 });
		await save(runner, 'age.years', undefined);
		expect((await load(runner))?.answers).toEqual({});
	});

	it('are not stored without consent, nor after it was taken back', async () => {
		const runner = await here.stranger();
		await expect(save(runner, 'age.years', 52)).rejects.toThrow(consents.ConsentMissing);
		await consents.give(here.database, runner, NOW);
		await save(runner, 'age.years', 52);
		await consents.withdraw(here.database, runner, NOW);
		expect(await load(runner)).toBeNull();
		await expect(save(runner, 'age.years', 52)).rejects.toThrow(consents.ConsentMissing);
	});

	it('survive a restart', async () => {
		const runner = await here.runner();
		await save(runner, 'age.years', 52);
		const again = await openDatabase(here.place);
		const vault = await openVault(again, here.key);
		expect((await drafts.load(again, vault, runner, NOW))?.answers).toEqual({ 'age.years': 52 });
		await again.destroy();
	});

	it('die seven days after the first one, however often they were touched', async () => {
		const runner = await here.runner();
		await save(runner, 'age.years', 52);
		await save(runner, 'heart.told', 'no', { now: NOW + 6 * DAY });
		expect(await load(runner, NOW + 7 * DAY - 1)).not.toBeNull();
		expect(await load(runner, NOW + 7 * DAY)).toBeNull();
		// Deleted, not hidden: a clock set back does not bring them back.
		expect(await load(runner, NOW)).toBeNull();
	});

	it('of a runner who never came back are swept', async () => {
		const gone = await here.runner();
		const still = await here.runner();
		await save(gone, 'age.years', 52);
		await save(still, 'age.years', 52, { now: NOW + DAY });
		// Signed in on a phone, so the account itself stays.
		const times = { createdAt: new Date(NOW), updatedAt: new Date(NOW) };
		const session = { id: still, token: still, userId: still, ...times };
		await here.database
			.insertInto('session')
			.values({ ...session, expiresAt: new Date(NOW + 400 * DAY) })
			.execute();
		await sweep(here.database, NOW + 7 * DAY);
		const left = await here.database.selectFrom('screening_draft').select('runner_id').execute();
		const ids = left.map(({ runner_id }) => runner_id);
		expect(ids).toContain(still);
		expect(ids).not.toContain(gone);
	});

	it('refuse the answer of a tab that was overtaken', async () => {
		const runner = await here.runner();
		await save(runner, 'age.years', 52, { revision: 0 });
		await save(runner, 'heart.told', 'yes', { revision: 1 });
		const late = await save(runner, 'heart.told', 'no', { revision: 1 });
		expect(late.kind).toBe('stale');
		expect(late.draft?.answers).toEqual({ 'age.years': 52, 'heart.told': 'yes' });
		expect((await load(runner))?.answers['heart.told']).toBe('yes');
	});

	it('refuse an answer to a form that is finished', async () => {
		const runner = await here.runner();
		await save(runner, 'age.years', 52);
		await drafts.discard(here.database, runner);
		expect(await save(runner, 'heart.told', 'no', { revision: 1 })).toEqual({
			kind: 'stale',
			draft: null
		});
		expect(await load(runner)).toBeNull();
	});

	it('refuse an answer to another rule set', async () => {
		const runner = await here.runner();
		await save(runner, 'age.years', 52);
		expect((await save(runner, 'heart.told', 'no', { rulesetId: '2027-01' })).kind).toBe('stale');
		expect((await load(runner))?.answers).toEqual({ 'age.years': 52 });
	});

	it('lose none of three that come at once', async () => {
		const runner = await here.runner();
		const at_once = ['a.one', 'a.two', 'a.three'].map((id) => save(runner, id, 'yes'));
		expect((await Promise.all(at_once)).map(({ kind }) => kind)).toEqual([
			'saved',
			'saved',
			'saved'
		]);
		expect((await load(runner))?.answers).toEqual({
			'a.one': 'yes',
			'a.two': 'yes',
			'a.three': 'yes'
		});
	});

	it('are not stored when they are no answers', async () => {
		const runner = await here.runner();
		await expect(save(runner, '__proto__', 'yes')).rejects.toThrow();
		await expect(save(runner, 'age.years', 'x'.repeat(10_000))).rejects.toThrow();
		await expect(save(runner, 'age.years', Number.NaN)).rejects.toThrow();
		expect(await load(runner)).toBeNull();
	});

	it('that were moved to another runner are deleted, not shown', async () => {
		const [one, other] = [await here.runner(), await here.runner()];
		await save(one, 'age.years', 52);
		await save(other, 'age.years', 25);
		const { sealed } = await here.database
			.selectFrom('screening_draft')
			.select('sealed')
			.where('runner_id', '=', one)
			.executeTakeFirstOrThrow();
		await here.database
			.updateTable('screening_draft')
			.set({ sealed })
			.where('runner_id', '=', other)
			.execute();
		expect(await load(other)).toBeNull();
		expect((await load(one))?.answers).toEqual({ 'age.years': 52 });
	});

	it('stay shut and untouched with the wrong key', async () => {
		const runner = await here.runner();
		await save(runner, 'age.years', 52);
		const wrong = await openVault(here.database, freshKey());
		const one = { questionId: 'heart.told', answer: 'no', revision: null, rulesetId: RULES };
		await expect(drafts.load(here.database, wrong, runner, NOW)).rejects.toThrow(VaultClosed);
		await expect(drafts.save(here.database, wrong, runner, one, NOW)).rejects.toThrow(VaultClosed);
		expect((await load(runner))?.answers).toEqual({ 'age.years': 52 });
	});
});
