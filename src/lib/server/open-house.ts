import type { Kysely } from 'kysely';
import { openAuth, type Auth } from './auth.ts';
import { migrate } from './database/migrate.ts';
import { openDatabase } from './database/open.ts';
import type { Database } from './database/tables.ts';
import type { Environment } from './environment.ts';
import { openMail } from './mail.ts';
import { keyOf } from './house-key.ts';
import { deriveKey } from './keys.ts';
import { sealProgrammes } from './seal-programmes.ts';
import type { RequestEvent } from './sign-in.ts';
import { sweepDaily } from './sweep.ts';
import { openVault, type Vault } from './vault.ts';

/** Everything that a request may need, opened once. */
export interface House {
	readonly environment: Environment;
	readonly database: Kysely<Database>;
	readonly vault: Vault;
	readonly auth: Auth;
	close(): Promise<void>;
}

/**
 * Opens key, database, vault and sign-in, and begins to sweep. With the wrong key it opens all the
 * same: `vault.state` tells, and health data is neither read nor written.
 * @throws StartRefused with one line that says what to put right
 */
export async function openHouse(
	environment: Environment,
	requestEvent: RequestEvent
): Promise<House> {
	const key = keyOf(environment);
	const database = await openDatabase(environment);
	try {
		await migrate(database);
		const vault = await openVault(database, key);
		await sealProgrammes(database, vault);
		const mail = environment.mail && openMail({ ...environment.mail, report: console.error });
		const auth = openAuth({
			database,
			secret: deriveKey(key, 'sign-in').toString('base64url'),
			deviceCodeKey: deriveKey(key, 'device-code'),
			attemptKey: deriveKey(key, 'attempts'),
			mail,
			origin: environment.origin,
			port: environment.port,
			requestEvent,
			report: console.error
		});
		const stopSweeping = sweepDaily(database, Date.now);
		return {
			environment,
			database,
			vault,
			auth,
			async close() {
				await stopSweeping();
				await mail?.close();
				await database.destroy();
			}
		};
	} catch (error) {
		await database.destroy();
		throw error;
	}
}
