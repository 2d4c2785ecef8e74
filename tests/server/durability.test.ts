import { spawn } from 'node:child_process';
import { createSecretKey } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { migrate } from '$lib/server/database/migrate.ts';
import { openDatabase } from '$lib/server/database/open.ts';
import * as drafts from '$lib/server/drafts.ts';
import { openVault } from '$lib/server/vault.ts';
import { makeUser } from './in-house.ts';

const KILLS = 12;

/*
 * A process that dies at any moment loses nothing that it acknowledged. A power cut cannot be
 * staged here: for that the file is written with synchronous FULL, which is tested beside it.
 */
describe('a server that is killed', () => {
	const place = { dataFolder: mkdtempSync(join(tmpdir(), 'breathmark-kill-')), databaseUrl: null };
	let runner: string;
	beforeAll(async () => {
		const database = await openDatabase(place);
		await migrate(database);
		runner = await makeUser(database);
		await database.destroy();
	});
	afterAll(() => rmSync(place.dataFolder, { recursive: true, force: true }));

	it(`has lost no answer that it acknowledged, ${KILLS} times over`, async () => {
		let acknowledged = 0;
		for (let kill = 0; kill < KILLS; kill += 1) {
			const last = await writeAndKill(place.dataFolder, runner, 5 + kill * 7);
			expect(last).toBeGreaterThan(acknowledged);
			acknowledged = last;
			const database = await openDatabase(place);
			const vault = await openVault(database, createSecretKey(Buffer.alloc(32, 3)));
			const draft = await drafts.load(database, vault, runner, 1);
			expect(draft?.revision).toBeGreaterThanOrEqual(acknowledged);
			const check = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(
				database
			);
			expect(check.rows[0]?.integrity_check).toBe('ok');
			acknowledged = draft?.revision ?? 0;
			await database.destroy();
		}
	});
});

/** The last revision that the process said was stored, before it was killed without warning. */
function writeAndKill(folder: string, runnerId: string, afterMs: number): Promise<number> {
	const script = join(import.meta.dirname, 'write-until-killed.ts');
	const child = spawn(process.execPath, [script, folder, runnerId]);
	return new Promise((resolve, reject) => {
		let said = '';
		let failed = '';
		child.stdout.on('data', (chunk: Buffer) => {
			// The clock runs from the first answer, so that each kill comes amid the writing.
			if (said === '') setTimeout(() => child.kill('SIGKILL'), afterMs);
			said += chunk.toString();
		});
		child.stderr.on('data', (chunk: Buffer) => (failed += chunk.toString()));
		child.on('close', () => {
			// A line that was cut short was not heard.
			const lines = said
				.slice(0, said.lastIndexOf('\n') + 1)
				.trim()
				.split('\n');
			const last = Number(lines.at(-1));
			if (last > 0) resolve(last);
			else reject(new Error(`the writer said nothing: ${failed}`));
		});
	});
}
