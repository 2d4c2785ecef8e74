import type { Handle } from '@sveltejs/kit';

/**
 * Sends text packed to browsers that take it so.
 *
 * How long a packed page is tells something of what is in it, to a site that sends a browser here
 * again and again with guesses in the address and watches the line (BREACH, 2013). Such a request
 * says that it comes from another site, and gets the page as it is; so does a browser that does not
 * say where its request comes from.
 */
export const compressed: Handle = async ({ event, resolve }) => {
	const response = await resolve(event);
	const { body, status, statusText } = response;
	if (body === null || !isFromHere(event.request) || !isPackable(response)) return response;
	const headers = new Headers(response.headers);
	headers.set('content-encoding', 'gzip');
	headers.append('vary', 'accept-encoding, sec-fetch-site');
	headers.delete('content-length');
	headers.delete('etag');
	const packed = body.pipeThrough(new CompressionStream('gzip'));
	return new Response(packed, { status, statusText, headers });
};

/** An address that was typed comes from nowhere: no other site can do that. */
function isFromHere({ headers }: Request): boolean {
	const from = headers.get('sec-fetch-site');
	const takes = headers.get('accept-encoding') ?? '';
	return (
		(from === 'same-origin' || from === 'none') &&
		/\bgzip\b(?!\s*;\s*q=0(\.0*)?\s*(,|$))/i.test(takes)
	);
}

const isPackable = ({ headers }: Response) =>
	!headers.has('content-encoding') &&
	/^(text\/(html|csv)|application\/json)/.test(headers.get('content-type') ?? '');
