import { expect } from 'vitest';
import * as adviceConfirmations from '$lib/server/advice-confirmations.ts';
import * as attendance from '$lib/server/attendance.ts';
import * as bandDoubts from '$lib/server/band-doubts.ts';
import * as bandSettings from '$lib/server/band-settings.ts';
import * as coachInvitations from '$lib/server/coach-invitations.ts';
import * as contacts from '$lib/server/contacts.ts';
import { decide } from '$lib/server/decided-days.ts';
import * as groupCoaches from '$lib/server/group-coaches.ts';
import * as groupExport from '$lib/server/group-export.ts';
import * as groupDays from '$lib/server/group-days.ts';
import * as groupInvitations from '$lib/server/group-invitations.ts';
import * as groupOutings from '$lib/server/group-outings.ts';
import * as groups from '$lib/server/groups.ts';
import * as hotDays from '$lib/server/hot-days.ts';
import * as memberBands from '$lib/server/member-bands.ts';
import { placeOf } from '$lib/server/member-place.ts';
import * as memberSteps from '$lib/server/member-steps.ts';
import * as nextOutings from '$lib/server/next-outings.ts';
import * as members from '$lib/server/members.ts';
import * as nameImport from '$lib/server/name-import.ts';
import * as outingPlans from '$lib/server/outing-plans.ts';
import * as plannedOutings from '$lib/server/planned-outings.ts';
import * as programmes from '$lib/server/programmes.ts';
import * as roster from '$lib/server/roster.ts';
import { setMemberBand } from '$lib/server/set-member-band.ts';
import * as sharedTablet from '$lib/server/shared-tablet.ts';
import { lanternStreet } from '../coach.ts';
import { DAY, NOW } from '../in-house.ts';
import { plainWishes, unevenRuns } from '../sample-outing.ts';
import { HOT_ON, WALKED_ON } from './kept.ts';
import type { Acting, World } from './people.ts';
import { decides, onlyFor, leads, NOTHING_OF_THEIRS, type Row } from './row.ts';

const renamed = { ...unevenRuns, name: 'Another' };
const words = { inputs: plainWishes, startsOn: '2026-12-03', weekdays: [4], holidays: [] };
const planned = [{ number: 1, week: 1, onDate: '2026-12-10', outing: unevenRuns }];
const setting = { lowFraction: 0.4, highFraction: 0.5, effortLow: 4, effortHigh: 5 };
const band = { phase: 'warm-up-walk', setting, runnerNote: null, innerNote: null } as const;
const run = { ...band, phase: 'steady-run' } as const;

const reader = ({ coach }: Acting, { at }: World) => ({
	coach,
	group: { id: at.groupId, name: 'x', timeZone: 'UTC' }
});
const holder = ({ coach }: Acting, { at }: World) => ({ coach, groupId: at.groupId });
const noCookies = { set: () => undefined } as never;

