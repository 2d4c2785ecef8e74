import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import type { House } from './house.ts';

/** What `npm run demo` says and how it ends, beside a server that runs on the same data. */
export async function demoScript(house: House, ...said: string[]) {
	const script = new URL('../../.setup/demo.mjs', import.meta.url).pathname;
	const env = {
		PATH: process.env.PATH,
		DATA_FOLDER: house.dataFolder,
		PORT: String(house.port),
		BREATHMARK_KEY: house.key
	};
	try {
		await promisify(execFile)(process.execPath, [script, ...said], { env });
		return 'done';
	} catch (error) {
		return `${Object(error).code}: ${Object(error).stderr}`;
	}
}
