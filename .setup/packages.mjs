// Installs exactly what is locked, and only where something is missing.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { step } from './processes.mjs';

/**
 * @param {string} folder with package.json and package-lock.json
 * @param {string} label said when there is something to do
 * @param {import('./toolchain.mjs').Toolchain} tools
 */
export async function install(folder, label, tools) {
	const locked = readLock(join(folder, 'package-lock.json'));
	const present = readLock(join(folder, 'node_modules/.package-lock.json'));
	if (holds(present, locked)) return;
	const quietly = ['--no-audit', '--no-fund', '--loglevel=error'];
	await step(label, tools.node, [tools.npm, 'ci', ...quietly], { cwd: folder, env: tools.env });
}

/** @param {string} path */
const readLock = (path) =>
	existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')).packages : {};

/**
 * npm writes a lock of what is really there as the last thing of an install, so one that was broken
 * off leaves none. Optional packages may be missing: most of them are for other machines.
 * @param {Record<string, {version?: string}>} present
 * @param {Record<string, {version?: string, optional?: boolean, devOptional?: boolean}>} locked
 */
export function holds(present, locked) {
	const wanted = Object.entries(locked).filter(([path]) => path !== '');
	return (
		wanted.some(([path]) => path in present) &&
		wanted.every(([path, { version, optional, devOptional }]) =>
			path in present ? present[path]?.version === version : optional || devOptional
		)
	);
}
