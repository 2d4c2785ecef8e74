import { randomUUID } from 'node:crypto';
import { ADDRESS_HEADER } from '../lantern-street.ts';
import type { Fields, Ids, Wall } from './wall.ts';

/** One way of asking, for what stands at these ids. */
export interface Question {
	readonly url: string;
	readonly route: string;
	/** `page`, `data`, `?/action`, or a method. */
	readonly way: string;
	readonly wall: Wall;
}

export interface Told {
	readonly status: number;
	/** Where it leads, without what is after the #, or null. */
	readonly to: string | null;
	readonly text: string;
	/** What was sent, which an answer may say again. */
	readonly sent: string;
}

export const isLook = (way: string) => way === 'page' || way === 'data' || way === 'GET';

/** Asks as the person of the cookies. No redirect is followed, and no cookie kept. */
export async function ask(
	{ url, route, way, wall }: Question,
	ids: Ids,
	cookies: string
): Promise<Told> {
	const address = addressOf(way, pathOf(route, ids) + (wall.query?.(ids) ?? ''));
	const body = isLook(way) ? null : bodyOf(wall, ids);
	const answer = await fetch(url + address, {
		method: body === null ? 'GET' : 'POST',
		headers: {
			cookie: cookies,
			accept: 'text/html',
			origin: url,
			[ADDRESS_HEADER]: randomUUID(),
			...(body !== null && { 'content-type': body.type })
		},
		redirect: 'manual',
		...(body !== null && { body: body.text })
	});
	const text = await answer.text();
	const told = {
		text: text.replaceAll(/nonce[-=]"?[\w+/=]+/g, ''),
		sent: decodeURIComponent(`${address} ${body?.text}`)
	};
	if (way === 'data' && answer.status === 200) return { ...told, ...outcomeIn(text) };
	return { ...told, status: answer.status, to: answer.headers.get('location') };
}

function addressOf(way: string, path: string): string {
	if (way.startsWith('?/')) return way === '?/default' ? path : path + way;
	if (way !== 'data') return path;
	const [before = '', after] = path.split('?');
	const data = `${before === '/' ? '' : before}/__data.json`;
	return after === undefined ? data : `${data}?${after}`;
}

function bodyOf({ as, sends }: Wall, ids: Ids): { type: string; text: string } {
	if (as === 'json') return { type: 'application/json', text: '{"entries":[]}' };
	const fields: Fields = sends?.(ids) ?? {};
	const all = Object.entries(fields).flatMap(([name, values]) =>
		[values].flat().map((value) => [name, String(value)])
	);
	return {
		type: 'application/x-www-form-urlencoded',
		text: new URLSearchParams(all).toString()
	};
}

/** A route with these ids in the place of its parameters. */
export const pathOf = (route: string, ids: Ids): string =>
	route
		.replace('[group]', ids.group)
		.replace('[member]', ids.member)
		.replace('[run]', ids.pastRun)
		.replace('[outing]', route.startsWith('/coach') ? ids.plan : ids.ownPlan)
		.replace('[token]', route.startsWith('/join') ? ids.linkToken : ids.coachLinkToken)
		.replace('[n]', '2')
		.replace('[...all]', 'get-session');

/** A page's data says in itself that it leads away, or that there is none. */
function outcomeIn(text: string): Pick<Told, 'status' | 'to'> {
	const said = JSON.parse(text) as {
		type: string;
		location?: string;
		nodes?: ({ type: string; status?: number } | null)[];
	};
	if (said.type === 'redirect') return { status: 303, to: said.location ?? null };
	const wrong = said.nodes?.find((node) => node?.type === 'error');
	return { status: wrong?.status ?? 200, to: null };
}
