import type { Kysely } from 'kysely';
import { databaseType } from '../dialect.ts';
import { index, key, ofUser, required, unique } from './columns.ts';

/** What the sign-in library dictates; a test compares this with what it asks for. */
export async function up(database: Kysely<unknown>): Promise<void> {
	const postgres = databaseType(database) === 'postgres';
	const instant = postgres ? 'timestamptz' : 'date';
	const flag = postgres ? 'boolean' : 'integer';
	const { schema } = database;
	await schema
		.createTable('user')
		.addColumn('id', 'text', key)
		.addColumn('name', 'text', required)
		.addColumn('email', 'text', unique)
		.addColumn('emailVerified', flag, required)
		.addColumn('image', 'text')
		.addColumn('createdAt', instant, required)
		.addColumn('updatedAt', instant, required)
		.addColumn('isAnonymous', flag)
		.execute();
	await schema
		.createTable('session')
		.addColumn('id', 'text', key)
		.addColumn('expiresAt', instant, required)
		.addColumn('token', 'text', unique)
		.addColumn('createdAt', instant, required)
		.addColumn('updatedAt', instant, required)
		.addColumn('ipAddress', 'text')
		.addColumn('userAgent', 'text')
		.addColumn('userId', 'text', ofUser)
		.execute();
	await schema
		.createTable('account')
		.addColumn('id', 'text', key)
		.addColumn('accountId', 'text', required)
		.addColumn('providerId', 'text', required)
		.addColumn('userId', 'text', ofUser)
		.addColumn('accessToken', 'text')
		.addColumn('refreshToken', 'text')
		.addColumn('idToken', 'text')
		.addColumn('accessTokenExpiresAt', instant)
		.addColumn('refreshTokenExpiresAt', instant)
		.addColumn('scope', 'text')
		.addColumn('password', 'text')
		.addColumn('createdAt', instant, required)
		.addColumn('updatedAt', instant, required)
		.execute();
	await schema
		.createTable('verification')
		.addColumn('id', 'text', key)
		.addColumn('identifier', 'text', required)
		.addColumn('value', 'text', required)
		.addColumn('expiresAt', instant, required)
		.addColumn('createdAt', instant, required)
		.addColumn('updatedAt', instant, required)
		.execute();
	await schema
		.createTable('passkey')
		.addColumn('id', 'text', key)
		.addColumn('name', 'text')
		.addColumn('publicKey', 'text', required)
		.addColumn('userId', 'text', ofUser)
		.addColumn('credentialID', 'text', required)
		.addColumn('counter', 'integer', required)
		.addColumn('deviceType', 'text', required)
		.addColumn('backedUp', flag, required)
		.addColumn('transports', 'text')
		.addColumn('createdAt', instant)
		.addColumn('aaguid', 'text')
		.execute();
	await schema
		.createTable('rateLimit')
		.addColumn('id', 'text', key)
		.addColumn('key', 'text', unique)
		.addColumn('count', 'integer', required)
		.addColumn('lastRequest', 'bigint', required)
		.execute();
	await index(database, 'session', 'userId');
	await index(database, 'account', 'userId');
	await index(database, 'verification', 'identifier');
	await index(database, 'passkey', 'userId');
	await index(database, 'passkey', 'credentialID');
}
