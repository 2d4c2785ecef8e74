import type { Kysely } from 'kysely';
import { z } from 'zod';
import { withinValid } from '../physiology/limits.ts';
import { MORNINGS_KEPT } from '../physiology/resting.ts';
import { addMonths } from '../screening/calendar.ts';
import { byRunner, type Of } from './by-runner.ts';
import * as consents from './consents.ts';
import type { Database } from './database/tables.ts';
import * as shapes from './shapes.ts';
import { EMPTIED, passOver, readOr } from './readable.ts';
import type { Place, Vault } from './vault.ts';

const morning = z.strictObject({
	bpm: z.number().min(30).max(110),
	on: shapes.localDate,
	/** Seconds counted by hand, or a chest strap. */
	method: z.union([z.literal(60), z.literal(30), z.literal(15), z.literal('strap')])
});

const checkWalk = z.strictObject({
	speedMetresPerMinute: z.number().min(10).max(200),
	grade: z.number().min(0).max(0.16),
	pulseBpm: z.number().min(25).max(230)
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
	/** The newest walk check: its day, and each walk with the pulse at its end. */
	walkCheck: z
		.strictObject({ on: shapes.localDate, walks: z.array(checkWalk).length(3) })
		.nullable()
		.default(null),
	/** The newest mile walk: its day, and what its equation asks beside the age of the result. */
	mileWalk: z
		.strictObject({
			on: shapes.localDate,
			weightKilograms: z.number().min(20).max(500),
			/** Null for whoever would rather not say. */
			sex: z.enum(['woman', 'man']).nullable(),
			minutes: z.number().min(5).max(60),
			pulseBpm: z.number().min(25).max(230)
		})
		.nullable()
		.default(null),
	/** Days whose pulse lay outside 40 to 100. They stay when the morning itself is taken away. */
	outsideOn: z.array(shapes.localDate).default([]),
	/** Set with the second of them: pulse is off until advice of that day or later. */
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
	walkCheck: null,
	mileWalk: null,
	outsideOn: [],
	restingAskFirstSince: null
};

/** For how long a day outside 40 to 100 is remembered. Our own choice, no source. */
const MONTHS_REMEMBERED = 3;

/**
 * One morning a date, oldest first, the newest seven. Two days outside 40 to 100 within three months
 * ask for advice, also when one was typed over or taken away, and when calmer mornings follow.
 */
export function withMorning(profile: Profile, added: Morning): Profile {
	const others = profile.mornings.filter(({ on }) => on !== added.on);
	const mornings = [...others, added].sort((a, b) => (a.on < b.on ? -1 : 1)).slice(-MORNINGS_KEPT);
	const recent = profile.outsideOn.filter((on) => on >= addMonths(added.on, -MONTHS_REMEMBERED));
	const isOutside = !withinValid('restingBpm', added.bpm);
	const outsideOn = [...new Set(isOutside ? [...recent, added.on] : recent)];
	const since = profile.restingAskFirstSince ?? (outsideOn.length >= 2 ? added.on : null);
	return { ...profile, mornings, outsideOn, restingAskFirstSince: since };
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
 * Reads, changes and writes the profile in one go, so that two forms sent at once lose nothing of
 * each other.
 * @throws ConsentMissing, VaultClosed, Unreadable
 */
export async function change(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	changed: (before: Profile) => Profile,
	now: number
): Promise<void> {
	await database.transaction().execute(async (step) => {
		// The runner's own row is the lock: PostgreSQL waits here, SQLite has one writer anyway.
		await step
			.updateTable('user')
			.set((of) => ({ name: of.ref('name') }))
			.where('id', '=', runnerId)
			.execute();
		await save(step, vault, runnerId, changed(await load(step, vault, runnerId)), now);
	});
}

/**
 * Deletes every pulse of the profile, and of one that cannot be read everything. That two mornings asked for advice is kept: forgetting it would
 * loosen.
 * @returns whether there were any
 */
export async function forgetPulses(
	database: Kysely<Database>,
	vault: Vault,
	runnerId: string,
	now: number
): Promise<boolean> {
	const profile = await loadOrNull(database, vault, runnerId);
	if (profile === null) {
		const row = database.updateTable('profile').set({ sealed: EMPTIED, updated_at: now });
		await row.where('runner_id', '=', runnerId).execute();
		return true;
	}
	const { mornings, supervisedMaximumBpm, walkCheck, mileWalk } = profile;
	const single = [supervisedMaximumBpm, walkCheck, mileWalk];
	if (mornings.length === 0 && single.every((pulses) => pulses === null)) return false;
	const without = { mornings: [], supervisedMaximumBpm: null, walkCheck: null, mileWalk: null };
	await save(database, vault, runnerId, { ...profile, ...without }, now);
	return true;
}

/** Null for one that cannot be read. */
async function loadOrNull(database: Kysely<Database>, vault: Vault, runnerId: string) {
	return readOr<Profile | null>(() => load(database, vault, runnerId), null, passOver);
}

function placeOf(runnerId: string): Place {
	return { table: 'profile', owner: runnerId, row: runnerId };
}
