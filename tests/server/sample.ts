import { concluded } from '$lib/screening/concluded.ts';
import { evaluate } from '$lib/screening/evaluate.ts';
import { currentRuleset, rulesetById } from '$lib/screening/rulesets/index.ts';
import type { Answers } from '$lib/screening/types.ts';
import * as drafts from '$lib/server/drafts.ts';
import * as screenings from '$lib/server/screenings.ts';
import { DAY, NOW, type InHouse } from './in-house.ts';

/** An active adult of 34 with nothing flagged. Invented. */
export const CLEAR: Answers = {
	'now.urgent': ['none'],
	'age.years': 34,
	'heart.told': 'no',
	'bp.told': 'no',
	'chest.pain': ['none'],
	'faint.year': 'no',
	'dizzy.balance': 'no',
	'signs.other': ['none'],
	'cond.list': ['none'],
	'meds.rate': 'no',
	'meds.long': 'no',
	'joint.sore': 'no',
	'limits.set': ['none'],
	'recent.event': ['none'],
	'preg.status': 'no',
	'ill.today': 'no',
	'ill.heart': 'no',
	'act.days': 4,
	'act.minutes': 40,
	'act.months': 'ge3',
	'act.hard': 'yes',
	'plan.effort': 'walkrun'
};

export const ZONE = 'Europe/Dublin';

export const finish: screenings.Finish = {
	decide(answers, rulesetId) {
		const ruleset = rulesetById(rulesetId);
		const evaluation = evaluate(ruleset, answers);
		if (evaluation.status === 'NOT_ELIGIBLE') return { kind: 'not-eligible' };
		const result = concluded(ruleset, answers);
		if (evaluation.status === 'INCOMPLETE' || result === null) return { kind: 'incomplete' };
		return {
			kind: 'result',
			result,
			pulseOff: !('pulse' in evaluation) || evaluation.pulse === 'off'
		};
	},
	timeZone: ZONE
};

/** Open answers as the store holds them, all at once: the pages write one after another. */
export async function answer(here: InHouse, runnerId: string, answers: Answers, now = NOW) {
	const place = { table: 'screening_draft', owner: runnerId, row: runnerId };
	await drafts.discard(here.database, runnerId);
	await here.database
		.insertInto('screening_draft')
		.values({
			runner_id: runnerId,
			sealed: here.vault.seal(place, answers),
			ruleset_id: currentRuleset.id,
			revision: 22,
			started_at: now,
			urgent_at: now,
			expires_at: now + 7 * DAY
		})
		.execute();
}

/** Answers the form and finishes it. */
export async function screened(here: InHouse, runnerId: string, changes: Answers = {}, now = NOW) {
	await answer(here, runnerId, { ...CLEAR, ...changes }, now);
	const done = await screenings.complete(here.database, here.vault, runnerId, finish, now);
	if (done.kind !== 'stored') throw new Error(`not stored: ${done.kind}`);
	return done.result;
}
