import { randomBytes, type KeyObject } from 'node:crypto';
import {
	closeSync,
	fsyncSync,
	mkdirSync,
	openSync,
	readFileSync,
	statSync,
	writeSync
} from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { readKey } from './keys.ts';
import { StartRefused } from './start-refused.ts';

type Variables = Readonly<Record<string, string | undefined>>;

/** The key lives with the user's configuration, never in the data folder, so no backup holds both. */
export function keyFilePath(variables: Variables, platform: NodeJS.Platform): string {
	const home = variables.HOME || homedir();
	const folder =
		platform === 'win32'
			? variables.APPDATA || join(home, 'AppData', 'Roaming')
			: variables.XDG_CONFIG_HOME || join(home, '.config');
	return join(folder, 'breathmark', 'key');
}

/**
 * The key in the file, made at the first start.
 * @throws StartRefused when the file cannot be made or read, is open to others, or is malformed
 */
export function readOrMakeKeyFile(path: string): KeyObject {
	makeOnce(path);
	const text = read(path);
	const key = readKey(text);
	if (!key) {
		throw new StartRefused(
			`The key file ${path} is malformed: put the right key back (64 hexadecimal digits).`
		);
	}
	return key;
}

function makeOnce(path: string): void {
	try {
		mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
		// 'wx' fails when the file is there, so two first starts cannot overwrite each other's key.
		const file = openSync(path, 'wx', 0o600);
		try {
			writeSync(file, `${randomBytes(32).toString('hex')}\n`);
			// A key lost in a power cut would close everything that was sealed with it.
			fsyncSync(file);
		} finally {
			closeSync(file);
		}
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'EEXIST') return;
		throw new StartRefused(`The key file ${path} cannot be made (${codeOf(error)}).`);
	}
}

function read(path: string): string {
	try {
		// Windows keeps no such bits: there the user's profile folder is private by default.
		const openToOthers = process.platform !== 'win32' && (statSync(path).mode & 0o077) !== 0;
		if (!openToOthers) return readFileSync(path, 'utf8');
	} catch (error) {
		throw new StartRefused(`The key file ${path} cannot be read (${codeOf(error)}).`);
	}
	throw new StartRefused(`The key file ${path} is open to others: run chmod 600 on it.`);
}

function codeOf(error: unknown): string {
	return (error as NodeJS.ErrnoException).code ?? 'unknown';
}
