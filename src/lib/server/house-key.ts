import type { KeyObject } from 'node:crypto';
import { isAbsolute, relative } from 'node:path';
import type { Environment } from './environment.ts';
import { readOrMakeKeyFile } from './key-file.ts';
import { StartRefused } from './start-refused.ts';

/**
 * The key of the house: what the environment holds, else its file.
 * @throws StartRefused when the file lies where backups would copy it beside the data
 */
export function keyOf({ key, keyFile, dataFolder }: Environment): KeyObject {
	if (key !== null) return key;
	const inside = relative(dataFolder, keyFile);
	if (!inside.startsWith('..') && !isAbsolute(inside)) {
		throw new StartRefused(
			`The key file ${keyFile} lies in the data folder, where backups would copy both: move one of them.`
		);
	}
	return readOrMakeKeyFile(keyFile);
}
