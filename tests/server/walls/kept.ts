import { randomUUID } from 'node:crypto';
import * as advice from '$lib/server/advice.ts';
import * as adviceConfirmations from '$lib/server/advice-confirmations.ts';
import * as attendance from '$lib/server/attendance.ts';
import * as bandDoubts from '$lib/server/band-doubts.ts';
import * as bandSettings from '$lib/server/band-settings.ts';
import * as coachInvitations from '$lib/server/coach-invitations.ts';
import type { Coach } from '$lib/server/coaches.ts';
import * as contacts from '$lib/server/contacts.ts';
import * as events from '$lib/server/events.ts';
import * as groupInvitations from '$lib/server/group-invitations.ts';
import * as groupOutings from '$lib/server/group-outings.ts';
import * as guesses from '$lib/server/guesses.ts';
import * as hotDays from '$lib/server/hot-days.ts';
import * as memberSteps from '$lib/server/member-steps.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import * as settings from '$lib/server/settings.ts';
import * as walks from '$lib/server/walks.ts';
import * as wellAgain from '$lib/server/well-again.ts';
import type { Entry } from '$lib/outing/entry.ts';
import { nameAlone, type InGroup } from '../coached-group.ts';
import { DAY, MINUTE, NOW, type InHouse } from '../in-house.ts';
import { plainWishes, unevenRuns } from '../sample-outing.ts';

/** Of everything that can be kept of a runner and of a group, one. */
export interface Kept {
	readonly adviceId: string;
	readonly eventId: string;
	readonly doubtId: string;
	readonly sessionId: string;
	readonly passkeyId: string;
	readonly linkId: string;
	/** What is in the link for runners. */
	readonly linkToken: string;
	readonly coachLinkId: string;
	readonly planId: string;
	readonly ownPlanId: string;
	/** An outing that was begun. */
	readonly runId: string;
	/** Of a guess that is open. */
	readonly guessId: string;
	readonly plannedId: string;
	/** An outing on a day by itself. */
	readonly aloneId: string;
	/** Ids, and words that nobody else has. */
	readonly marks: readonly string[];
}

interface People {
	readonly owner: Coach;
	readonly helper: Coach;
	readonly groupId: string;
	readonly ines: InGroup;
}

/** A day on which nothing else happened, so that it tells whose it is. */
export const WALKED_ON = '2026-10-13';
/** A day that a coach marked as hot. */
export const HOT_ON = '2027-03-11';
const NINE_ON_THAT_DAY = Date.UTC(2026, 9, 13, 9);

export const GUESS = { on: WALKED_ON, phase: 'brisk-walk', effort: 5, pulseBpm: 118 } as const;

/** What a prompter writes down first. */
export const begun = (outingRunId: string): Entry => ({
	id: randomUUID(),
	outingRunId,
	at: NOW - MINUTE,
	seq: 1,
	elapsedMs: 0,
	kind: 'started',
	outing: unevenRuns,
	plannedId: null,
	place: 'outdoors',
	hot: false
});

export async function keepAll(here: InHouse, people: People): Promise<Kept> {
	const ids = { ...(await keepOfRunner(here, people)), ...(await keepOfGroup(here, people)) };
	const own = { sessionId: await session(here, people), passkeyId: await passkey(here, people) };
	return {
		...ids,
		...own,
		marks: [...Object.values(ids), ...Object.values(own), WALKED_ON, HOT_ON]
	};
}

