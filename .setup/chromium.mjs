// The browser that the journeys are driven in: one that is there, or the one this system offers.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { Refused, step } from './processes.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];
const macApps = [
	'Chromium.app/Contents/MacOS/Chromium',
	'Google Chrome.app/Contents/MacOS/Google Chrome'
];

/**
 * @param {NodeJS.ProcessEnv} env CHROMIUM names the program; else PATH is searched
 * @returns {string | undefined} undefined where only Playwright's own could be there
 */
export function findChromium(env = process.env) {
	if (env.CHROMIUM) return env.CHROMIUM;
	const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
	const onPath = folders.flatMap((folder) => names.map((name) => join(folder, name)));
	return [...onPath, ...macApps.map((app) => join('/Applications', app))].find(isProgram);
}

/**
 * Finds a browser or installs one; afterwards CHROMIUM in the environment says where it is, or
 * Playwright has its own.
 * @param {import('./toolchain.mjs').Toolchain} tools
 */
export async function bringChromium(tools) {
	if (!findChromium(tools.env)) await installChromium(tools);
	const found = findChromium(tools.env);
	if (found && !isProgram(found)) throw new Refused(`CHROMIUM names no program: ${found}`);
	if (found) tools.env.CHROMIUM = found;
}

/**
 * Debian packages Chromium for every machine it runs on; Playwright has one for the commonest.
 * @param {import('./toolchain.mjs').Toolchain} tools
 */
async function installChromium(tools) {
	const root = isDebian() ? asRoot() : undefined;
	if (!root) {
		const playwright = ['node_modules/@playwright/test/cli.js', 'install', 'chromium'];
		return step(
			'fetching a browser for the journeys (CHROMIUM=path names yours)',
			tools.node,
			playwright,
			tools
		);
	}
	const env = { ...tools.env, DEBIAN_FRONTEND: 'noninteractive' };
	/** @type {(label: string, args: string[]) => Promise<void>} */
	const apt = (label, args) => step(label, root.program, [...root.args, ...args], { env });
	await apt('asking Debian for its packages', ['-q', 'update']);
	await apt('installing a browser for the journeys (CHROMIUM=path names yours)', [
		'-qy',
		'install',
		'--no-install-recommends',
		'chromium'
	]);
}

const isDebian = () =>
	existsSync('/etc/os-release') && /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'));

/** The start of a command line for apt-get as root, where that needs no password. */
function asRoot() {
	if (process.getuid?.() === 0) return { program: 'apt-get', args: [] };
	return spawnSync('sudo', ['-n', 'true']).status === 0
		? { program: 'sudo', args: ['-n', 'apt-get'] }
		: undefined;
}

/** @param {string} path */
function isProgram(path) {
	try {
		accessSync(path, constants.X_OK);
		return true;
	} catch {
		return false;
	}
}
