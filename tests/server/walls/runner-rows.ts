import { expect } from 'vitest';
import * as account from '$lib/server/account.ts';
import * as advice from '$lib/server/advice.ts';
import * as adviceConfirmations from '$lib/server/advice-confirmations.ts';
import * as attendance from '$lib/server/attendance.ts';
import * as audit from '$lib/server/audit.ts';
import * as bandDoubts from '$lib/server/band-doubts.ts';
import * as bandsSet from '$lib/server/bands-set.ts';
import * as comingOutings from '$lib/server/coming-outings.ts';
import * as consents from '$lib/server/consents.ts';
import * as contacts from '$lib/server/contacts.ts';
import * as deviceCodes from '$lib/server/device-codes.ts';
import * as drafts from '$lib/server/drafts.ts';
import * as effortBands from '$lib/server/effort-bands.ts';
import * as events from '$lib/server/events.ts';
import { forgetPulses } from '$lib/server/forget-pulses.ts';
import { gate } from '$lib/server/gate.ts';
import * as guesses from '$lib/server/guesses.ts';
import * as hotDays from '$lib/server/hot-days.ts';
import * as memberSteps from '$lib/server/member-steps.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as movedOutings from '$lib/server/moved-outings.ts';
import * as nextMorning from '$lib/server/next-morning.ts';
import { numberToCall } from '$lib/server/number-to-call.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as pains from '$lib/server/pains.ts';
import * as passkeys from '$lib/server/passkeys.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import * as pastPulses from '$lib/server/past-pulses.ts';
import * as profiles from '$lib/server/profiles.ts';
import * as readings from '$lib/server/readings.ts';
import * as results from '$lib/server/results.ts';
import * as screenings from '$lib/server/screenings.ts';
import { saidSince } from '$lib/server/said-since.ts';
import * as sessions from '$lib/server/sessions.ts';
import * as settings from '$lib/server/settings.ts';
import { standing } from '$lib/server/standing.ts';
import * as tabletReturns from '$lib/server/tablet-returns.ts';
import * as walks from '$lib/server/walks.ts';
import * as whatNext from '$lib/server/what-next.ts';
import * as wellAgain from '$lib/server/well-again.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { NOW } from '../in-house.ts';
import { answer, CLEAR, finish } from '../sample.ts';
import { unevenRuns } from '../sample-outing.ts';
import { begun, GUESS, WALKED_ON } from './kept.ts';
import type { Acting, World } from './people.ts';
import { NOTHING_OF_THEIRS, own, type Row } from './row.ts';

const ANOTHER_RUN = '0b6f3f0e-8a39-4f0e-9a52-2c5d7f2f6f11';
const NEW_PAIN = { level: 'new', where: null } as const;
const today = '2026-11-25';
const maySee = expect.objectContaining({ allowed: true });
const contact = { name: 'Bea', phone: '+353871234568', relation: null };
const SEEN = { talk: 'comfortable', pulseBpm: null, method: null } as const;
const words = {
	givenOn: today,
	role: 'doctor',
	scope: 'walk',
	covers: [],
	limitBpm: null
} as const;
const sign = { source: 'afterwards', signs: [], happenedAt: NOW, timeZone: 'UTC' } as const;
const renamed = { outing: { ...unevenRuns, name: 'Another' }, revision: 1 };
const one = { questionId: 'age.years', answer: 34, rulesetId: currentRuleset.id, revision: null };
const mine = ({ id }: Acting) => ({ runnerId: id });
const standsAgain = ({ db, eventId }: World) =>
	db.updateTable('health_event').set({ withdrawn_at: null }).where('id', '=', eventId).execute();
const hurts = ({ db, vault, ines }: World) =>
	pains.say(db, vault, ines.runnerId, NEW_PAIN, NOW, NOW);
const measured = ({ db, vault, ines, runId }: World) => {
	const summary = { ...begun(runId), kind: 'pulse-summary', phase: 0, source: 'counted' } as const;
	const { id, outingRunId, at, seq, elapsedMs, kind, phase, source } = summary;
	const pulse = { source, meanBpm: 118, highestBpm: 121, measuredSeconds: 60 };
	const entry = { id, outingRunId, at, seq, elapsedMs, kind, phase, ...pulse };
	return pastOutings.append(db, vault, ines.runnerId, [entry], { now: NOW, timeZone: 'UTC' });
};
const answered = ({ here, ines }: World) => answer(here, ines.runnerId, CLEAR);

