import { matchesGlob } from 'node:path';
import { ceiling, lists, pureCeiling } from '../../.setup/lint-length.js';
import { pureFolders } from '../../.setup/lint-pure.js';
import type { SourceFile } from './source-file.ts';

const aMedianFile = 60;

/** Files that are too long to be about one thing, and the median of all that are not lists. */
export function sizeFaults(files: readonly SourceFile[]): string[] {
	const prose = files.filter(({ path }) => !lists.some((list) => matchesGlob(path, list)));
	const lengths = prose.map(({ path, text }) => ({
		path,
		lines: text.trimEnd().split('\n').length
	}));
	const faults = lengths
		.filter(({ path, lines }) => lines > ceilingOf(path))
		.map(({ path, lines }) => `${path} has ${lines} lines; its ceiling is ${ceilingOf(path)}`);
	const median = lengths.map(({ lines }) => lines).sort((one, other) => one - other)[
		Math.floor(lengths.length / 2)
	];
	return median !== undefined && median >= aMedianFile
		? [...faults, `the median file has ${median} lines; it is to have under ${aMedianFile}`]
		: faults;
}

const ceilingOf = (path: string) =>
	pureFolders.some((folder) => path.startsWith(`src/lib/${folder}/`)) ? pureCeiling : ceiling;

/** Folders that say nothing of what is in them. */
export function vagueFolders(folders: readonly string[]): string[] {
	return folders.filter((folder) =>
		/(^|\/)(utils?|helpers?|core|common|misc|shared)$/.test(folder)
	);
}
