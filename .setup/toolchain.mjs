// Which Node the app runs on. Where the machine's own is too old, one is fetched for this folder
// alone, as a locked platform package: no install script, nothing outside this folder.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, realpathSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { install } from './packages.mjs';
import { Refused } from './processes.mjs';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/**
 * @typedef {object} Toolchain
 * @property {string} node the Node that runs the app
 * @property {string} npm npm's own script, run by that Node
 * @property {NodeJS.ProcessEnv} env with that Node and the installed tools first on the path
 */

/** @returns {Promise<Toolchain>} */
export async function findToolchain() {
	const npm = findNpm();
	const wanted = JSON.parse(readFileSync('package.json', 'utf8')).engines.node;
	if (isNewEnough(process.versions.node, wanted)) return toolchain(process.execPath, npm);

	const own = join(root, '.setup/node/node_modules/.bin/node');
	const label = `this Node is ${process.version}, the app needs ${wanted}: fetching one for it alone`;
	await install('.setup/node', label, toolchain(process.execPath, npm));
	if (!runs(own)) {
		const machine = `${process.platform}-${process.arch}`;
		throw new Refused(`No ready-made Node runs on this machine (${machine}): install ${wanted}.`);
	}
	return toolchain(realpathSync(own), npm);
}

/**
 * @param {string} node
 * @param {string} npm
 * @returns {Toolchain}
 */
function toolchain(node, npm) {
	const path = [dirname(node), join(root, 'node_modules/.bin'), process.env.PATH].join(delimiter);
	return { node, npm, env: { ...process.env, PATH: path } };
}

/**
 * @example isNewEnough('24.1.0', '>=24.0') // true
 * @param {string} version
 * @param {string} wanted
 */
export function isNewEnough(version, wanted) {
	const numbersIn = (/** @type {string} */ text) => (text.match(/\d+/g) ?? []).map(Number);
	const [major = 0, minor = 0] = numbersIn(version);
	const [wantedMajor = 0, wantedMinor = 0] = numbersIn(wanted);
	return major > wantedMajor || (major === wantedMajor && minor >= wantedMinor);
}

/** @param {string} node */
const runs = (node) => spawnSync(node, ['--version']).status === 0;

/** npm tells its scripts where it is; without npm it mostly lies beside Node. */
function findNpm() {
	const beside = dirname(realpathSync(process.execPath));
	const places = [
		process.env.npm_execpath ?? '',
		join(beside, '../lib/node_modules/npm/bin/npm-cli.js'),
		join(beside, '../share/nodejs/npm/bin/npm-cli.js'),
		join(beside, 'node_modules/npm/bin/npm-cli.js')
	];
	const found = places.find((place) => place.endsWith('npm-cli.js') && existsSync(place));
	if (!found) throw new Refused('Run this through npm: npm start, or npm test.');
	return found;
}
