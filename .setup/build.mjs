// Builds the app where its sources changed since the last build, and runs what was built.
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runProgram, step } from './processes.mjs';

/** All that the built files depend on. */
const sources = [
	'src',
	'static',
	'package-lock.json',
	'svelte.config.js',
	'vite.config.ts',
	'.setup/own-script.js'
];
const stampPath = 'build/.sources';

/** @param {import('./toolchain.mjs').Toolchain} tools */
export async function writeBuild(tools) {
	const fingerprint = fingerprintOf(sources);
	if (existsSync(stampPath) && readFileSync(stampPath, 'utf8') === fingerprint) return;
	const vite = ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'error'];
	await step('building', tools.node, vite, tools);
	// Written last: a build that was broken off counts as none.
	writeFileSync(stampPath, fingerprint);
}

/** @param {import('./toolchain.mjs').Toolchain} tools */
export const serveBuilt = (tools) =>
	runProgram(tools.node, ['.setup/serve.mjs'], { env: tools.env, channel: true });

/**
 * By content, not by date: a checkout gives every file a new date.
 * @param {string[]} paths files and folders
 */
export function fingerprintOf(paths) {
	const hash = createHash('sha256');
	for (const path of paths.flatMap(filesUnder)) {
		const content = readFileSync(path);
		hash.update(`${path} ${content.length}\n`).update(content);
	}
	return hash.digest('hex');
}

/**
 * @param {string} path
 * @returns {string[]}
 */
function filesUnder(path) {
	if (!existsSync(path)) return [];
	if (!statSync(path).isDirectory()) return [path];
	return readdirSync(path)
		.sort()
		.flatMap((name) => filesUnder(join(path, name)));
}