/** What the coaches of a group may do: reading and leading for each of them, deciding for owners. */
export const groupRows: readonly Row[] = [
	// The group itself.
	leads('groups.ofCoach', null, (who, to) => groups.ofCoach(to.db, who.id, to.at.groupId)),
	decides('groups.change', 'not-found', (who, to) =>
		groups.change(to.db, who.id, to.at.groupId, lanternStreet)
	),
	decides('groups.remove', 'not-found', (who, to) =>
		groups.remove(to.db, who.id, to.at.groupId, NOW)
	),
	decides('group-export.of', null, (who, to) =>
		groupExport.of(to.db, to.vault, { coachId: who.id, name: '' }, to.at.groupId)
	),
	leads(
		'shared-tablet.turnOn',
		'not-found',
		(who, to) => sharedTablet.turnOn(to.here, noCookies, who.coach, to.at.groupId, NOW, true),
		{ gets: 'on' }
	),

	// Its coaches.
	leads('group-coaches.list', [], (who, to) => groupCoaches.list(to.db, who.id, to.at.groupId)),
	decides('group-coaches.setRole', 'not-found', (who, to) =>
		groupCoaches.setRole(to.db, who.id, to.at.groupId, to.acting.helper.id, 'owner')
	),
	decides('group-coaches.dismiss', 'not-found', (who, to) =>
		groupCoaches.dismiss(to.db, who.id, to.at.groupId, to.acting.helper.id)
	),
	onlyFor(
		'group-coaches.leave',
		['helper'],
		'not-found',
		(who, to) => groupCoaches.leave(to.db, who.id, to.at.groupId),
		{ but: { owner: 'last-owner' } }
	),
	decides('coach-invitations.create: into a group', null, (who, to) =>
		coachInvitations.create(to.db, who.id, to.at.groupId, NOW)
	),
	decides('coach-invitations.list: into a group', [], (who, to) =>
		coachInvitations.list(to.db, who.id, to.at.groupId, NOW)
	),
	decides('coach-invitations.revoke: into a group', 'not-found', (who, to) =>
		coachInvitations.revoke(to.db, who.id, to.coachLinkId, NOW)
	),

	// Links for runners.
	decides('group-invitations.create', { kind: 'not-found' }, (who, to) =>
		groupInvitations.create(to.db, who.id, to.at.groupId, '2026-12-24', NOW)
	),
	leads('group-invitations.list', [], (who, to) =>
		groupInvitations.list(to.db, who.id, to.at.groupId, NOW)
	),
	decides('group-invitations.revoke', 'not-found', (who, to) =>
		groupInvitations.revoke(to.db, who.id, to.at.groupId, to.linkId, NOW)
	),

	// The list.
	leads('members.list', [], (who, to) => members.list(to.db, who.id, to.at.groupId)),
	leads('members.find', null, (who, to) =>
		members.find(to.db, who.id, to.at.groupId, to.at.memberId)
	),
	leads('members.counts', NOTHING_OF_THEIRS, (who, to) => members.counts(to.db, who.id)),
	leads('members.rename', 'not-found', (who, to) =>
		members.rename(to.db, who.id, to.at.groupId, to.at.memberId, 'Other')
	),
	decides('members.remove', 'not-found', (who, to) =>
		members.remove(to.db, who.id, to.at.groupId, to.at.memberId, NOW)
	),
	leads(
		'name-import.compare',
		{ fresh: ['Bea'], known: [] },
		(who, to) => nameImport.compare(to.db, who.id, to.at.groupId, ['Bea']),
		{ gets: { fresh: [], known: ['Bea'] } }
	),
	leads('name-import.addNames', { kind: 'not-found' }, (who, to) =>
		nameImport.addNames(to.db, who.id, to.at.groupId, ['Gwen'], NOW)
	),
	leads('attendance.mark', 'not-found', (who, to) =>
		attendance.mark(to.db, who.id, to.at.groupId, to.at.memberId, '2026-11-20', NOW)
	),
	leads('attendance.unmark', NOTHING_OF_THEIRS, (who, to) =>
		attendance.unmark(to.db, who.id, to.at.groupId, to.at.memberId, WALKED_ON)
	),
	leads('attendance.list', [], (who, to) => attendance.list(to.db, who.id, to.at.groupId)),
	leads('attendance.byMember', new Map(), (who, to) =>
		attendance.byMember(to.db, who.id, to.at.groupId)
	),
	leads('attendance.ofMember', [], (who, to) =>
		attendance.ofMember(to.db, who.id, to.at.groupId, to.at.memberId)
	),

	leads('group-days.lastByMember', new Map(), (who, to) =>
		groupDays.lastByMember(to.db, who.id, to.at.groupId)
	),
	leads('group-days.membersOn', [], async (who, to) => [
		...(await groupDays.membersOn(to.db, who.id, to.at.groupId, WALKED_ON))
	]),
	leads('group-days.ofMember', [], (who, to) =>
		groupDays.ofMember(to.db, who.id, to.at.groupId, to.at.memberId)
	),

	// What a runner shares: result, bands, advice, doubts, whom to call.
	leads('roster.of', [], (who, to) => roster.of(to.db, to.vault, reader(who, to), NOW)),
	leads('roster.find', null, (who, to) =>
		roster.find(to.db, to.vault, reader(who, to), to.at.memberId, NOW)
	),
	leads('contacts.forCoach', null, (who, to) =>
		contacts.forCoach(to.db, to.vault, reader(who, to), to.at.memberId, NOW)
	),
	leads('member-bands.list', null, (who, to) =>
		memberBands.list(to.here, who.coach, to.at.groupId, NOW)
	),
	leads('member-bands.find', null, (who, to) =>
		memberBands.find(to.here, who.coach, to.at.groupId, to.at.memberId, NOW)
	),
	leads('set-member-band.setMemberBand', 'not-found', (who, to) =>
		setMemberBand(to.here, who.coach, to.at.groupId, to.at.memberId, band, NOW)
	),
	leads('band-settings.set: of a member', 'not-found', (who, to) =>
		bandSettings.set(to.db, who.coach, to.at, run, NOW)
	),
	leads('band-settings.set: of the group', 'not-found', (who, to) =>
		bandSettings.set(to.db, who.coach, { ...to.at, memberId: null }, run, NOW)
	),
	leads('band-settings.back', 'not-found', (who, to) =>
		bandSettings.back(to.db, who.coach, to.at, 'steady-run', NOW)
	),
	leads('band-settings.history', null, (who, to) => bandSettings.history(to.db, who.id, to.at)),
	leads('band-doubts.list', [], (who, to) => bandDoubts.list(to.db, who.id, to.at.groupId)),
	leads('band-doubts.markSeen', 'not-found', (who, to) =>
		bandDoubts.markSeen(to.db, who.id, to.at.groupId, to.doubtId, NOW)
	),
	leads('advice-confirmations.list', null, (who, to) =>
		adviceConfirmations.list(to.db, to.vault, who.id, to.at.groupId, to.at.memberId)
	),
	leads(
		'advice-confirmations.confirm',
		'not-found',
		(who, to) =>
			adviceConfirmations.confirm(
				to.db,
				who.coach,
				to.at.groupId,
				to.at.memberId,
				to.adviceId,
				NOW
			),
		{ gets: 'confirmed' }
	),
	leads('advice-confirmations.takeBack', 'not-found', (who, to) =>
		adviceConfirmations.takeBack(to.db, who.id, to.at.groupId, to.at.memberId, to.adviceId, NOW)
	),

	// Outings and the programme.
	leads('group-outings.start', { kind: 'not-found' }, async (who, to) => {
		await groupOutings.end(to.db, who.id, to.at.groupId, NOW);
		return groupOutings.start(to.db, who.id, to.at.groupId, NOW);
	}),
	leads('group-outings.end', 'not-found', (who, to) =>
		groupOutings.end(to.db, who.id, to.at.groupId, NOW)
	),
	leads(
		'group-outings.current',
		null,
		(who, to) => groupOutings.current(to.db, who.id, to.at.groupId, NOW),
		{ gets: expect.objectContaining({ onDate: '2026-11-25' }) }
	),
	leads('outing-plans.list: of a group', [], (who, to) => outingPlans.list(to.db, holder(who, to))),
	leads('outing-plans.find: of a group', null, (who, to) =>
		outingPlans.find(to.db, holder(who, to), to.planId)
	),
	leads('outing-plans.create: of a group', { kind: 'not-found' }, (who, to) =>
		outingPlans.create(to.db, holder(who, to), unevenRuns, NOW)
	),
	leads('outing-plans.save: of a group', { kind: 'not-found' }, (who, to) =>
		outingPlans.save(to.db, holder(who, to), to.planId, { outing: renamed, revision: 1 }, NOW)
	),
	leads('outing-plans.remove: of a group', 'not-found', (who, to) =>
		outingPlans.remove(to.db, holder(who, to), to.planId, NOW)
	),
	leads(
		'outing-plans.putBack: of a group',
		'not-found',
		(who, to) => outingPlans.putBack(to.db, holder(who, to), to.planId),
		{ first: (to) => outingPlans.remove(to.db, holder(to.acting.owner, to), to.planId, NOW) }
	),
	leads('outing-plans.versions: of a group', [], (who, to) =>
		outingPlans.versions(to.db, holder(who, to), to.planId)
	),
	leads('planned-outings.list', [], (who, to) => plannedOutings.list(to.db, who.id, to.at.groupId)),
	leads('planned-outings.find', null, (who, to) =>
		plannedOutings.find(to.db, who.id, to.at.groupId, to.plannedId)
	),
	leads('planned-outings.plan', { kind: 'not-found' }, (who, to) =>
		plannedOutings.plan(to.db, who.id, to.at.groupId, { onDate: '2026-12-06', outing: unevenRuns })
	),
	leads('planned-outings.unplan', 'not-found', (who, to) =>
		plannedOutings.unplan(to.db, who.id, to.at.groupId, to.aloneId)
	),
	leads('planned-outings.mark', 'not-found', (who, to) =>
		plannedOutings.mark(to.db, who.id, to.at.groupId, to.plannedId, 'missed', NOW)
	),
	leads('hot-days.list', [], (who, to) => hotDays.list(to.db, who.id, to.at.groupId, '2026-11-20')),
	leads('hot-days.mark', 'not-found', (who, to) =>
		hotDays.mark(to.db, who.id, to.at.groupId, '2026-11-27', NOW)
	),
	leads('hot-days.unmark', 'not-found', (who, to) =>
		hotDays.unmark(to.db, who.id, to.at.groupId, HOT_ON)
	),
	leads('decided-days.decide', 'not-found', (who, to) =>
		decide(
			to.db,
			to.vault,
			who.id,
			to.at.groupId,
			{ plannedId: to.plannedId, was: 'planned', state: 'missed' },
			() => [],
			NOW + 10 * DAY
		)
	),
	leads('programmes.current', null, (who, to) =>
		programmes.current(to.db, to.vault, who.id, to.at.groupId)
	),
	decides('programmes.make', { kind: 'not-found' }, (who, to) =>
		programmes.make(to.db, to.vault, who.coach, to.at.groupId, { words, planned }, NOW)
	),
	decides('programmes.change', { kind: 'not-found' }, (who, to) =>
		programmes.change(
			to.db,
			to.vault,
			who.coach,
			to.at.groupId,
			{ words, planned, revision: 1 },
			NOW
		)
	),
	decides('programmes.end', 'not-found', (who, to) =>
		programmes.end(to.db, who.id, to.at.groupId, NOW)
	),
	leads('member-steps.list', [], (who, to) => memberSteps.list(to.db, who.id, to.at.groupId)),
	leads('member-steps.history', [], (who, to) =>
		memberSteps.history(to.db, who.id, to.at.groupId, to.at.memberId)
	),
	leads('member-place.placeOf', null, (who, to) =>
		placeOf(to.db, who.id, to.at.groupId, to.at.memberId, '2026-12-03')
	),
	leads(
		'next-outings.ofMembers',
		null,
		async (who, to) =>
			(await nextOutings.ofMembers(to.db, who.id, to.at.groupId, '2026-12-03'))(to.at.memberId),
		{ gets: expect.objectContaining({ onDate: '2026-12-03', number: 1 }) }
	),
	leads('member-steps.set', 'not-found', (who, to) =>
		memberSteps.set(
			to.db,
			who.coach,
			to.at.groupId,
			{ memberId: to.at.memberId, outingsAhead: 1 },
			NOW
		)
	)
];
