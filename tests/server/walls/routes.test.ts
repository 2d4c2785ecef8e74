import { describe, expect, it } from 'vitest';
import { withoutWalk } from '../../journeys/looked-at.ts';
import { walls } from '../../journeys/walls/walls.ts';
import { routes } from '../../journeys/routes.ts';

/*
 * The table of tests/journeys/walls has a line for every page, form and address. They are counted
 * here, where a route's own files can be opened; walls.spec.ts asks them.
 */

type Exports = Readonly<Record<string, unknown>>;
const METHODS = ['GET', 'POST', 'PUT', 'PATCH', 'DELETE', 'HEAD', 'OPTIONS', 'fallback'];

const pages = Object.keys(import.meta.glob('/src/routes/**/+page.svelte'));
const pageServers = import.meta.glob<Exports>('/src/routes/**/+page.server.ts', { eager: true });
const endpoints = import.meta.glob<Exports>('/src/routes/**/+server.ts', { eager: true });

/** /src/routes/coach/[group]/+page.svelte is /coach/[group]. */
const idOf = (path: string) =>
	path.slice('/src/routes'.length, path.lastIndexOf('/')).replaceAll(/\/\([^)]+\)/g, '') || '/';

const actionsOf = (exported: Exports) => Object.keys(exported['actions'] ?? {});
const methodsOf = (exported: Exports) => METHODS.filter((method) => method in exported);

/** Every way of asking that is there: the page, each action, each method. */
const ways = [
	...pages.map((path) => `${idOf(path)} page`),
	...Object.entries(pageServers).flatMap(([path, exported]) =>
		actionsOf(exported).map((name) => `${idOf(path)} ?/${name}`)
	),
	...Object.entries(endpoints).flatMap(([path, exported]) =>
		methodsOf(exported).map((method) => `${idOf(path)} ${method}`)
	)
].sort();

const listed = Object.entries(walls)
	.flatMap(([id, asked]) => Object.keys(asked).map((way) => `${id} ${way}`))
	.sort();

describe('the walls of the routes', () => {
	it('are looked for where the routes are', () => {
		expect(ways.length).toBeGreaterThan(140);
		expect(ways).toEqual(expect.arrayContaining(['/ page', '/bands ?/walked']));
	});

	it('have a line for every page, form and address', () => {
		expect(
			ways.filter((way) => !listed.includes(way)),
			'say in tests/journeys/walls for whom each is'
		).toEqual([]);
	});

	it('have no line for what is not there', () => {
		expect(listed.filter((way) => !ways.includes(way))).toEqual([]);
	});

	it('are found by the journeys too, which cannot open the files', () => {
		const read = routes.flatMap(({ id, isPage, actions, methods }) => [
			...(isPage ? [`${id} page`] : []),
			...actions.map((name) => `${id} ?/${name}`),
			...methods.map((method) => `${id} ${method}`)
		]);
		expect(read.sort()).toEqual(ways);
	});
});

describe('the pages', () => {
	it('are each looked at on a walk with axe, by keys and by ear', () => {
		expect(withoutWalk(), 'say in tests/journeys/looked-at.ts on which').toEqual([]);
	});
});
