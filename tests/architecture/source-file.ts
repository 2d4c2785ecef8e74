import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

export interface SourceFile {
	/** From the top of the project, with slashes: src/lib/screening/evaluate.ts */
	readonly path: string;
	readonly text: string;
}

const root = join(import.meta.dirname, '../..');

/** The files of these folders (or files) that end in one of the endings, hidden folders left out. */
export function filesIn(places: readonly string[], endings: readonly string[]): SourceFile[] {
	return places
		.flatMap(pathsUnder)
		.filter((path) => endings.some((ending) => path.endsWith(ending)))
		.map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }));
}

/** Every folder below these. */
export function foldersIn(places: readonly string[]): string[] {
	const parents = places.flatMap(pathsUnder).map((path) => path.split('/').slice(0, -1));
	const all = parents.flatMap((parts) => parts.map((_, at) => parts.slice(0, at + 1).join('/')));
	return [...new Set(all)];
}

/** The text of a file at the top of the project, or null where there is none. */
export function topFile(name: string): string | null {
	const path = join(root, name);
	return existsSync(path) ? readFileSync(path, 'utf8') : null;
}

function pathsUnder(path: string): string[] {
	const full = join(root, path);
	if (!existsSync(full)) return [];
	if (!statSync(full).isDirectory()) return [path];
	return readdirSync(full)
		.filter((name) => !name.startsWith('.') && name !== 'node_modules')
		.sort()
		.flatMap((name) => pathsUnder(`${path}/${name}`));
}
