import type { Phone } from './phone.ts';
import type { Route } from './routes.ts';

/** What came back for one way of asking. */
export interface Told {
	readonly asked: string;
	readonly status: number;
	readonly text: string;
	readonly to: string | undefined;
}

/** Every way to ask for a route: as a page, as its data, by each action, by each method. */
export function askEveryWay(phone: Phone, { path, isPage, actions, methods }: Route) {
	const ask = (method: string, address = path, accept?: string) =>
		askOnce(phone, method, address, accept);
	const data = isPage
		? [
				ask('GET', `${path}/__data.json`),
				ask('GET', `${path}/__data.json?x-sveltekit-invalidated=01`)
			]
		: [];
	const posts = actions
		.map((name) => (name === 'default' ? path : `${path}?/${name}`))
		.flatMap((address) => [ask('POST', address), ask('POST', address, 'application/json')]);
	const others = methods.filter((method) => method !== 'GET').map((method) => ask(method));
	return Promise.all([ask('GET'), ask('HEAD'), ...data, ...posts, ...others]);
}

/** The ways that change nothing. */
export const lookEveryWay = (phone: Phone, route: Route) =>
	askEveryWay(phone, { ...route, actions: [], methods: [] });

async function askOnce(
	{ request, url }: Phone,
	method: string,
	address: string,
	accept = 'text/html'
): Promise<Told> {
	const content: Record<string, string> =
		method === 'POST' ? { 'content-type': 'application/x-www-form-urlencoded' } : {};
	const headers = { accept, origin: url, ...content };
	const answer = await request.fetch(url + address, { method, headers, maxRedirects: 0 });
	return {
		asked: `${method} ${address} as ${accept}`,
		status: answer.status(),
		text: address.includes('__data.json') ? valuesOf(await answer.text()) : await answer.text(),
		to: answer.headers().location
	};
}

/**
 * A page's data is a list in which numbers inside lists and objects only point to other places of
 * it. What is left are the values.
 */
function valuesOf(text: string): string {
	const { nodes } = JSON.parse(text) as { nodes?: ({ data?: unknown[] } | null)[] };
	if (nodes === undefined) return text;
	const flat = nodes.flatMap((node) => node?.data ?? []);
	const names = flat.flatMap((part) =>
		isObject(part) && !Array.isArray(part) ? Object.keys(part) : []
	);
	return [...names, ...flat.filter((part) => !isObject(part))].map(String).join('\n');
}

const isObject = (part: unknown): part is object => typeof part === 'object' && part !== null;

/** Whole numbers from 100 to 199, as most edges of an adult's bands are. */
export const numbersIn = (text: string): ReadonlySet<string> =>
	new Set(text.match(/(?<!\w)1\d\d(?!\w)/g));
