import { doneTotals } from '$lib/outing/done-totals.ts';
import * as account from '$lib/server/account.ts';
import * as audit from '$lib/server/audit.ts';
import * as consents from '$lib/server/consents.ts';
import * as memberships from '$lib/server/memberships.ts';
import type { House } from '$lib/server/open-house.ts';
import * as passkeys from '$lib/server/passkeys.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import type { Missed } from '$lib/server/readable.ts';
import * as readings from '$lib/server/readings.ts';

/** What is held of a runner, as the page tells it: of what is sealed nothing, with the wrong key. */
export async function heldOf(house: House, runnerId: string, now: number) {
	const { database } = house;
	return {
		...(house.vault.state === 'right'
			? await inTheOpen(house, runnerId, now)
			: await shut(house, runnerId)),
		consents: await consents.list(database, runnerId),
		passkeys: await passkeys.list(database, runnerId),
		groups: await memberships.list(database, runnerId),
		readings: await readings.list(database, runnerId)
	};
}

async function inTheOpen({ database, vault }: House, runnerId: string, now: number) {
	const all = await account.exportAll(database, vault, runnerId, now);
	const { results, events, advice, pain, unreadable, history, emergencyContact: contact } = all;
	const outings = pastOutings.done(all.outings, all.outingEntries).map((outing) => ({
		id: outing.id,
		onDate: outing.onDate,
		seconds: doneTotals(outing).totalSeconds
	}));
	return { results, events, advice, outings, pain, contact, unreadable, history };
}

type Open = Awaited<ReturnType<typeof inTheOpen>>;

async function shut({ database }: House, runnerId: string): Promise<Open> {
	const unreadable: Missed[] = [];
	const history = await audit.list(database, runnerId, (missed) => unreadable.push(missed));
	const nothing = { results: [], events: [], advice: [], outings: [], pain: null, contact: null };
	return { ...nothing, unreadable, history };
}
