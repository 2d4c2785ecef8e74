import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import type { House } from './house.ts';

/** The link for a new password that the host prints, with what npm runs while the server runs too. */
export async function resetLink(house: House, email: string): Promise<string> {
	const script = new URL('../../.setup/reset-password.mjs', import.meta.url).pathname;
	const env = { PATH: process.env.PATH, DATA_FOLDER: house.dataFolder, PORT: String(house.port) };
	const { stdout } = await promisify(execFile)(process.execPath, [script, email], { env });
	return /http\S+/.exec(stdout)?.[0] ?? '';
}
