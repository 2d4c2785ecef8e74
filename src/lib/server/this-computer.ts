import { isIP } from 'node:net';

const NAMES: ReadonlySet<string> = new Set(['localhost', '127.0.0.1', '[::1]']);

/** Whether whoever asks says that they sit at the computer that runs the server. */
export const isThisComputer = ({ hostname }: URL): boolean => NAMES.has(hostname);

/**
 * What proxies add, each to say whom they ask for. From memory, no list is complete. The scheme,
 * `x-forwarded-proto`, is not among them: our own server always writes it, and https from elsewhere
 * shows in the address.
 */
const ADDED_BY_PROXIES = [
	'forwarded',
	'via',
	'x-forwarded-for',
	'x-forwarded-host',
	'x-forwarded-port',
	'x-real-ip',
	'x-client-ip',
	'x-cluster-client-ip',
	'true-client-ip',
	'cf-connecting-ip',
	'fly-client-ip',
	'fastly-client-ip'
];

/** A request, as the framework hands it on. */
export interface Asked {
	readonly url: URL;
	readonly request: Pick<Request, 'headers'>;
	readonly getClientAddress: () => string;
}

/**
 * Whether the request certainly comes from the computer that runs the server: the connection itself
 * begins there, and nobody forwarded it. The name in the address alone is what the asker wrote.
 */
export function comesFromThisComputer(
	{ url, request, getClientAddress }: Asked,
	{ addressHeader }: { readonly addressHeader: string | null }
): boolean {
	if (addressHeader !== null || url.protocol !== 'http:' || !isThisComputer(url)) return false;
	if (ADDED_BY_PROXIES.some((name) => request.headers.has(name))) return false;
	return isLoopback(getClientAddress());
}

/** 127.0.0.0/8 (RFC 1122, 3.2.1.3), ::1 (RFC 4291, 2.5.3), and the first written as the second. */
function isLoopback(address: string): boolean {
	const bare = address.toLowerCase().replace(/^::ffff:/, '');
	return bare === '::1' || (isIP(bare) === 4 && bare.startsWith('127.'));
}