async function keepOfRunner(here: InHouse, { owner, groupId, ines }: People) {
	const { database, vault } = here;
	const { runnerId, memberId } = ines;
	const said = { givenOn: WALKED_ON, role: 'doctor', scope: 'all', limitBpm: null } as const;
	const given = await advice.record(database, vault, runnerId, { ...said, covers: [] }, NOW);
	await adviceConfirmations.confirm(database, owner, groupId, memberId, given.id, NOW);
	const sign = { source: 'questions', signs: [], happenedAt: NOW, timeZone: 'UTC' } as const;
	const event = await events.record(database, vault, runnerId, sign, NOW);
	await events.withdraw(database, runnerId, event.id, NOW);
	await contacts.keep(
		database,
		vault,
		runnerId,
		{ name: `Maeve ${runnerId}`, phone: '+353871234567', relation: null },
		NOW
	);
	await settings.save(database, runnerId, { name: `Called ${runnerId}` });
	await walks.record(database, runnerId, WALKED_ON, NOW);
	await wellAgain.record(database, runnerId, WALKED_ON, NOW);
	await bandDoubts.say(database, runnerId, 'steady-run', 'too-hard', NOW);
	const [doubt] = await bandDoubts.ofRunner(database, runnerId);
	const plan = await outingPlans.create(database, { runnerId }, unevenRuns, NOW);
	await guesses.make(database, vault, runnerId, GUESS, NOW);
	const guess = await guesses.open(database, vault, runnerId, NOW);
	const runId = randomUUID();
	const told = { now: NOW, timeZone: 'UTC' };
	await pastOutings.append(database, vault, runnerId, [begun(runId)], told);
	if (plan.kind !== 'created' || !doubt || !guess) throw new Error('not kept');
	return {
		adviceId: given.id,
		eventId: event.id,
		doubtId: doubt.id,
		ownPlanId: plan.id,
		runId,
		guessId: guess.id
	};
}

async function keepOfGroup(here: InHouse, { owner, groupId, ines }: People) {
	const { database } = here;
	const { coachId } = owner;
	const { memberId } = ines;
	await nameAlone(here, groupId, 'Bea');
	await attendance.mark(database, coachId, groupId, memberId, WALKED_ON, NOW);
	await groupOutings.start(database, coachId, groupId, NOW - MINUTE);
	await hotDays.mark(database, coachId, groupId, HOT_ON, NOW);
	const setting = { lowFraction: 0.45, highFraction: 0.55, effortLow: 4, effortHigh: 5 };
	const notes = { runnerNote: `For ${memberId}`, innerNote: null };
	await bandSettings.set(
		database,
		owner,
		{ groupId, memberId },
		{ phase: 'steady-run', setting, ...notes },
		NOW
	);
	const link = await groupInvitations.create(database, coachId, groupId, '2026-12-24', NOW);
	const coachLink = await coachInvitations.create(database, coachId, groupId, NOW);
	const plan = await outingPlans.create(database, { coach: owner, groupId }, unevenRuns, NOW);
	const planned = [{ number: 1, week: 1, onDate: '2026-12-03', outing: unevenRuns }];
	const words = { inputs: plainWishes, startsOn: '2026-12-03', weekdays: [4], holidays: [] };
	await programmes.make(database, here.vault, owner, groupId, { words, planned }, NOW);
	await memberSteps.set(database, owner, groupId, { memberId, outingsAhead: -1 }, NOW);
	const [first] = await plannedOutings.list(database, coachId, groupId);
	const withGroup = { ...begun(randomUUID()), at: NINE_ON_THAT_DAY, plannedId: first?.id ?? null };
	const told = { now: NOW, timeZone: 'UTC' };
	await pastOutings.append(database, here.vault, ines.runnerId, [withGroup as Entry], told);
	const alone = { onDate: '2026-12-05', outing: unevenRuns };
	const byItself = await plannedOutings.plan(database, coachId, groupId, alone);
	if (link.kind !== 'created' || !coachLink || plan.kind !== 'created') throw new Error('not kept');
	if (!first || byItself.kind !== 'planned') {
		throw new Error('not kept');
	}
	return {
		linkId: link.invitation.id,
		linkToken: link.invitation.token,
		coachLinkId: coachLink.id,
		planId: plan.id,
		plannedId: first.id,
		aloneId: byItself.id
	};
}

async function session({ database }: InHouse, { ines }: People): Promise<string> {
	const id = randomUUID();
	const at = new Date(NOW);
	await database
		.insertInto('session')
		.values({
			id,
			token: randomUUID(),
			userId: ines.runnerId,
			createdAt: at,
			updatedAt: at,
			expiresAt: new Date(NOW + 400 * DAY),
			userAgent: `Browser of ${ines.runnerId}`
		})
		.execute();
	return id;
}

async function passkey({ database }: InHouse, { ines }: People): Promise<string> {
	const id = randomUUID();
	const key = { publicKey: 'x', credentialID: id, counter: 0, deviceType: 'singleDevice' };
	await database
		.insertInto('passkey')
		.values({ ...key, id, userId: ines.runnerId, backedUp: false, createdAt: new Date(NOW) })
		.execute();
	return id;
}
