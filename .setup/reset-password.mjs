// `npm run reset-password -- EMAIL`: prints a link with which a coach sets a new password, for a house
// without mail. Whoever can run it on the machine of the server could read everything there anyway.
// It opens the same database as the server, which may be running: SQLite lets one wait for the other.
import { forgotForm } from '../src/lib/forms/coach-account.ts';
import { openDatabase } from '../src/lib/server/database/open.ts';
import { migrate } from '../src/lib/server/database/migrate.ts';
import { readEnvironment } from '../src/lib/server/environment.ts';
import { coachOf, create } from '../src/lib/server/password-resets.ts';
import { resetPath } from '../src/lib/server/reset-path.ts';
import { readSettings } from './settings.mjs';

try {
	process.exitCode = await printLink(process.argv[2] ?? '');
} catch (error) {
	// What whoever runs this can mend is one line.
	console.error(error instanceof Error && error.name === 'StartRefused' ? error.message : error);
	process.exitCode = 1;
}

/** @param {string} typed an e-mail, as people type it */
async function printLink(typed) {
	const read = forgotForm.safeParse({ email: typed });
	if (!read.success) {
		console.error('Say whose password: npm run reset-password -- coach@example.org');
		return 1;
	}
	const settings = readSettings(process.env);
	const database = await openDatabase(readEnvironment(process.env));
	try {
		await migrate(database);
		const coachId = await coachOf(database, read.data.email);
		if (coachId === null) {
			console.error('No coach has this e-mail here. Is this the data folder of your server?');
			return 1;
		}
		const { token } = await create(database, coachId, Date.now());
		const address = settings.origin ?? `http://localhost:${settings.port}`;
		console.log(`Open this within one hour. It works once:\n${address}${resetPath(token)}`);
		if (!settings.origin) {
			console.log('Where the server has another address, put that in place of the beginning.');
		}
		return 0;
	} finally {
		await database.destroy();
	}
}
