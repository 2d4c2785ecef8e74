import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { isDesk, openRoutes } from '../../src/perimeter/open-routes.ts';

const ROUTES = new URL('../../src/routes/', import.meta.url).pathname;

/** An address of the app as its folder says it: nobody has to list it. */
export interface Route {
	/** As the framework names it: /screening/questions/[n]. */
	readonly id: string;
	/** With something in the place of each parameter. */
	readonly path: string;
	readonly isPage: boolean;
	/** Names of the form actions. */
	readonly actions: readonly string[];
	/** What an endpoint exports: GET, POST. */
	readonly methods: readonly string[];
}

export const routes: readonly Route[] = foldersUnder(ROUTES).flatMap((folder) => {
	const files = readdirSync(folder);
	const isPage = files.some((name) => /^\+page(\.server)?\.(svelte|ts|js)$/.test(name));
	const endpoint = files.find((name) => /^\+server\.(ts|js)$/.test(name));
	if (!isPage && endpoint === undefined) return [];
	const id = `/${relative(ROUTES, folder)}`.replaceAll(/\/\([^)]+\)/g, '');
	const source = (name: string) =>
		files.includes(name) ? readFileSync(join(folder, name), 'utf8') : '';
	return [
		{
			id,
			path: id
				.replace('[n]', '2')
				.replace('[...all]', 'get-session')
				.replaceAll(/\[[^\]]+\]/g, 'x'),
			isPage,
			actions: files.includes('+page.server.ts') ? actionsIn(join(folder, '+page.server.ts')) : [],
			methods: endpoint === undefined ? [] : methodsIn(source(endpoint))
		}
	];
});

/**
 * Whatever is not on the list of open routes, today's and tomorrow's, has to be refused. The coach's
 * desk has a door of its own.
 */
export const gated = routes.filter(({ id }) => !openRoutes.has(id) && !isDesk(id));
export const desk = routes.filter(({ id }) => !openRoutes.has(id) && isDesk(id));
export const open = routes.filter(({ id }) => openRoutes.has(id));
export { openRoutes };

function foldersUnder(folder: string): string[] {
	const inside = readdirSync(folder, { withFileTypes: true }).filter((entry) =>
		entry.isDirectory()
	);
	return [folder, ...inside.flatMap(({ name }) => foldersUnder(join(folder, name)))];
}

/**
 * The keys of `actions`, which the formatter puts one tab deep, and of what is spread into it or
 * handed on from another file.
 */
function actionsIn(file: string, name = 'actions'): string[] {
	const source = readFileSync(file, 'utf8');
	const from = (what: string) =>
		new RegExp(`(?:import|export) \\{[^}]*\\b${what}\\b[^}]*\\} from '(\\.[^']+)'`).exec(
			source
		)?.[1];
	const elsewhere = (what: string): string[] => {
		const path = from(what);
		return path === undefined ? [] : actionsIn(resolve(dirname(file), path), what);
	};
	const [, body] =
		new RegExp(`^export const ${name}\\b[^{]*\\{\\n(.*?)^\\}`, 'ms').exec(source) ?? [];
	if (body === undefined) return elsewhere(name);
	const spread = [...body.matchAll(/^\t\.\.\.(\w+)/gm)];
	const own = [...body.matchAll(/^\t(?:async )?(\w+)(?::|\()/gm)];
	return [...spread.flatMap(([, what = '']) => elsewhere(what)), ...own.map(([, key = '']) => key)];
}

function methodsIn(source: string): string[] {
	const all =
		/^export (?:const|function|async function) (GET|POST|PUT|PATCH|DELETE|HEAD|OPTIONS|fallback)\b/gm;
	return [...source.matchAll(all)].map(([, name = '']) => name);
}
