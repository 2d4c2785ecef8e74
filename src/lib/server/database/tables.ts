import type { ColumnType } from 'kysely';
import type { LocalDate } from '../../screening/types.ts';
import type { GroupTables } from './group-tables.ts';
import type { OutingTables } from './outing-tables.ts';
import type { PastTables } from './past-tables.ts';

/** Epoch milliseconds in a bigint column; both drivers read it back as a number. */
type Milliseconds = number;

/** A time that the sign-in library writes: ISO text on SQLite, timestamptz on PostgreSQL. */
type Instant = ColumnType<string | Date, Date, Date>;

/** JSON, encrypted and bound to table, owner and row; see vault.ts. */
type Sealed = string;

/** Tables whose shape the sign-in library dictates. Its names are kept as it writes them. */
interface SignInTables {
	user: {
		id: string;
		name: string;
		email: string;
		emailVerified: ColumnType<number | boolean>;
		image: string | null;
		createdAt: Instant;
		updatedAt: Instant;
		isAnonymous: ColumnType<number | boolean | null>;
	};
	session: {
		id: string;
		userId: string;
		token: string;
		expiresAt: Instant;
		createdAt: Instant;
		updatedAt: Instant;
		ipAddress: string | null;
		userAgent: string | null;
	};
	account: {
		id: string;
		userId: string;
		accountId: string;
		providerId: string;
		accessToken: string | null;
		refreshToken: string | null;
		idToken: string | null;
		accessTokenExpiresAt: Instant | null;
		refreshTokenExpiresAt: Instant | null;
		scope: string | null;
		password: string | null;
		createdAt: Instant;
		updatedAt: Instant;
	};
	verification: {
		id: string;
		identifier: string;
		value: string;
		expiresAt: Instant;
		createdAt: Instant;
		updatedAt: Instant;
	};
	passkey: {
		id: string;
		userId: string;
		name: string | null;
		publicKey: string;
		credentialID: string;
		counter: number;
		deviceType: string;
		backedUp: ColumnType<number | boolean>;
		transports: string | null;
		createdAt: Instant | null;
		aaguid: string | null;
	};
	rateLimit: { id: string; key: string; count: number; lastRequest: Milliseconds };
}

/** Our own tables. Every runner_id goes with the user's row. */
interface RunnerTables {
	consent: {
		id: string;
		runner_id: string;
		kind: 'answers';
		given_at: Milliseconds;
		withdrawn_at: Milliseconds | null;
	};
	screening_draft: {
		runner_id: string;
		sealed: Sealed;
		ruleset_id: string;
		revision: number;
		started_at: Milliseconds;
		urgent_at: Milliseconds;
		expires_at: Milliseconds;
	};
	screening_result: {
		id: string;
		runner_id: string;
		completed_at: Milliseconds;
		completed_on: LocalDate;
		time_zone: string;
		ruleset_id: string;
		ruleset_version: string;
		sealed: Sealed;
		invalidated_at: Milliseconds | null;
		answered_again_at: Milliseconds | null;
	};
	health_event: {
		id: string;
		runner_id: string;
		happened_at: Milliseconds;
		happened_on: LocalDate;
		sealed: Sealed;
		withdrawn_at: Milliseconds | null;
	};
	advice: { id: string; runner_id: string; sealed: Sealed; recorded_at: Milliseconds };
	well_again: { runner_id: string; on_date: LocalDate; recorded_at: Milliseconds };
	walk: {
		runner_id: string;
		on_date: LocalDate;
		recorded_at: Milliseconds;
		/** The outing that it comes from; null where the runner said so. */
		outing_run_id: string | null;
	};
	guess: {
		id: string;
		runner_id: string;
		guessed_at: Milliseconds;
		looked_at: Milliseconds | null;
		sealed: Sealed;
	};
	profile: { runner_id: string; sealed: Sealed; updated_at: Milliseconds };
	runner_settings: {
		runner_id: string;
		name: string | null;
		units: string | null;
		pace_units: string | null;
		time_zone: string | null;
		emergency_number: string | null;
		theme: string | null;
	};
	audit: { id: string; runner_id: string; at: Milliseconds; what: string; detail: string };
	device_code: {
		id: string;
		runner_id: string;
		code_hash: string;
		expires_at: Milliseconds;
		used_at: Milliseconds | null;
		attempts: number;
	};
}

interface HouseTables {
	vault_check: { id: string; key_id: string; sealed: Sealed };
	/** The people of the made-up group. */
	demo_person: { user_id: string; person: string };
}

export interface Database
	extends SignInTables, RunnerTables, HouseTables, GroupTables, OutingTables, PastTables {}
