import type { Asked } from '$lib/server/this-computer.ts';

/** A request whose connection begins at an address, with what it wrote into its head. */
export const askedFrom = (
	address: string,
	origin = 'http://localhost:4173',
	headers: Readonly<Record<string, string>> = {}
): Asked => ({
	url: new URL('/demo', origin),
	request: new Request(origin, { headers }),
	getClientAddress: () => address
});
