import { getRequestEvent } from '$app/server';
import { readEnvironment } from './environment.ts';
import { openHouse, type House } from './open-house.ts';

let opening: Promise<House> | null = null;

/**
 * The one house of this process, opened when it is first asked for and never at import: the build
 * runs this module too. An opening that failed is tried again at the next call.
 * @throws StartRefused
 */
export function house(): Promise<House> {
	opening ??= open().catch((error: unknown) => {
		opening = null;
		throw error;
	});
	return opening;
}

/** Closes it, when the process ends. */
export async function closeHouse(): Promise<void> {
	const opened = opening;
	opening = null;
	await (await opened?.catch(() => null))?.close();
}

async function open(): Promise<House> {
	const opened = await openHouse(readEnvironment(process.env), getRequestEvent);
	if (opened.vault.state === 'wrong-key') {
		console.error(
			'This database was sealed with another key: health data stays shut until the right key is back.'
		);
	}
	return opened;
}
