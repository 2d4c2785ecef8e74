import { writeSync } from 'node:fs';
import { createSecretKey } from 'node:crypto';
import * as consents from '../../src/lib/server/consents.ts';
import { openDatabase } from '../../src/lib/server/database/open.ts';
import { migrate } from '../../src/lib/server/database/migrate.ts';
import * as drafts from '../../src/lib/server/drafts.ts';
import { openVault } from '../../src/lib/server/vault.ts';

/** Writes answers one after another and says each revision once it is stored, until it is killed. */
const [dataFolder = '', runnerId = ''] = process.argv.slice(2);
const database = await openDatabase({ dataFolder, databaseUrl: null });
await migrate(database);
const vault = await openVault(database, createSecretKey(Buffer.alloc(32, 3)));
await consents.give(database, runnerId, 1);
for (let i = 0; ; i += 1) {
	const answer = { questionId: 'age.years', answer: i, rulesetId: 'r', revision: null };
	const saved = await drafts.save(database, vault, runnerId, answer, 1);
	// Straight to the pipe: what was said must not wait in this process when it dies.
	writeSync(1, `${saved.draft?.revision}\n`);
}
