import { expect } from 'vitest';
import * as coachInvitations from '$lib/server/coach-invitations.ts';
import * as coachLeaving from '$lib/server/coach-leaving.ts';
import * as coaches from '$lib/server/coaches.ts';
import * as groups from '$lib/server/groups.ts';
import * as hosting from '$lib/server/hosting.ts';
import * as houseSettings from '$lib/server/house-settings.ts';
import * as joining from '$lib/server/joining.ts';
import * as groupInvitations from '$lib/server/group-invitations.ts';
import { lanternStreet } from '../coach.ts';
import { NOW } from '../in-house.ts';
import { persons } from './people.ts';
import { everyCoach, NOTHING_OF_THEIRS, onlyFor, type Row } from './row.ts';

const ODILE = ['owner'] as const;

/** A coach's own account, what the host alone decides, and what whoever holds a link may do. */
export const houseRows: readonly Row[] = [
	onlyFor('coaches.find', ODILE, NOTHING_OF_THEIRS, (who, to) => coaches.find(to.db, who.id)),
	onlyFor('coaches.emailOf', ODILE, NOTHING_OF_THEIRS, (who, to) => coaches.emailOf(to.db, who.id)),
	onlyFor('coaches.change', ODILE, NOTHING_OF_THEIRS, (who, to) =>
		coaches.change(to.db, who.id, { name: 'Other', qualification: null })
	),
	onlyFor('coach-leaving.onlyOwnerOf', ODILE, NOTHING_OF_THEIRS, (who, to) =>
		coachLeaving.onlyOwnerOf(to.db, who.id)
	),
	onlyFor(
		'coach-leaving.leave',
		['helper'],
		NOTHING_OF_THEIRS,
		(who, to) => coachLeaving.leave(to.db, who.id),
		{ but: { owner: 'only-owner', otherCoach: 'only-owner', host: 'host' }, among: everyCoach }
	),
	onlyFor('groups.list', ['owner', 'helper'], NOTHING_OF_THEIRS, (who, to) =>
		groups.list(to.db, who.id)
	),
	onlyFor('groups.create', ODILE, NOTHING_OF_THEIRS, (who, to) =>
		groups.create(to.db, who.id, lanternStreet, NOW)
	),

	onlyFor('hosting.heirs', ['host'], [], (who, to) => hosting.heirs(to.db, who.id)),
	onlyFor('hosting.handOver', ['host'], 'not-found', (who, to) =>
		hosting.handOver(to.db, who.id, to.acting.owner.id)
	),
	onlyFor('hosting.isHost', ['host'], false, (who, to) => hosting.isHost(to.db, who.id), {
		gets: true
	}),
	onlyFor(
		'house-settings.setSignUp',
		['host'],
		false,
		(who, to) => houseSettings.setSignUp(to.db, who.id, 'open'),
		{ gets: true }
	),
	onlyFor(
		'coach-invitations.create: into the house',
		['host'],
		null,
		(who, to) => coachInvitations.create(to.db, who.id, null, NOW),
		{ gets: expect.objectContaining({ token: expect.any(String) }) }
	),
	onlyFor(
		'coach-invitations.list: into the house',
		['host'],
		[],
		(who, to) => coachInvitations.list(to.db, who.id, null, NOW),
		{
			first: async ({ db, acting }) =>
				void (await coachInvitations.create(db, acting.host.id, null, NOW)),
			gets: expect.arrayContaining([expect.objectContaining({ state: 'open' })])
		}
	),

	onlyFor('joining.look', persons, NOTHING_OF_THEIRS, (who, to) =>
		joining.look(to.db, to.linkToken, who.id, NOW)
	),
	onlyFor(
		'joining.join',
		['otherRunner'],
		NOTHING_OF_THEIRS,
		(who, to) => joining.join(to.db, to.linkToken, who.id, 'Mei-Lin', NOW),
		{ among: ['nobody', 'otherRunner'] }
	),
	onlyFor('group-invitations.open', persons, NOTHING_OF_THEIRS, (_, to) =>
		groupInvitations.open(to.db, to.linkToken, NOW)
	)
];
