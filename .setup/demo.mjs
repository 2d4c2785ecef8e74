// `npm run demo`: brings the made-up group into an empty house; `npm run demo -- remove` takes it away
// again. For whoever runs the server: from other computers no press does either. It opens the same
// database as the server, which may be running: SQLite lets one wait for the other.
import { isEmptyHouse, isDemoHere } from '../src/lib/server/demo/demo.ts';
import { loadDemo } from '../src/lib/server/demo/load.ts';
import { removeDemo } from '../src/lib/server/demo/remove.ts';
import { migrate } from '../src/lib/server/database/migrate.ts';
import { openDatabase } from '../src/lib/server/database/open.ts';
import { readEnvironment } from '../src/lib/server/environment.ts';
import { keyOf } from '../src/lib/server/house-key.ts';
import { openVault } from '../src/lib/server/vault.ts';
import { lanternStreet } from '../src/lib/words/en/demo.ts';
import { readSettings } from './settings.mjs';

const refused =
	'Real people are here already, so the made-up group stays out. Nothing was changed.';

try {
	process.exitCode = await run(process.argv[2]);
} catch (error) {
	// What whoever runs this can mend is one line.
	console.error(error instanceof Error && error.name === 'StartRefused' ? error.message : error);
	process.exitCode = 1;
}

/** @param {string | undefined} what */
async function run(what) {
	if (what !== undefined && what !== 'remove') {
		console.error('Say npm run demo, or npm run demo -- remove.');
		return 1;
	}
	const settings = readSettings(process.env);
	const environment = readEnvironment(process.env);
	const database = await openDatabase(environment);
	try {
		await migrate(database);
		return await (what === 'remove' ? remove(database) : load(database, environment, settings));
	} finally {
		await database.destroy();
	}
}

/**
 * @param {Awaited<ReturnType<typeof openDatabase>>} database
 * @param {ReturnType<typeof readEnvironment>} environment
 * @param {import('./settings.mjs').Settings} settings
 */
async function load(database, environment, { origin, port }) {
	const address = `${origin ?? `http://localhost:${port}`}/demo`;
	if (await isDemoHere(database)) {
		console.log(`The made-up group is here already: ${address}`);
		return 0;
	}
	// Asked first, so that in a house with people not even a key is made.
	if (!(await isEmptyHouse(database))) {
		console.error(refused);
		return 1;
	}
	const vault = await openVault(database, keyOf(environment));
	if (vault.state !== 'right') {
		console.error('This database was sealed with another key: put the right one back first.');
		return 1;
	}
	if ((await loadDemo({ database, vault }, lanternStreet, Date.now())) === 'not-empty') {
		console.error(refused);
		return 1;
	}
	console.log(`The made-up group is here. Start the server and open ${address}`);
	console.log('To take it away again: npm run demo -- remove');
	return 0;
}

/** @param {Awaited<ReturnType<typeof openDatabase>>} database */
async function remove(database) {
	if (!(await isDemoHere(database))) {
		console.error('The made-up group is not here. Nothing was changed.');
		return 1;
	}
	await removeDemo(database);
	console.log('The made-up group is gone, with everything that was done in it.');
	return 0;
}
