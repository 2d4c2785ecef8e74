import type { Kysely } from 'kysely';
import { access, type Access } from '../screening/access.ts';
import { closed, type ClosedAccess } from '../screening/closed-access.ts';
import { localDate } from '../screening/calendar.ts';
import { currentRuleset } from '../screening/rulesets/index.ts';
import * as advice from './advice.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import * as events from './events.ts';
import * as profiles from './profiles.ts';
import * as screenings from './screenings.ts';
import * as settings from './settings.ts';
import { Unreadable, VaultClosed, type Vault } from './vault.ts';
import * as wellAgain from './well-again.ts';

/** Closed because of us, not because of an answer: the page says so instead of asking again. */
export interface FaultAccess extends ClosedAccess {
	readonly fault: 'vault' | 'unreadable';
}

export type Standing = Access | FaultAccess;

/**
 * What a runner may do at this moment, from everything that is stored. What cannot be read closes.
 * A database that does not answer throws, and nothing is shown either.
 */
export async function standing(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	now: number
): Promise<Standing> {
	if (vault.state === 'wrong-key') return { ...closed('NO_RESULT'), fault: 'vault' };
	try {
		const result = await screenings.newest(database, vault, runnerId);
		const { timeZone } = await settings.load(database, runnerId);
		const profile = await profiles.load(database, vault, runnerId);
		const zone = timeZone ?? result?.timeZone ?? 'UTC';
		const changedAt = await screenings.changedAt(database, runnerId);
		return access({
			result,
			consentGiven: await consents.given(database, runnerId),
			events: await events.list(database, vault, runnerId),
			advice: await advice.list(database, vault, runnerId),
			wellAgainOn: await wellAgain.latest(database, runnerId),
			changedOn: changedAt === null ? null : localDate(changedAt, zone),
			restingAskFirstSince: profile.restingAskFirstSince,
			now,
			timeZone: zone,
			currentRuleset
		});
	} catch (error) {
		if (error instanceof VaultClosed) return { ...closed('NO_RESULT'), fault: 'vault' };
		if (error instanceof Unreadable) return { ...closed('NO_RESULT'), fault: 'unreadable' };
		throw error;
	}
}