/** What a runner does with what is theirs. Whoever else asks acts for themselves, and gets nothing. */
export const runnerRows: readonly Row[] = [
	// The account.
	own('account.exportAll', NOTHING_OF_THEIRS, (who, to) =>
		account.exportAll(to.db, to.vault, who.id, NOW)
	),
	own('account.deleteAll', NOTHING_OF_THEIRS, (who, to) => account.deleteAll(to.db, who.id), {
		among: ['nobody', 'runner', 'otherRunner']
	}),
	own('audit.record', NOTHING_OF_THEIRS, (who, to) =>
		audit.record(to.db, who.id, NOW, 'result.loosened')
	),
	own('audit.list', NOTHING_OF_THEIRS, (who, to) => audit.list(to.db, who.id)),
	own('readings.list', [], (who, to) => readings.list(to.db, who.id), {
		first: ({ db, acting, ines, at }) =>
			readings.record(
				db,
				{ coach: acting.owner.coach, group: { id: at.groupId, name: at.groupId, timeZone: 'UTC' } },
				[ines.runnerId],
				'result',
				NOW
			)
	}),
	own('sessions.list', [], (who, to) => sessions.list(to.db, who.id, NOW)),
	own('sessions.revoke', 'not-found', (who, to) =>
		sessions.revoke(to.db, who.id, to.sessionId, NOW)
	),
	own('sessions.revokeOthers', 0, (who, to) =>
		sessions.revokeOthers(to.db, who.id, 'another', NOW)
	),
	own('passkeys.list', [], (who, to) => passkeys.list(to.db, who.id)),
	own('passkeys.remove', 'not-found', (who, to) =>
		passkeys.remove(to.db, who.id, to.passkeyId, NOW)
	),
	own('device-codes.create', NOTHING_OF_THEIRS, (who, to) =>
		deviceCodes.create(to.db, Buffer.alloc(32), who.id, NOW)
	),
	own(
		'tablet-returns.create',
		NOTHING_OF_THEIRS,
		(who, to) =>
			tabletReturns.create(
				to.db,
				Buffer.alloc(32),
				{ runnerId: who.id, groupId: to.at.groupId },
				NOW
			),
		{ gets: expect.any(String) }
	),
	own(
		'tablet-returns.ofSession',
		null,
		(who, to) => tabletReturns.ofSession(to.db, who.signed.sessionId),
		{
			first: ({ db, sessionId, at }) => tabletReturns.mark(db, sessionId, at.groupId, NOW)
		}
	),
	own('settings.load', settings.UNSET, (who, to) => settings.load(to.db, who.id)),
	own('settings.save', NOTHING_OF_THEIRS, (who, to) =>
		settings.save(to.db, who.id, { units: 'mph' })
	),

	// Consent, answers and results.
	own('consents.give', NOTHING_OF_THEIRS, (who, to) => consents.give(to.db, who.id, NOW), {
		gets: undefined
	}),
	own('consents.withdraw', NOTHING_OF_THEIRS, (who, to) => consents.withdraw(to.db, who.id, NOW)),
	own('consents.given', NOTHING_OF_THEIRS, (who, to) => consents.given(to.db, who.id), {
		gets: true
	}),
	own('consents.need', NOTHING_OF_THEIRS, (who, to) => consents.need(to.db, who.id), {
		gets: undefined
	}),
	own('consents.list', NOTHING_OF_THEIRS, (who, to) => consents.list(to.db, who.id), {
		gets: [expect.objectContaining({ kind: 'answers' })]
	}),
	own('drafts.load', null, (who, to) => drafts.load(to.db, to.vault, who.id, NOW), {
		first: answered,
		gets: expect.objectContaining({ answers: CLEAR })
	}),
	own('drafts.save', NOTHING_OF_THEIRS, (who, to) =>
		drafts.save(to.db, to.vault, who.id, one, NOW)
	),
	own('drafts.discard', undefined, (who, to) => drafts.discard(to.db, who.id), {
		first: answered
	}),
	own('drafts.take', false, (who, to) => drafts.take(to.db, who.id, 22), { first: answered }),
	own(
		'screenings.complete',
		NOTHING_OF_THEIRS,
		(who, to) => screenings.complete(to.db, to.vault, who.id, finish, NOW),
		{ first: answered }
	),
	own('results.newest', NOTHING_OF_THEIRS, (who, to) => results.newest(to.db, to.vault, who.id), {
		gets: expect.objectContaining({ status: 'CLEARED_ALL' })
	}),
	own(
		'said-since.saidSince',
		NOTHING_OF_THEIRS,
		(who, to) => saidSince(to.db, to.vault, who.id, 0),
		{ gets: expect.any(Set) }
	),
	own('results.list', NOTHING_OF_THEIRS, (who, to) => results.list(to.db, to.vault, who.id), {
		gets: [expect.objectContaining({ status: 'CLEARED_ALL' })]
	}),
	own('results.invalidate', NOTHING_OF_THEIRS, (who, to) => results.invalidate(to.db, who.id, NOW)),
	own('results.answeredAgain', NOTHING_OF_THEIRS, (who, to) =>
		results.answeredAgain(to.db, who.id, NOW, NOW)
	),
	own('results.changedAt', null, (who, to) => results.changedAt(to.db, who.id), {
		first: ({ db, ines }) => results.invalidate(db, ines.runnerId, NOW),
		gets: NOW
	}),
	own('gate.gate', NOTHING_OF_THEIRS, (who, to) => gate(to.house, who.signed, NOW), {
		gets: maySee
	}),
	own('standing.standing', NOTHING_OF_THEIRS, (who, to) => standing(to.db, to.vault, who.id, NOW), {
		gets: maySee
	}),
	own('well-again.record', NOTHING_OF_THEIRS, (who, to) =>
		wellAgain.record(to.db, who.id, today, NOW)
	),
	own('well-again.latest', null, (who, to) => wellAgain.latest(to.db, who.id)),
	own('well-again.list', [], (who, to) => wellAgain.list(to.db, who.id)),

	// Signs and advice.
	own('events.record', NOTHING_OF_THEIRS, (who, to) =>
		events.record(to.db, to.vault, who.id, sign, NOW)
	),
	own(
		'events.withdraw',
		'not-found',
		(who, to) => events.withdraw(to.db, who.id, to.eventId, NOW),
		{ first: standsAgain }
	),
	own('events.list', [], (who, to) => events.list(to.db, to.vault, who.id)),
	own('advice.record', NOTHING_OF_THEIRS, (who, to) =>
		advice.record(to.db, to.vault, who.id, words, NOW)
	),
	own('advice.remove', 'not-found', (who, to) => advice.remove(to.db, who.id, to.adviceId, NOW)),
	own('advice.list', [], (who, to) => advice.list(to.db, to.vault, who.id)),
	own('memberships.coachesOf', NOTHING_OF_THEIRS, (who, to) =>
		memberships.coachesOf(to.db, who.id)
	),
	own('advice-confirmations.ofRunner', [], (who, to) =>
		adviceConfirmations.ofRunner(to.db, who.id)
	),

	// Pulses, bands, walks and outings.
	own('profiles.load', NOTHING_OF_THEIRS, (who, to) => profiles.load(to.db, to.vault, who.id), {
		gets: expect.objectContaining({ mornings: [expect.objectContaining({ bpm: 68 })] })
	}),
	own('profiles.save', NOTHING_OF_THEIRS, (who, to) =>
		profiles.save(to.db, to.vault, who.id, profiles.EMPTY, NOW)
	),
	own('profiles.change', NOTHING_OF_THEIRS, (who, to) =>
		profiles.change(to.db, to.vault, who.id, () => profiles.EMPTY, NOW)
	),
	own('profiles.forgetPulses', NOTHING_OF_THEIRS, (who, to) =>
		profiles.forgetPulses(to.db, to.vault, who.id, NOW)
	),
	own('effort-bands.of', NOTHING_OF_THEIRS, (who, to) =>
		effortBands.of(to.house, who.signed, NOW, today)
	),
	own('bands-set.forRunner', [], (who, to) => bandsSet.forRunner(to.db, who.id)),
	own('forget-pulses.forgetPulses', NOTHING_OF_THEIRS, (who, to) =>
		forgetPulses(to.db, to.vault, who.id, NOW)
	),
	own('guesses.make', NOTHING_OF_THEIRS, (who, to) =>
		guesses.make(to.db, to.vault, who.id, GUESS, NOW)
	),
	own('guesses.look', 'none-open', (who, to) => guesses.look(to.db, to.vault, who.id, SEEN, NOW)),
	own('guesses.open', null, (who, to) => guesses.open(to.db, to.vault, who.id, NOW)),
	own('guesses.list', [], (who, to) => guesses.list(to.db, to.vault, who.id)),
	own('guesses.discardOpen', undefined, (who, to) => guesses.discardOpen(to.db, who.id)),
	own('guesses.remove', 'not-found', (who, to) => guesses.remove(to.db, who.id, to.guessId)),
	own('guesses.removeAll', undefined, (who, to) => guesses.removeAll(to.db, who.id)),
	own('guesses.forgetPulses', false, (who, to) => guesses.forgetPulses(to.db, to.vault, who.id)),
	own('next-morning.asked', null, (who, to) =>
		nextMorning.asked(to.db, to.vault, who.id, '2026-11-26')
	),
	own(
		'next-morning.answered',
		[],
		(who, to) => nextMorning.answered(to.db, to.vault, who.id, '2026-11-26'),
		{
			first: ({ db, vault, ines, runId }) =>
				nextMorning.say(db, vault, ines.runnerId, runId, NEW_PAIN, { now: NOW, timeZone: 'UTC' })
		}
	),
	own('next-morning.say', 'not-found', (who, to) =>
		nextMorning.say(to.db, to.vault, who.id, to.runId, NEW_PAIN, { now: NOW, timeZone: 'UTC' })
	),
	own('what-next.of', null, (who, to) => whatNext.of(to.house, who.signed, NOW, today), {
		but: { otherRunner: NOTHING_OF_THEIRS }
	}),
	own('past-entries.append', NOTHING_OF_THEIRS, (who, to) =>
		pastOutings.append(to.db, to.vault, who.id, [begun(ANOTHER_RUN)], { now: NOW, timeZone: 'UTC' })
	),
	own('past-outings.list', [], (who, to) => pastOutings.list(to.db, to.vault, who.id)),
	own('past-outings.newest', [], (who, to) => pastOutings.newest(to.db, to.vault, who.id, 5)),
	own('past-outings.days', [], (who, to) => pastOutings.days(to.db, who.id)),
	own('past-outings.of', null, (who, to) => pastOutings.of(to.db, to.vault, who.id, to.runId)),
	own('past-outings.entriesOf', [], (who, to) =>
		pastOutings.entriesOf(to.db, to.vault, who.id, [to.runId])
	),
	own('past-outings.remove', 'not-found', (who, to) =>
		pastOutings.remove(to.db, to.vault, who.id, to.runId, NOW)
	),
	own(
		'past-pulses.forgetPulses',
		false,
		(who, to) => pastPulses.forgetPulses(to.db, to.vault, who.id),
		{ first: measured }
	),
	own('pains.say', NOTHING_OF_THEIRS, (who, to) =>
		pains.say(to.db, to.vault, who.id, NEW_PAIN, NOW, NOW)
	),
	own('pains.gone', undefined, (who, to) => pains.gone(to.db, who.id, NOW), { first: hurts }),
	own('pains.stands', false, (who, to) => pains.stands(to.db, who.id), {
		first: hurts,
		gets: true
	}),
	own('pains.last', null, (who, to) => pains.last(to.db, to.vault, who.id), {
		first: hurts,
		gets: expect.objectContaining(NEW_PAIN)
	}),
	own('band-doubts.say', NOTHING_OF_THEIRS, (who, to) =>
		bandDoubts.say(to.db, who.id, 'steady-run', 'too-easy', NOW)
	),
	own(
		'band-doubts.hasListener',
		NOTHING_OF_THEIRS,
		(who, to) => bandDoubts.hasListener(to.db, who.id),
		{ gets: true }
	),
	own('band-doubts.ofRunner', [], (who, to) => bandDoubts.ofRunner(to.db, who.id)),
	own('walks.record', NOTHING_OF_THEIRS, (who, to) => walks.record(to.db, who.id, today, NOW)),
	own('walks.remove', NOTHING_OF_THEIRS, (who, to) => walks.remove(to.db, who.id, WALKED_ON)),
	own(
		'walks.removeOfOuting',
		undefined,
		(who, to) => walks.removeOfOuting(to.db, who.id, to.runId),
		{
			first: ({ db, ines, runId }) => walks.record(db, ines.runnerId, '2026-10-14', NOW, runId)
		}
	),
	own('walks.list', [], (who, to) => walks.list(to.db, who.id)),
	own(
		'number-to-call.numberToCall',
		null,
		(who, to) => numberToCall(to.house, who.signed, { chosenNumber: null }),
		{ gets: '112', but: { otherRunner: '112' } }
	),
	own(
		'coming-outings.waitingForNumber',
		[],
		(who, to) => comingOutings.waitingForNumber(to.db, who.id, today, '2026-12-31'),
		{
			first: async ({ db, at }) =>
				void (await db
					.updateTable('running_group')
					.set({ emergency_number: null })
					.where('id', '=', at.groupId)
					.execute()),
			gets: [expect.stringContaining('Lantern Street')]
		}
	),
	own('coming-outings.forRunner', [], (who, to) =>
		comingOutings.forRunner(to.house, who.signed, today, '2026-12-31', { now: NOW, today })
	),
	own('hot-days.ofRunner', [], (who, to) => hotDays.ofRunner(to.db, who.id)),
	own(
		'moved-outings.forRunner',
		[],
		(who, to) => movedOutings.forRunner(to.db, who.id, today, '2026-12-31'),
		{
			first: ({ db, at }) =>
				db
					.updateTable('planned_outing')
					.set({ state: 'missed', on_date: '2026-11-24' })
					.where('group_id', '=', at.groupId)
					.where('number', '=', 1)
					.execute()
		}
	),
	own('outing-plans.list: own', [], (who, to) => outingPlans.list(to.db, mine(who))),
	own('outing-plans.find: own', null, (who, to) =>
		outingPlans.find(to.db, mine(who), to.ownPlanId)
	),
	own('outing-plans.create: own', NOTHING_OF_THEIRS, (who, to) =>
		outingPlans.create(to.db, mine(who), unevenRuns, NOW)
	),
	own('outing-plans.save: own', { kind: 'not-found' }, (who, to) =>
		outingPlans.save(to.db, mine(who), to.ownPlanId, renamed, NOW)
	),
	own('outing-plans.remove: own', 'not-found', (who, to) =>
		outingPlans.remove(to.db, mine(who), to.ownPlanId, NOW)
	),
	own(
		'outing-plans.putBack: own',
		'not-found',
		(who, to) => outingPlans.putBack(to.db, mine(who), to.ownPlanId),
		{ first: ({ db, ines, ownPlanId }) => outingPlans.remove(db, ines, ownPlanId, NOW) }
	),
	own(
		'outing-plans.versions: own',
		[],
		(who, to) => outingPlans.versions(to.db, mine(who), to.ownPlanId),
		{ gets: [expect.objectContaining({ outing: unevenRuns })] }
	),
	own('member-steps.ofRunner', [], (who, to) => memberSteps.ofRunner(to.db, who.id)),
	own('member-steps.changesOfRunner', [], (who, to) => memberSteps.changesOfRunner(to.db, who.id)),

	// Groups, from the runner's side.
	own('memberships.list', NOTHING_OF_THEIRS, (who, to) => memberships.list(to.db, who.id)),
	own('memberships.leave', 'not-found', (who, to) =>
		memberships.leave(to.db, who.id, to.at.memberId, NOW)
	),
	own('memberships.share', 'not-found', (who, to) =>
		memberships.share(to.db, who.id, to.at.memberId, false, NOW)
	),
	own('attendance.ofRunner', [], (who, to) => attendance.ofRunner(to.db, who.id)),
	own('contacts.keep', NOTHING_OF_THEIRS, (who, to) =>
		contacts.keep(to.db, to.vault, who.id, contact, NOW)
	),
	own('contacts.remove', NOTHING_OF_THEIRS, (who, to) => contacts.remove(to.db, who.id, NOW)),
	own('contacts.own', null, (who, to) => contacts.own(to.db, to.vault, who.id))
];
