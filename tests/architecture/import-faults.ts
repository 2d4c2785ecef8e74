import { posix } from 'node:path';
import { importsOf, type Import } from './imports-of.ts';
import { isDoor, isPage, mayImport, partOf, type Part } from './parts.ts';
import type { SourceFile } from './source-file.ts';

const aliases = { '$lib/': 'src/lib/', '$words/': 'src/lib/words/en/' };

/** Every import that the table does not allow, as a line each. */
export function importFaults(files: readonly SourceFile[]): string[] {
	const imports = new Map(files.map((file) => [file.path, importsOf(file)]));
	const reached = reachedFromPages(imports);
	return files.flatMap(({ path }) => {
		const part = partOf(path, reached.has(path));
		if (part === null) return [`${path} belongs to no part of the app`];
		return (imports.get(path) ?? [])
			.filter((one) => !isAllowed(part, path, one, reached))
			.map(({ from }) => `${path} (${part}) may not import ${from}`);
	});
}

function isAllowed(part: Part, path: string, { from, isTypeOnly }: Import, reached: Set<string>) {
	const { parts, typesOf = [], packages } = mayImport[part];
	const target = targetOf(path, from);
	if (target === null) return packages.some((allowed) => allowed.test(from));
	const other = partOf(target, reached.has(target));
	if (other === null) return false;
	return other === part || parts.includes(other) || (isTypeOnly && typesOf.includes(other));
}

/** The file that an import means, or null where it means a package. */
function targetOf(path: string, from: string): string | null {
	const [name = from] = from.split('?');
	if (name === './$types') return null;
	if (name.startsWith('.')) return posix.join(posix.dirname(path), name);
	for (const [alias, folder] of Object.entries(aliases)) {
		if (name.startsWith(alias)) return folder + name.slice(alias.length);
	}
	return null;
}

/** What stands beside a page is part of it when the page, or anything of it, imports it. */
function reachedFromPages(imports: ReadonlyMap<string, readonly Import[]>): Set<string> {
	const reached = new Set([...imports.keys()].filter(isPage));
	for (const path of reached) {
		for (const { from } of imports.get(path) ?? []) {
			const target = targetOf(path, from);
			if (target?.startsWith('src/routes/') && !isDoor(target)) reached.add(target);
		}
	}
	return reached;
}
