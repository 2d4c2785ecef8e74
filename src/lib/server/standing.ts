import type { Kysely } from 'kysely';
import { access, type Access } from '../screening/access.ts';
import { closed, type ClosedAccess } from '../screening/closed-access.ts';
import { localDate } from '../screening/calendar.ts';
import { currentRuleset } from '../screening/rulesets/index.ts';
import type { Advice, HealthEvent, LocalDate, ScreeningResult } from '../screening/types.ts';
import * as advice from './advice.ts';
import type { Of } from './by-runner.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import * as events from './events.ts';
import * as pains from './pains.ts';
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
	return (await standings(database, vault, [runnerId], now))(runnerId);
}

/**
 * The same for many runners, with as many queries as for one. A runner whose data cannot be read is
 * closed, and the others are not.
 */
export async function standings(
	database: Kysely<Database>,
	vault: Vault,
	runnerIds: readonly string[],
	now: number
): Promise<Of<Standing>> {
	if (vault.state === 'wrong-key') return () => ({ ...closed('NO_RESULT'), fault: 'vault' });
	if (runnerIds.length === 0) return () => closed('NO_RESULT');
	const kept = {
		newest: await screenings.newestOfMany(database, vault, runnerIds),
		settings: await settings.loadMany(database, runnerIds),
		profile: await profiles.loadMany(database, vault, runnerIds),
		consentGiven: await consents.givenByMany(database, runnerIds),
		events: await events.listOfMany(database, vault, runnerIds),
		advice: await advice.listOfMany(database, vault, runnerIds),
		wellAgainOn: await wellAgain.latestOfMany(database, runnerIds),
		changedAt: await screenings.changedAtOfMany(database, runnerIds),
		painStands: await pains.standsForMany(database, runnerIds)
	};
	return (runnerId) => closedIfShut(() => decide(kept, runnerId, now));
}

type KeptOf = {
	readonly newest: Of<ScreeningResult | null>;
	readonly settings: Of<settings.Settings>;
	readonly profile: Of<profiles.Profile>;
	readonly consentGiven: Of<boolean>;
	readonly events: Of<readonly HealthEvent[]>;
	readonly advice: Of<readonly Advice[]>;
	readonly wellAgainOn: Of<LocalDate | null>;
	readonly changedAt: Of<number | null>;
	readonly painStands: Of<boolean>;
};

function decide(kept: KeptOf, runnerId: string, now: number): Access {
	const result = kept.newest(runnerId);
	const timeZone = kept.settings(runnerId).timeZone ?? result?.timeZone ?? 'UTC';
	const changedAt = kept.changedAt(runnerId);
	return access({
		result,
		consentGiven: kept.consentGiven(runnerId),
		events: kept.events(runnerId),
		advice: kept.advice(runnerId),
		wellAgainOn: kept.wellAgainOn(runnerId),
		changedOn: changedAt === null ? null : localDate(changedAt, timeZone),
		painStands: kept.painStands(runnerId),
		restingAskFirstSince: kept.profile(runnerId).restingAskFirstSince,
		now,
		timeZone,
		currentRuleset
	});
}

function closedIfShut(decide: () => Access): Standing {
	try {
		return decide();
	} catch (error) {
		if (error instanceof VaultClosed) return { ...closed('NO_RESULT'), fault: 'vault' };
		if (error instanceof Unreadable) return { ...closed('NO_RESULT'), fault: 'unreadable' };
		throw error;
	}
}
