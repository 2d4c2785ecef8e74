// Child processes that end when we do.
import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

/** Something that a person can mend: it is shown as its one line, without a stack. */
export class Refused extends Error {}

/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set();
/** @type {NodeJS.Signals | undefined} */
let stoppedBy;

/** @type {NodeJS.Signals[]} */
const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];
for (const signal of signals) process.on(signal, () => stop(signal));

/** @param {NodeJS.Signals} signal */
function stop(signal) {
	stoppedBy ??= signal;
	if (running.size === 0) process.exit(1);
	for (const child of running) child.kill(signal);
}

/**
 * npm and the shell it starts may end without passing a signal on. An orphan has nobody left who
 * could stop it, so it stops itself. Started without npm (by a service manager, say), it may well
 * be meant to outlive its parent.
 */
export function stopWithParent() {
	if (process.env.npm_lifecycle_event === undefined) return;
	const parents = parentsNow();
	setInterval(() => parentsNow() === parents || stop('SIGTERM'), 500).unref();
}

/** Our parent and, where the system tells, its own: npm, with a shell between it and us. */
function parentsNow() {
	const status = `/proc/${process.ppid}/status`;
	const grandparent = existsSync(status) && /^PPid:.*$/m.exec(readFileSync(status, 'utf8'));
	return `${process.ppid} ${grandparent}`;
}

/**
 * Runs a program on our own terminal. Where we were told to stop meanwhile, it ends this process
 * as well, as soon as the program has ended.
 * @param {string} program
 * @param {string[]} args
 * @param {object} [options]
 * @param {string} [options.cwd]
 * @param {NodeJS.ProcessEnv} [options.env]
 * @param {boolean} [options.channel] the program is to notice that we have ended, by its closing
 * @param {boolean} [options.quiet] what it prints is shown only where it fails
 * @returns {Promise<number>} its exit code
 */
export function runProgram(program, args, { cwd, env, channel = false, quiet = false } = {}) {
	return new Promise((resolve) => {
		/** @type {import('node:child_process').StdioOptions} */
		const stdio = quiet ? ['ignore', 'pipe', 'pipe'] : ['inherit', 'inherit', 'inherit'];
		if (channel) stdio.push('ipc');
		const child = spawn(program, args, { cwd, env, stdio });
		/** @type {Buffer[]} */
		const printed = [];
		for (const stream of [child.stdout, child.stderr]) {
			stream?.on('data', (chunk) => printed.push(chunk));
		}
		running.add(child);
		child.on('error', (error) => {
			console.error(`${program} did not start: ${error.message}`);
			ended(1);
		});
		child.on('close', (code) => ended(code ?? 1));
		/** @param {number} code */
		function ended(code) {
			running.delete(child);
			if (code !== 0) process.stderr.write(Buffer.concat(printed));
			if (stoppedBy && running.size === 0) process.exit(code);
			resolve(code);
		}
	});
}

/**
 * Says what is going on and how long it took. Throws Refused where it fails.
 * @param {string} label
 * @param {string} program
 * @param {string[]} args
 * @param {{cwd?: string, env?: NodeJS.ProcessEnv}} [options]
 */
export async function step(label, program, args, options) {
	const startedAt = Date.now();
	console.log(`• ${label}`);
	const code = await runProgram(program, args, { ...options, quiet: true });
	if (code !== 0) throw new Refused(`✗ ${label}: failed`);
	console.log(`  ${seconds(Date.now() - startedAt)}`);
}

/** @param {number} milliseconds */
export const seconds = (milliseconds) => `${(milliseconds / 1000).toFixed(1)} s`;
