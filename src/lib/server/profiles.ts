import type { Kysely } from 'kysely';
import { z } from 'zod';
import { MORNINGS_KEPT, restingFromMornings } from '../physiology/resting.ts';
import * as audit from './audit.ts';
import { byRunner, type Of } from './by-runner.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import * as shapes from './shapes.ts';
import type { Place, Vault } from './vault.ts';

const morning = z.strictObject({
	bpm: z.number().min(30).max(110),
	on: shapes.localDate,
	/** Seconds counted by hand, or a chest strap. */
	method: z.union([z.literal(60), z.literal(30), z.literal(15), z.literal('strap')])
});

/** Ranges only keep nonsense out of the store; the forms hold the plausible ones. */
export const profileShape = z.strictObject({
	/** Resting pulses, oldest first. */
	mornings: z.array(morning).max(MORNINGS_KEPT),
	sex: z.enum(['woman', 'man']).nullable(),
	heightCentimetres: z.number().min(50).max(280).nullable(),
	weightKilograms: z.number().min(20).max(500).nullable(),
	activityLevel: z.int().min(0).max(7).nullable(),
	/** Highest pulse of a supervised test. */
	supervisedMaximumBpm: z.int().min(60).max(250).nullable(),
	/** Capacity measured in a supervised test, in millilitres of oxygen a kilogram a minute. */
	supervisedCapacity: z.number().min(5).max(100).nullable(),
	/** Set when two mornings lay outside 40 to 100: pulse is off until advice of that day or later. */
	restingAskFirstSince: shapes.localDate.nullable()
});

export type Profile = z.infer<typeof profileShape>;
export type Morning = z.infer<typeof morning>;

export const EMPTY: Profile = {
	mornings: [],
	sex: null,
	heightCentimetres: null,
	weightKilograms: null,
	activityLevel: null,
	supervisedMaximumBpm: null,
	supervisedCapacity: null,
	restingAskFirstSince: null
};

/**
 * One morning a date, oldest first, the newest seven. Once two of them ask for advice, the profile
 * says so until advice is recorded, even when calmer mornings follow.
 */
export function withMorning(profile: Profile, added: Morning): Profile {
	const others = profile.mornings.filter(({ on }) => on !== added.on);
	const mornings = [...others, added].sort((a, b) => (a.on < b.on ? -1 : 1)).slice(-MORNINGS_KEPT);
	const asksFirst = restingFromMornings(mornings.map(({ bpm }) => bpm)).kind === 'ask-first';
	const since = profile.restingAskFirstSince ?? (asksFirst ? added.on : null);
	return { ...profile, mornings, restingAskFirstSince: since };
}

/** @throws VaultClosed, Unreadable */
export async function load(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string
): Promise<Profile> {
	return (await loadMany(database, vault, [runnerId]))(runnerId);
}

/** The same for many runners: asked for one that cannot be read, it throws for that one alone. */
export async function loadMany(
	database: Kysely<Database>,
	vault: Vault,
	runnerIds: readonly string[]
): Promise<Of<Profile>> {
	const rows = await database
		.selectFrom('profile')
		.select(['runner_id', 'sealed'])
		.where('runner_id', 'in', runnerIds)
		.execute();
	const of = byRunner(rows);
	return (runnerId) => {
		const row = of(runnerId)[0];
		return row ? vault.unseal(placeOf(runnerId), row.sealed, profileShape) : EMPTY;
	};
}

/** @throws ConsentMissing, VaultClosed */
export async function save(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	profile: Profile,
	now: number
): Promise<void> {
	await consents.need(database, runnerId);
	const sealed = vault.seal(placeOf(runnerId), profileShape.parse(profile));
	await database
		.insertInto('profile')
		.values({ runner_id: runnerId, sealed, updated_at: now })
		.onConflict((conflict) => conflict.column('runner_id').doUpdateSet({ sealed, updated_at: now }))
		.execute();
}

/**
 * Deletes every stored pulse, for a result that turns pulse off. That two mornings asked for advice
 * is kept: forgetting it would loosen.
 */
export async function forgetPulses(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	now: number
): Promise<void> {
	const profile = await load(database, vault, runnerId);
	if (profile.mornings.length === 0 && profile.supervisedMaximumBpm === null) return;
	await save(
		database,
		vault,
		runnerId,
		{ ...profile, mornings: [], supervisedMaximumBpm: null },
		now
	);
	await audit.record(database, runnerId, now, 'pulses.forgotten');
}

function placeOf(runnerId: string): Place {
	return { table: 'profile', owner: runnerId, row: runnerId };
}
